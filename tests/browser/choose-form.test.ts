import { describe, expect, it } from "vitest";
import { chooseAsked } from "../../src/browser/choose-form.ts";
import { withId } from "../../src/core/lists.ts";
import { conditionsAt } from "../../src/solve/choosing/conditions-at.ts";
import { shippedLibrary } from "../support/shipped-library.ts";

const { swims, scales, tubs, guide } = shippedLibrary;
const readBy = {
  swims: swims.map((swim) => ({ ...swim, hazards: [] })),
  units: guide.units,
  scale: withId(scales, guide.scaleId),
  tub: withId(tubs, guide.tubId).tub,
};
const asked = (query: string) => chooseAsked(new URLSearchParams(query), readBy);
const pool = withId(swims, "makebelieve-pool-willow");
const [shelf] = pool.spots;

describe("what the form to choose a rig asks", () => {
  it("is a place of a swim as it was sounded, for who can, in a calm, where nothing else is said", () => {
    expect(asked("place=makebelieve-pool-willow|On the shelf")).toMatchObject({
      conditions: conditionsAt(pool, shelf!, { wind: "calm", learner: "next" }),
      spot: "On the shelf",
    });
  });

  it("takes wind, learner, fish, rod, box and a level with its sign", () => {
    const query =
      "place=makebelieve-pool-willow|On the shelf&wind=strong&learner=first&fish=Roach&fish=Tench";
    const { conditions } = asked(`${query}&rod=11 ft&level=-10 cm&box=12 No 4, BB`) as Extract<
      ReturnType<typeof asked>,
      { conditions: unknown }
    >;
    expect(conditions).toMatchObject({
      wind: "strong",
      learner: "first",
      fish: ["Roach", "Tench"],
      fishWanted: "every",
      depthMm: 950,
      rodLengthMm: expect.closeTo(3352.8, 6),
    });
    expect(conditions.box!.map(({ size, count }) => [size, count])).toEqual([
      ["BB", Number.POSITIVE_INFINITY],
      ["No 4", 12],
    ]);
    expect(asked("place=makebelieve-pool-willow|On the shelf&level=10")).toMatchObject({
      conditions: { depthMm: 1150 },
    });
  });

  it("asks of another water how deep it is and how far out, and of a river how fast", () => {
    expect(asked("water=flowing&depth=1,2 m&distance=5 m&pace=10 m in 40 s&fish=Chub")).toEqual({
      conditions: {
        water: "flowing",
        depthMm: 1200,
        fromBankMm: 5000,
        paceMs: 0.25,
        fish: ["Chub"],
        fishWanted: "every",
        wind: "calm",
        learner: "next",
      },
    });
    expect(asked("water=flowing")).toEqual({
      problems: ["depth", "distance", "pace"].map((field) => ({
        field,
        problem: "wanted",
        typed: "",
        example: expect.any(String),
      })),
    });
  });

  it.each([
    ["place=makebelieve-pool-willow|On the shelf&level=much", "level", "unread", "much"],
    ["place=makebelieve-pool-willow|On the shelf&level=-3 m", "level", "dry", "-3 m"],
    ["place=makebelieve-pool-willow|On the shelf&rod=long", "rod", "unread", "long"],
    ["place=makebelieve-pool-willow|On the shelf&box=stones", "box", "unread", "stones"],
    ["water=still&depth=deep&distance=5 m", "depth", "unread", "deep"],
    ["water=still&depth=90 m&distance=5 m", "depth", "unread", "90 m"],
  ])("reads nothing half: %s", (query, field, problem, typed) => {
    expect(asked(query)).toMatchObject({ problems: [{ field, problem, typed }] });
  });
});
