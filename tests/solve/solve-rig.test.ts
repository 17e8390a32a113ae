import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readLibrary } from "../../src/content/read-library.ts";
import { totalPullG } from "../../src/core/loading/loading.ts";
import { type Metal, pullG } from "../../src/core/tackle/shot.ts";
import type { Rig } from "../../src/model/rig.ts";
import type { SolvedRig } from "../../src/model/solved.ts";
import { allShot } from "../../src/model/solved.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { pool, stick, straightQuill } from "../core/floats.ts";
import { tradeMassesG, tradeTub } from "../core/loading-instances.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

const plain = readLibrary(sourcesOf(contentWith())).value!.rigs[0]!.rig;

/** Hook and bait that weigh nothing, so that the float's marking is all that counts. */
const bare: Partial<Rig> = {
  hook: { ...plain.hook, massG: 0 },
  bait: { ...plain.bait, massG: 0 },
  conditions: pool,
};

const plenty = (metal: Metal, ...sizes: string[]) =>
  tradeTub(Object.fromEntries(sizes.map((size) => [size, Number.POSITIVE_INFINITY])), metal);

function solved(changes: Partial<Rig>): SolvedRig {
  const answer = solveRig({ ...plain, ...changes });
  if (!answer.ok) throw new Error(JSON.stringify(answer.findings));
  return answer.value;
}

const sizesOf = ({ depths }: SolvedRig) => allShot(depths[0]!).map(({ size }) => size);

describe("a rig whose float is held by shot", () => {
  it("keeps at the float at least what the lock is to have, and lets the rest down a long line", () => {
    const rig: Partial<Rig> = {
      depthsMm: [6000],
      rodLengthMm: 9000,
      lockShareMin: 0.7,
      pattern: { kind: "strung out", size: "No 8", gapMm: 300, telltale: { size: "No 8" } },
      tub: plenty("lead", "BB", "No 4", "No 8"),
    };
    const { floatPullG, hookAndBaitPullG, depths } = solved(rig);
    const forShotG = floatPullG - hookAndBaitPullG;
    const onLineG = totalPullG(depths[0]!.lineShot, plain.conditions);
    expect(onLineG).toBeLessThanOrEqual(0.3 * forShotG);
    // One more No 8 would be too many.
    expect(onLineG + pullG(0.06, "lead", plain.conditions)).toBeGreaterThan(0.3 * forShotG);
  });

  it("is none where no shot are left for the lock", () => {
    const tub = tradeTub({ "No 8": 3 }, "lead");
    const pattern = { kind: "strung out", size: "No 8", gapMm: 300, telltale: { size: "No 8" } } as const;
    const answer = solveRig({ ...plain, tub, pattern });
    expect(answer.ok).toBe(false);
    expect(answer.findings).not.toEqual([]);
  });
});

describe("a rig that is fished with a whip", () => {
  it("shares the whip's line between water and air, and says where it is too short", () => {
    // A whip of 3 m has 2.7 m of line. In 1 m of water 1.7 m are left; in 2.3 m only 40 cm, and half a metre is needed.
    const whip = solved({ outfit: "whip", rodLengthMm: 3000, depthsMm: [1000, 2300] });
    expect(whip.depths.map((depth) => depth.whip?.tipToWaterMm)).toEqual([1700, 400]);
    expect(whip.depths.map(({ findings }) => findings.map(({ code }) => code))).toEqual([
      expect.not.arrayContaining(["whip-too-short"]),
      expect.arrayContaining(["whip-too-short"]),
    ]);
    expect(solved({ depthsMm: [1000] }).depths[0]!.whip).toBeUndefined();
  });
});

