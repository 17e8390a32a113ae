import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { first, withId } from "../../../src/core/lists.ts";
import type { ChoosableRig, Conditions, RuledOutBy } from "../../../src/model/choosing.ts";
import { type ChoosingRules, type LimitRule, windStrengths } from "../../../src/model/choosing-rules.ts";
import { levels } from "../../../src/model/library.ts";
import { chooseRigs } from "../../../src/solve/choosing/choose.ts";
import { conditionsAt } from "../../../src/solve/choosing/conditions-at.ts";
import { shippedLibrary } from "../../support/shipped-library.ts";

const calm: Conditions = {
  water: "still",
  depthMm: 1200,
  fromBankMm: 3000,
  wind: "calm",
  learner: "next",
  fish: ["roach"],
  fishWanted: "any",
};
const stream: Conditions = { ...calm, water: "flowing", paceMs: 0.25 };

const physics: readonly LimitRule[] = [{ rule: "water" }, { rule: "rod" }, { rule: "box" }];
const rules = (...more: readonly LimitRule[]): ChoosingRules => ({
  basis: "common practice",
  limits: [...physics, ...more],
  points: [{ rule: "fish", points: 2 }],
});

/** What is said of one rig of the guide: why it is ruled out, or that it is offered. */
function saidOf(
  id: string,
  conditions: Conditions,
  choosing: ChoosingRules,
): readonly RuledOutBy[] | "offered" {
  const shelf = { ...shippedLibrary, rigs: [withId(shippedLibrary.rigs, id)] };
  const { offered, ruledOut } = chooseRigs(choosing, conditions, shelf);
  expect(offered.length + ruledOut.length).toBe(1);
  return ruledOut[0]?.because ?? "offered";
}

