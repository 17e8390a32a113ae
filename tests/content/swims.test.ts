import { describe, expect, it } from "vitest";
import { readLibrary } from "../../src/content/read-library.ts";
import { readSources } from "../../src/content/world.ts";
import { withId } from "../../src/core/lists.ts";
import { bedOf, ledgesOf } from "../../src/core/swim/bed.ts";
import { checkedOf } from "../checks/checked.ts";
import { borrowing } from "../support/borrowed.ts";
import { sampleSwim } from "../support/sample-swim.ts";
import { shippedLibrary } from "../support/shipped-library.ts";
import { contentWith } from "../support/smallest-content.ts";

it("reads a swim with its depths from the bank out, its spots on their line, and its fish", () => {
  const more = "from-bank: 3 m, depth: 1 m }\n      - { from-bank: 0 m, depth: 30 cm }";
  const [swim] = checkedOf(sampleSwim("from-bank: 0 m, depth: 40 cm }", more)).library.swims;
  expect(swim).toMatchObject({ id: "pond", places: 2, fish: ["roach"], access: { road: "Pond Road" } });
  expect(swim?.spots[0]?.line.soundings).toEqual([
    { fromBankMm: 0, depthMm: 300 },
    { fromBankMm: 2000, depthMm: 900 },
    { fromBankMm: 3000, depthMm: 1000 },
    { fromBankMm: 4000, depthMm: 1100 },
  ]);
});

it("lends no guide of somebody's own the swims of the library", async () => {
  const own = { "guide.yaml": contentWith({})["guide.yaml"]!.replace("library: none\n", "") };
  const world = borrowing(own, contentWith(sampleSwim()));
  const { value } = readLibrary(await readSources(world, ["content"], "library"));
  expect(value?.rigs).toHaveLength(1);
  expect(value?.swims).toEqual([]);
});

describe("the shipped swims", () => {
  const ledgesIn = (id: string) =>
    withId(shippedLibrary.swims, id).lines.map(({ soundings }) =>
      ledgesOf(bedOf(soundings)).map(({ fromMm, toMm }) => [fromMm, toMm]),
    );

  it("are a pool, a canal and a river, with the ledges that one would see in their depths", () => {
    expect(shippedLibrary.swims).toHaveLength(3);
    expect(ledgesIn("makebelieve-pool-willow")).toEqual([[[4500, 5500]], []]);
    expect(ledgesIn("makebelieve-canal-wide")).toEqual([
      [
        [2000, 3000],
        [9000, 10_000],
      ],
    ]);
    expect(ledgesIn("makebelieve-river-glide")).toEqual([[], []]);
  });
});