describe("a float marked 2 AAA", () => {
  // Pull of 2 AAA of lead at 10 °C: 1.6 g × (1 − 999.70/11340) = 1.459 g.
  const allLead: Partial<Rig> = {
    ...bare,
    float: straightQuill,
    pattern: { kind: "all at the float" },
    tub: plenty("lead", "AAA", "BB"),
    depthsMm: [1500],
  };

  it("is locked by one AAA on each side and shows its 15 mm", () => {
    const rig = solved(allLead);
    expect(sizesOf(rig)).toEqual(["AAA", "AAA"]);
    expect(rig.floatPullG).toBeCloseTo(1.459, 3);
    expect(rig.depths[0]!.tipShowingMm).toBeCloseTo(15, 2);
  });

  it("hangs 185 mm deep, so that 1.315 m of line reach a bed 1.5 m down", () => {
    // 200 mm of float less 15 mm of tip = 185 mm; 1500 − 185 = 1315 mm. Without the draught the hook would be 185 mm,
    // nearly the float's length, too deep.
    const [depth] = solved(allLead).depths;
    expect(depth!.draughtMm).toBeCloseTo(185, 2);
    expect(depth!.floatToHookMm).toBeCloseTo(1315, 2);
  });

  it("spares what hook, bait and shot leave of its pull", () => {
    // A bait of 0.1 g and 1.2 g/cm³ pulls 0.1 × (1 − 999.70/1200) = 0.016692 g, three BB of lead 1.2 × 0.911843 = 1.094212 g.
    const bait = { ...plain.bait, massG: 0.1, densityKgM3: 1200 };
    const [depth] = solved({ ...allLead, bait, tub: tradeTub({ BB: 3 }, "lead") }).depths;
    expect(depth!.sparePullG).toBeCloseTo(1.458949 - 1.094212 - 0.016692, 5);
  });

  it("is pulled 5.4 % less by the same weight of tin", () => {
    // (1 − 999.70/7287) ÷ (1 − 999.70/11340) = 0.86281 ÷ 0.91184 = 0.9462.
    const pulled = (metal: Metal) =>
      solved({ ...allLead, tub: tradeTub({ AAA: 2 }, metal) }).depths[0]!.pullG;
    expect(1 - pulled("tin") / pulled("lead")).toBeCloseTo(0.054, 3);
  });
});

describe("what sets the tip", () => {
  it.each([
    [0, "shot"],
    [-100, "shot"],
    [280, "shot"],
    [400, "depth"],
  ] as const)("set %d mm over depth, with the lowest shot 31.5 cm up, is the %s", (overdepthMm, by) => {
    const setting = overdepthMm === 0 ? "dead depth" : overdepthMm > 0 ? "over depth" : "off bottom";
    const [depth] = solved({ setting, overdepthMm }).depths;
    expect(depth!.tipSetBy).toBe(by);
    expect(depth!.shotEffects.length > 0).toBe(by === "shot");
    expect(depth!.tipStates.length > 0).toBe(by === "shot");
  });

  it("is shown wrong by the lightest shot of the tub that is seen to be missing, on the rig or not", () => {
    // The quill rises 4.6 mm for 0.1 g of lead: a No 6 is too little to see, a No 4 is not, an AAA is far too much.
    const tub = plenty("lead", "AAA", "No 4", "No 6");
    const [depth] = solved({
      ...bare,
      float: straightQuill,
      pattern: { kind: "all at the float" },
      tub,
    }).depths;
    expect(depth!.lockShot.map(({ size }) => size)).toEqual(["AAA", "AAA"]);
    expect(depth!.tipStates.map(({ changeG }) => changeG)).toEqual([-0.2, 0, 0.2]);
  });
});

it("a stick marked 4 No 4 takes just those, in even steps, without a lock", () => {
  const rig = solved({
    ...bare,
    bait: { ...plain.bait, massG: 1e-12 },
    float: stick,
    water: "flowing",
    pattern: { kind: "shirt button", sizes: ["No 4"], telltale: { size: "No 4" } },
    lockShareMin: 0,
    tub: plenty("lead", "No 4"),
    depthsMm: [1500],
  });
  const [depth] = rig.depths;
  expect(sizesOf(rig)).toEqual(["No 4", "No 4", "No 4", "No 4"]);
  expect(depth!.lockShare).toBe(0);
  // 140 mm of float less 10 mm of tip = 130 mm of draught.
  expect(depth!.floatToHookMm).toBeCloseTo(1370, 1);
});

describe("bad figures give a reason", () => {
  it.each<[string, Partial<Rig>]>([
    ["depth-not-positive", { depthsMm: [-1000] }],
    ["depth-not-positive", { depthsMm: [Number.NaN] }],
    ["depth-too-great", { depthsMm: [101_000] }],
    ["depth-too-great", { depthsMm: [Number.MAX_SAFE_INTEGER], water: "flowing", pacesMs: [0.3] }],
    ["depth-too-great", { depthsMm: [1000], setting: "over depth", overdepthMm: 1e12 }],
    ["flow-pace", { water: "flowing", pacesMs: [0.3], heldBackShare: 1.1 }],
    ["flow-pace", { water: "flowing", pacesMs: [0.3], heldBackShare: -0.1 }],
    ["depth-below-draught", { depthsMm: [100] }],
    ["depth-below-setting", { depthsMm: [1000], setting: "off bottom", overdepthMm: -900 }],
    ["float-tip-showing", { tipWantedMm: 0 }],
    ["capacity-below-hook-and-bait", { hook: { ...plain.hook, massG: 5 } }],
    ["pattern.not-in-tub", { tub: [] }],
    [
      "float-tip-zero",
      {
        float: {
          ...plain.float,
          profile: [
            { atMm: 0, diameterMm: 4 },
            { atMm: 200, diameterMm: 0 },
          ],
        },
      },
    ],
    ["float-density-marked", { float: { ...plain.float, capacityG: 3.4 } }],
  ])("%s", (code, changes) => {
    const answer = solveRig({ ...plain, ...changes });
    expect(answer.ok).toBe(false);
    expect(answer.findings.map((finding) => finding.code)).toContain(code);
  });
});