describe("a rig is ruled out", () => {
  it("by water that it is not for", () => {
    expect(saidOf("stick-shirt-button", calm, rules())).toEqual([{ rule: "water", water: "flowing" }]);
    expect(saidOf("stick-shirt-button", stream, rules())).toBe("offered");
  });

  it("beyond the rod, as its sums find it", () => {
    const deep = { ...calm, depthMm: 4200 };
    expect(saidOf("straight-waggler-bulk", deep, rules())).toMatchObject([
      { rule: "rod", finding: { code: "sliding-float-needed" } },
    ]);
    // A rod of 18 ft has room for it.
    expect(saidOf("straight-waggler-bulk", { ...deep, rodLengthMm: 5486.4 }, rules())).toBe("offered");
  });

  it("beyond what a whip reaches, with its length and what is left of its line", () => {
    const far = { ...calm, fromBankMm: 8000 };
    expect(saidOf("whip-to-hand", far, rules())).toMatchObject([{ rule: "reach", fromBankMm: 8000 }]);
    expect(saidOf("whip-to-hand", calm, rules())).toBe("offered");
  });

  it("where the box lacks its shot", () => {
    const box = [{ size: "SSG", massG: 1.6, metal: "tin", count: 1 } as const];
    expect(saidOf("insert-waggler-close-in", { ...calm, box }, rules())).toMatchObject([
      { rule: "box", finding: { code: "box.cannot-be-made" } },
    ]);
    const { tub } = withId(shippedLibrary.tubs, "full");
    expect(saidOf("insert-waggler-close-in", { ...calm, box: tub }, rules())).toBe("offered");
  });

  it("by a pace too strong, a quarter more than its fastest", () => {
    const pace = { rule: "pace", most: 1.25 } as const;
    // Its fastest is 10 m in 25 s: 0.4 m/s, and a quarter more 0.5.
    const at = (paceMs: number) => saidOf("stick-shirt-button", { ...stream, paceMs }, rules(pace));
    expect(at(0.51)).toMatchObject([{ rule: "pace", paceMs: 0.51 }]);
    expect([at(0.5), at(0.49)]).toEqual(["offered", "offered"]);
  });

  it("by water deeper or shallower than a share of what it is made up for", () => {
    const depth = { rule: "depth", least: 0.6, most: 1.4 } as const;
    // Made up for 1 m to 1.5 m: 60 cm to 2.1 m.
    const at = (depthMm: number) => saidOf("first-session", { ...calm, depthMm }, rules(depth));
    expect(at(2110)).toMatchObject([{ rule: "depth", leastMm: 600, mostMm: 2100 }]);
    expect(at(590)).toMatchObject([{ rule: "depth" }]);
    expect([at(2100), at(600)]).toEqual(["offered", "offered"]);
  });

  it("by a float too light for the distance, counting what is built into it", () => {
    const distance = { rule: "distance", fromMm: 4000, loadEachMetreG: 0.15 } as const;
    const { capacityG, selfLoadG } = withId(shippedLibrary.rigs, "loaded-waggler-at-range").rig.float;
    expect(selfLoadG).toBeGreaterThan(0);
    const reachMm = 4000 + (1000 * (capacityG + selfLoadG)) / 0.15;
    const at = (fromBankMm: number) =>
      saidOf("loaded-waggler-at-range", { ...calm, depthMm: 2500, fromBankMm }, rules(distance));
    expect(at(reachMm + 10)).toMatchObject([{ rule: "distance", loadG: capacityG + selfLoadG }]);
    expect(at(reachMm - 10)).toBe("offered");
  });

  it("further out than a float that is held top and bottom is fished", () => {
    const far = { rule: "two points", rodLengths: 2 } as const;
    // Two rods of 12 ft are 7.32 m.
    const at = (fromBankMm: number) => saidOf("stick-shirt-button", { ...stream, fromBankMm }, rules(far));
    expect(at(7400)).toMatchObject([{ rule: "two points", fromBankMm: 7400 }]);
    expect(at(7310)).toBe("offered");
    expect(saidOf("first-session", { ...calm, fromBankMm: 7400 }, rules(far))).toBe("offered");
  });

  it("by a line too light for the fish: for each that was named, or for all that live there", () => {
    const line = { rule: "line" } as const;
    const ask = (fish: readonly string[], fishWanted: "every" | "any") =>
      saidOf("insert-waggler-close-in", { ...calm, fish, fishWanted }, rules(line));
    expect(ask(["roach", "carp"], "every")).toMatchObject([
      { rule: "line", fish: "carp", line: "main line" },
    ]);
    expect(ask(["roach", "carp"], "any")).toBe("offered");
    expect(ask(["carp"], "any")).toMatchObject([{ rule: "line", fish: "carp" }]);
    // Of several it is told the one that wants the least, wherever the table has it.
    const rows = shippedLibrary.lines?.rows ?? [];
    for (const lines of [rows, rows.toReversed()]) {
      const shelf = {
        ...shippedLibrary,
        lines: { rows: lines },
        rigs: [withId(shippedLibrary.rigs, "first-session")],
      };
      const both: Conditions = { ...calm, fish: ["carp", "barbel", "tench"], fishWanted: "every" };
      const [out] = chooseRigs(rules(line), both, shelf).ruledOut;
      expect(out?.because).toMatchObject([{ rule: "line", fish: "tench" }]);
    }
  });

  it("by a line too light so near a snag", () => {
    const snag = { rule: "snag", withinMm: 2500, mainLineG: 1814.4 } as const;
    const at = (snagMm: number) => saidOf("insert-waggler-close-in", { ...calm, snagMm }, rules(snag));
    expect(at(2000)).toMatchObject([{ rule: "snag", snagMm: 2000 }]);
    expect(at(2500)).toMatchObject([{ rule: "snag", snagMm: 2500 }]);
    expect(at(3000)).toBe("offered");
    expect(saidOf("first-session", { ...calm, snagMm: 2000 }, rules(snag))).toBe("offered");
  });

  it("that is beyond the learner", () => {
    const of = (learner: Conditions["learner"], above: number) =>
      saidOf("lift-method", { ...calm, learner }, rules({ rule: "level", above }));
    expect(of("beginner", 0)).toEqual([{ rule: "level", level: "next" }]);
    expect([of("beginner", 1), of("next", 0)]).toEqual(["offered", "offered"]);
  });

  it("by a float too light for the wind, from a breeze on", () => {
    const wind = { rule: "wind", of: "breeze", loadG: 3 } as const;
    const at = (blows: Conditions["wind"]) =>
      saidOf("insert-waggler-close-in", { ...calm, wind: blows }, rules(wind));
    expect(at("breeze")).toMatchObject([{ rule: "wind", neededG: 3 }]);
    expect(at("strong")).toMatchObject([{ rule: "wind" }]);
    expect(at("calm")).toBe("offered");
    const { capacityG, selfLoadG } = withId(shippedLibrary.rigs, "insert-waggler-close-in").rig.float;
    const just = rules({ ...wind, loadG: capacityG + selfLoadG });
    expect(saidOf("insert-waggler-close-in", { ...calm, wind: "strong" }, just)).toBe("offered");
  });

  it("by no line where the guide has no table of them", () => {
    const { lines: _, ...without } = shippedLibrary;
    const shelf = { ...without, rigs: [withId(shippedLibrary.rigs, "insert-waggler-close-in")] };
    const carp = { ...calm, fish: ["carp"] };
    expect(chooseRigs(rules({ rule: "line" }), carp, shelf).ruledOut).toEqual([]);
  });

  it("whose sums cannot be done there, with what they found", () => {
    expect(saidOf("pellet-waggler-shallow", { ...calm, depthMm: 1000 }, rules())).toMatchObject([
      { rule: "sums", finding: { code: "depth-below-setting" } },
    ]);
  });
});

const own = shippedLibrary.choosing!;
const anywhere = fc.record({
  water: fc.constantFrom("still" as const, "flowing" as const),
  depthMm: fc.integer({ min: 200, max: 6000 }),
  fromBankMm: fc.integer({ min: 500, max: 30_000 }),
  paceMs: fc.double({ min: 0.05, max: 1, noNaN: true }),
  wind: fc.constantFrom(...windStrengths),
  learner: fc.constantFrom(...levels),
  fish: fc.subarray(
    shippedLibrary.lines!.rows.map(({ fish }) => fish),
    { minLength: 1 },
  ),
  fishWanted: fc.constantFrom("every" as const, "any" as const),
  rodLengthMm: fc.integer({ min: 2000, max: 5000 }),
  snagMm: fc.integer({ min: 0, max: 6000 }),
});

/** The limits of the shipped rules once more, in other words: what breaks one of them is never to be offered. */
function breaksLimit({ rig, level }: ChoosableRig, at: Conditions): string | undefined {
  const load = rig.float.capacityG + rig.float.selfLoadG;
  const light = shippedLibrary.lines!.rows.filter(
    ({ fish, mainLine, hookLine }) =>
      at.fish.includes(fish) &&
      (rig.mainLine.strengthG < mainLine.leastG - 31 || rig.hookLine.strengthG < hookLine.leastG - 31),
  );
  const order = ["first", "beginner", "next"];
  const broken: Readonly<Record<string, boolean>> = {
    water: rig.water !== at.water,
    pace: rig.water === "flowing" && at.paceMs! > 1.25 * Math.max(...rig.pacesMs) + 1e-9,
    shallow: at.depthMm < 0.6 * Math.min(...rig.depthsMm) - 1e-6,
    deep: at.depthMm > 1.4 * Math.max(...rig.depthsMm) + 1e-6,
    distance: rig.outfit !== "whip" && load + 1e-9 < 0.15 * (at.fromBankMm / 1000 - 4),
    held:
      rig.float.attachment === "top and bottom" &&
      rig.outfit !== "whip" &&
      at.fromBankMm > 2 * at.rodLengthMm!,
    line: light.length > 0 && (at.fishWanted === "every" || light.length === at.fish.length),
    snag: at.snagMm! <= 2500 && rig.mainLine.strengthG < 1814 - 31,
    level: order.indexOf(level) > order.indexOf(at.learner),
    wind: (at.wind === "breeze" && load < 0.4) || (at.wind === "strong" && load < 1),
  };
  return Object.keys(broken).find((name) => broken[name]);
}

describe("whatever is asked", () => {
  it("no rig that breaks a hard limit is offered, and each rig is either offered or ruled out with its reasons", () => {
    fc.assert(
      fc.property(anywhere, ({ paceMs, ...others }) => {
        const conditions: Conditions = { ...others, ...(others.water === "flowing" && { paceMs }) };
        const { offered, ruledOut } = chooseRigs(own, conditions, shippedLibrary);
        for (const { entry, made } of offered) {
          expect([entry.id, breaksLimit(entry, conditions)]).toEqual([entry.id, undefined]);
          const depth = first(made.depths);
          expect(depth.depthMm).toBe(conditions.depthMm);
          expect(depth.findings.filter(({ severity }) => severity === "error")).toEqual([]);
          if (made.rig.outfit === "whip")
            expect(depth.whip!.reachMm).toBeGreaterThanOrEqual(conditions.fromBankMm);
          else if (made.rig.float.attachment !== "sliding")
            expect(depth.floatToHookMm).toBeLessThanOrEqual(conditions.rodLengthMm!);
        }
        for (const { because } of ruledOut) expect(because.length).toBeGreaterThan(0);
        const all = [...offered, ...ruledOut].map(({ entry }) => entry.id).sort();
        expect(all).toEqual(shippedLibrary.rigs.map(({ id }) => id).sort());
      }),
      { seed: 22, numRuns: 60 },
    );
  });

  it("the ranking explains itself: points are the sum of what speaks for a rig, and fall from one rig to the next", () => {
    fc.assert(
      fc.property(anywhere, ({ paceMs, ...others }) => {
        const conditions: Conditions = { ...others, ...(others.water === "flowing" && { paceMs }) };
        const { offered } = chooseRigs(own, conditions, shippedLibrary);
        let before = Number.POSITIVE_INFINITY;
        for (const { points, because } of offered) {
          expect(because.reduce((sum, one) => sum + one.points, 0)).toBe(points);
          expect(points).toBeLessThanOrEqual(before);
          before = points;
        }
      }),
      { seed: 23, numRuns: 30 },
    );
  });
});