it("a rig that cannot be had at one of its depths has no answer, and the reason of each", () => {
  const answer = solveRig({ ...plain, depthsMm: [100, 1500, -1] });
  expect(answer.ok).toBe(false);
  const errors = answer.findings.filter(({ severity }) => severity === "error");
  expect(errors.map(({ code }) => code)).toEqual(["depth-below-draught", "depth-not-positive"]);
});

describe("any rig that can be had", () => {
  const tubs = fc
    .record(
      Object.fromEntries(
        Object.keys(tradeMassesG).map((size) => [
          size,
          fc.oneof(fc.integer({ min: 0, max: 12 }), fc.constant(Number.POSITIVE_INFINITY)),
        ]),
      ),
    )
    .chain((counts) =>
      fc.constantFrom<Metal>("tin", "bismuth", "tungsten").map((metal) => tradeTub(counts, metal)),
    );
  const telltale = fc.constantFrom("No 8", "No 10", "No 12").map((size) => ({ size }));
  const patterns = telltale.chain((tell) =>
    fc.oneof(
      fc.record({
        kind: fc.constant("strung out" as const),
        size: fc.constantFrom("No 8", "No 6"),
        gapMm: fc.integer({ min: 100, max: 400 }),
        telltale: fc.constant(tell),
      }),
      fc.record({
        kind: fc.constant("bulk" as const),
        sizes: fc.constant(["BB", "No 4", "No 6", "No 8"]),
        share: fc.double({ min: 0.2, max: 0.5, noNaN: true }),
        fromHookMm: fc.integer({ min: 400, max: 900 }),
        droppers: fc.constant(["No 8"]),
        telltale: fc.constant(tell),
      }),
      fc.constant({ kind: "all at the float" as const }),
    ),
  );
  const rigs = fc.record({
    pattern: patterns,
    tub: tubs,
    depthsMm: fc.tuple(fc.integer({ min: 400, max: 8000 })),
    water: fc.constantFrom("still" as const, "flowing" as const),
    lockShareMin: fc.double({ min: 0.3, max: 0.9, noNaN: true }),
  });

  it("keeps to its capacity, its order and its identity, and its guide to the way of the water; or says why not", () => {
    let had = 0;
    fc.assert(
      fc.property(rigs, (changes) => {
        const answer = solveRig({ ...plain, ...changes });
        if (!answer.ok) {
          expect(answer.findings.some(({ severity }) => severity === "error")).toBe(true);
          expect(JSON.stringify(answer.findings)).not.toContain("null");
          return;
        }
        had++;
        const { floatPullG, hookAndBaitPullG } = answer.value;
        const [depth] = answer.value.depths;
        const { lineShot: line, pullG, depthMm, overdepthMm, draughtMm, floatToHookMm, depthGuide } = depth!;
        expect(pullG + hookAndBaitPullG).toBeLessThanOrEqual(floatPullG + 1e-6);
        expect(draughtMm + floatToHookMm).toBeCloseTo(depthMm + overdepthMm, 6);
        for (let i = 1; i < line.length; i++) {
          const apartMm = line[i]!.fromHookMm - line[i - 1]!.fromHookMm;
          expect(apartMm).toBeGreaterThanOrEqual(
            Math.max(line[i]!.diameterMm, line[i - 1]!.diameterMm) - 1e-6,
          );
        }
        const lowestMm = line[0]?.fromHookMm ?? Number.POSITIVE_INFINITY;
        const tips = depthGuide.filter(({ state }) => state !== "lies flat");
        for (let i = 1; i < tips.length; i++) {
          const before = tips[i - 1]!.tipShowingMm ?? 0;
          const now = tips[i]!.tipShowingMm ?? 0;
          if (changes.water === "still") expect(now).toBeGreaterThanOrEqual(before - 1e-6);
          else if (tips[i - 1]!.overdepthMm >= lowestMm) expect(now).toBeLessThanOrEqual(before + 1e-6);
        }
      }),
      { seed: 7, numRuns: 150 },
    );
    expect(had).toBeGreaterThan(60);
  });
});