it("counts what speaks for a rig by hand", () => {
  const { offered } = chooseRigs(own, { ...calm, fish: ["roach", "perch", "tench"] }, shippedLibrary);
  const rig = offered.find(({ entry }) => entry.id === "first-session")!;
  // Roach and perch are 2 each, its own depth 4.
  expect(rig.because).toEqual([
    { rule: "fish", fish: ["roach", "perch"], points: 4 },
    { rule: "depth", least: 1000, most: 1500, points: 4 },
  ]);
  expect(rig.points).toBe(8);
});

describe("by hand, what speaks for a rig besides fish and depth", () => {
  const saidFor = (id: string, conditions: Conditions, rule: string) => {
    const shelf = { ...shippedLibrary, rigs: [withId(shippedLibrary.rigs, id)] };
    const { offered } = chooseRigs(own, conditions, shelf);
    expect(offered).toHaveLength(1);
    return offered[0]!.because.filter((one) => one.rule === rule);
  };

  // The shirt button rig is for 10 m in 40 s to 10 m in 25 s, 0.25 to 0.4 m/s; up to 0.5 m/s it is still offered.
  it("is a pace between its own, both ends among them, at 4 points", () => {
    const { pacesMs } = withId(shippedLibrary.rigs, "stick-shirt-button").rig;
    const [least, most] = [Math.min(...pacesMs), Math.max(...pacesMs)];
    const at = (paceMs: number) => saidFor("stick-shirt-button", { ...stream, paceMs }, "pace");
    for (const paceMs of [least, (least + most) / 2, most])
      expect(at(paceMs)).toEqual([{ rule: "pace", least, most, points: 4 }]);
    expect(at(most + 0.01)).toEqual([]);
    expect(at(least - 0.01)).toEqual([]);
    expect(saidFor("first-session", calm, "pace")).toEqual([]);
  });

  it("is the learner's own level, at 3 points, and no easier one", () => {
    const of = (learner: Conditions["learner"]) => saidFor("first-session", { ...calm, learner }, "level");
    expect(of("first")).toEqual([{ rule: "level", level: "first", points: 3 }]);
    expect([of("beginner"), of("next")]).toEqual([[], []]);
  });

  it("is a float held at its foot, whose line can be sunk, from a breeze on, at 2 points", () => {
    const of = (id: string, wind: Conditions["wind"]) => saidFor(id, { ...calm, wind }, "wind");
    expect(of("first-session", "breeze")).toEqual([{ rule: "wind", points: 2 }]);
    expect(of("first-session", "strong")).toEqual([{ rule: "wind", points: 2 }]);
    expect(of("first-session", "calm")).toEqual([]);
    // The whip's float is held at its top and its foot.
    expect(of("whip-to-hand", "breeze")).toEqual([]);
  });

  // Two fish at 2, depth 4, level 3, wind 2.
  it("adds up: a first session in a breeze for roach and perch has 13 points", () => {
    const asked = { ...calm, wind: "breeze", learner: "first", fish: ["roach", "perch"] } as const;
    const { offered } = chooseRigs(own, asked, shippedLibrary);
    expect(offered.find(({ entry }) => entry.id === "first-session")!.points).toBe(13);
  });
});

it("knows a fish by any of its names, and counts it only for a rig whose line does for it", () => {
  const fishOf = (id: string) => {
    const { offered } = chooseRigs(own, { ...stream, fish: ["chub", "roach"] }, shippedLibrary);
    const said = offered.find(({ entry }) => entry.id === id)?.because;
    return said?.flatMap((one) => (one.rule === "fish" ? one.fish : []));
  };
  expect(withId(shippedLibrary.rigs, "stick-shirt-button").catches).toContain("small chub");
  expect(fishOf("stick-shirt-button")).toEqual(["roach"]);
  expect(fishOf("avon-bulk")).toContain("chub");
});

describe("the conditions at a spot", () => {
  const swim = withId(shippedLibrary.swims, "makebelieve-pool-willow");
  const [shelf, , , willow] = swim.spots;

  it("are its depth by the soundings, with the level added, and the nearest snag of its line", () => {
    const asked = { wind: "calm", learner: "first" } as const;
    expect(conditionsAt(swim, shelf!, asked)).toEqual({
      water: "still",
      wind: "calm",
      learner: "first",
      depthMm: 1050,
      fromBankMm: 3000,
      fish: swim.fish,
      fishWanted: "any",
    });
    expect(conditionsAt(swim, willow!, { ...asked, levelMm: -200 })).toMatchObject({
      depthMm: 800,
      snagMm: 2000,
    });
  });

  it("are none where the level leaves no water", () => {
    expect(conditionsAt(swim, shelf!, { wind: "calm", learner: "first", levelMm: -1050 })).toBeUndefined();
  });
});
