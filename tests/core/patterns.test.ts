import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { totalPullG, tubWithout } from "../../src/core/loading.ts";
import { floatClearMm, knotClearMm } from "../../src/core/patterns/clearance.ts";
import type { PatternRoom, PatternSpec, PlacedShot } from "../../src/core/patterns/pattern.ts";
import { patternKinds, placePattern } from "../../src/core/patterns/table.ts";
import { ballDiameterMm, pullG } from "../../src/core/shot.ts";
import { tradeShot, tradeTub } from "./loading-instances.ts";

const water = { tempC: 10, salinity: 0 };
const everySize = [
  "SSG",
  "AAA",
  "BB",
  "No 1",
  "No 4",
  "No 6",
  "No 8",
  "No 9",
  "No 10",
  "No 11",
  "No 12",
  "No 13",
] as const;
const fullTub = tradeTub(Object.fromEntries(everySize.map((size) => [size, 40])), "lead");
const lead = (massG: number) => pullG(massG, "lead", water);

/** A 2 AAA waggler in 2 m of water: 1.6 g, of which three tenths may go down the line. */
const waggler: PatternRoom = {
  depthMm: 2000,
  floatToHookMm: 1800,
  hookLengthMm: 300,
  pullG: lead(1.6),
  locked: true,
  linePullMaxG: lead(0.48),
  tub: fullTub,
  water,
};

/** A 4 No 4 stick in 1.5 m of water, held by rubbers. */
const stick: PatternRoom = {
  ...waggler,
  depthMm: 1500,
  floatToHookMm: 1480,
  pullG: lead(0.8),
  locked: false,
  linePullMaxG: lead(0.8),
};

function placed(spec: PatternSpec, room: PatternRoom): readonly PlacedShot[] {
  const answer = placePattern(spec, room);
  if (!answer.ok) throw new Error(JSON.stringify(answer.findings));
  return answer.value;
}

function told(shot: readonly PlacedShot[]): string[] {
  return shot.map(({ size, role, fromHookMm }) => `${size} ${role} ${Math.round(fromHookMm)}`);
}

function codes(spec: PatternSpec, room: PatternRoom): string[] {
  return placePattern(spec, room).findings.map(({ code }) => code);
}

describe("strung out", () => {
  const spec: PatternSpec = {
    kind: "strung out",
    size: "No 8",
    gapMm: 300,
    telltale: { size: "No 10" },
  };

  it("stands at the stated gap from just above the loop up", () => {
    expect(told(placed(spec, waggler))).toEqual([
      "No 10 telltale 315",
      "No 8 spread 615",
      "No 8 spread 915",
      "No 8 spread 1215",
      "No 8 spread 1515",
    ]);
  });

  it("leaves load to the lock in shallow water and takes no more than the line may carry in deep water", () => {
    expect(placed(spec, { ...waggler, floatToHookMm: 700 })).toHaveLength(2);
    const deep = placed(spec, { ...waggler, depthMm: 8000, floatToHookMm: 7800 });
    // 0.48 g: one No 10 of 0.04 g and seven No 8 of 0.06 g are 0.46 g, an eighth would make 0.52 g.
    expect(deep).toHaveLength(8);
    expect(deep.at(-1)!.fromHookMm).toBe(315 + 7 * 300);
  });

  it("stops where the tub does", () => {
    const tub = tradeTub({ BB: 9, "No 8": 2, "No 10": 1 }, "lead");
    expect(placed(spec, { ...waggler, tub })).toHaveLength(3);
  });

  it("carries the whole load of a float without a lock, closer together where the line is short", () => {
    const whole: PatternSpec = {
      ...spec,
      size: "No 4",
      alsoSizes: ["No 6", "No 8", "No 10"],
      telltale: { size: "No 8" },
    };
    const shot = placed(whole, stick);
    // 0.8 g less the No 8 is 0.74 g: exactly two No 4, a No 6 and four No 8. Seven shot from 615 up to 1430 mm.
    expect(told(shot)).toEqual([
      "No 8 telltale 315",
      "No 8 spread 615",
      "No 8 spread 751",
      "No 8 spread 887",
      "No 8 spread 1023",
      "No 6 spread 1158",
      "No 4 spread 1294",
      "No 4 spread 1430",
    ]);
    expect(totalPullG(shot, water)).toBeLessThanOrEqual(stick.pullG + 1e-9);
  });
});

describe("bulk", () => {
  const spec: PatternSpec = {
    kind: "bulk",
    sizes: ["No 4", "No 6", "No 8"],
    share: 0.7,
    fromHookMm: 900,
    droppers: ["No 8", "No 10"],
    telltale: { size: "No 12" },
  };

  it("sets droppers evenly between bulk and telltale", () => {
    const shot = placed(spec, stick);
    // 0.8 − 0.06 − 0.04 − 0.02 = 0.68 g: three No 4 and a No 8 are 0.66 g in four shot, with three No 4 no other
    // shot comes nearer; 0.68 g is two No 4, a No 6 and three No 8.
    expect(told(shot).slice(0, 3)).toEqual(["No 12 telltale 315", "No 10 dropper 510", "No 8 dropper 705"]);
    const bulk = shot.slice(3);
    expect(bulk.map(({ size }) => size)).toEqual(["No 8", "No 8", "No 8", "No 6", "No 4", "No 4"]);
    expect(bulk[0]!.fromHookMm).toBe(900);
    expect(totalPullG(shot, water)).toBeCloseTo(stick.pullG, 9);
  });

  it("takes its share on a locked float and never more than the line may carry", () => {
    const share = placed({ ...spec, share: 0.1 }, waggler);
    // A tenth of 1.6 g is 0.16 g: a No 6 and a No 8.
    expect(share.slice(3).map(({ size }) => size)).toEqual(["No 8", "No 6"]);
    const most = placed(spec, waggler);
    expect(totalPullG(most, water)).toBeLessThanOrEqual(waggler.linePullMaxG + 1e-9);
  });

  it("says what depth would do where the water is too shallow", () => {
    const found = placePattern(spec, { ...stick, depthMm: 800, floatToHookMm: 780 }).findings[0]!;
    expect(found.code).toBe("pattern.too-shallow");
    const { neededDepthMm, neededFloatToHookMm } = found.values as Record<string, number>;
    expect(neededDepthMm).toBe(Math.ceil((800 + neededFloatToHookMm! - 780) / 10) * 10);
    expect(codes(spec, { ...stick, depthMm: neededDepthMm!, floatToHookMm: neededFloatToHookMm! })).toEqual(
      [],
    );
    expect(codes(spec, { ...stick, depthMm: 800, floatToHookMm: neededFloatToHookMm! - 1 })).toEqual([
      "pattern.too-shallow",
    ]);
  });

  it("goes down the hook length only where the telltale does and the bulk leaves no other room", () => {
    const canal: PatternSpec = {
      kind: "bulk",
      sizes: ["No 8"],
      share: 1,
      fromHookMm: 320,
      droppers: ["No 12"],
      telltale: { size: "No 12", fromHookMm: 100 },
    };
    expect(told(placed(canal, { ...stick, pullG: lead(0.22) })).slice(0, 2)).toEqual([
      "No 12 telltale 100",
      "No 12 dropper 210",
    ]);
    // With the bulk well up, the droppers stay above the loop.
    expect(
      told(placed({ ...canal, fromHookMm: 700, droppers: ["No 11", "No 12"] }, stick)).slice(0, 3),
    ).toEqual(["No 12 telltale 100", "No 12 dropper 315", "No 11 dropper 508"]);
  });

  it("refuses a bulk on the hook length and moves one that was asked for on the knot", () => {
    expect(codes({ ...spec, droppers: [], fromHookMm: 200 }, stick)).toEqual(["pattern.bulk-on-hook-length"]);
    const onKnot: PatternSpec = {
      ...spec,
      droppers: [],
      fromHookMm: 300,
      telltale: { size: "No 12", fromHookMm: 80 },
    };
    expect(codes(onKnot, stick)).toEqual(["pattern.moved-off-knot"]);
    expect(placed(onKnot, stick)[1]!.fromHookMm).toBe(315);
  });
});

describe("spread bulk", () => {
  it("opens the bulk out evenly over its length, heavier shot higher", () => {
    const shot = placed(
      {
        kind: "spread bulk",
        sizes: ["No 4", "No 6"],
        share: 1,
        fromHookMm: 600,
        overMm: 300,
        droppers: [],
        telltale: { size: "No 6" },
      },
      stick,
    );
    expect(told(shot)).toEqual([
      "No 6 telltale 315",
      "No 6 bulk 600",
      "No 4 bulk 700",
      "No 4 bulk 800",
      "No 4 bulk 900",
    ]);
  });
});

describe("shirt button", () => {
  it("shares the line out in equal steps", () => {
    const shot = placed(
      { kind: "shirt button", sizes: ["No 4"], telltale: { size: "No 4", fromHookMm: 280 } },
      { ...stick, hookLengthMm: 200 },
    );
    // 0.8 g are four No 4; (1480 − 280) / 4 = 300 mm apart and below the float.
    expect(told(shot)).toEqual([
      "No 4 telltale 280",
      "No 4 spread 580",
      "No 4 spread 880",
      "No 4 spread 1180",
    ]);
  });

  it("tapered, lets gaps and sizes fall towards the hook", () => {
    const shot = placed(
      { kind: "tapered shirt button", sizes: ["No 4", "No 6", "No 8"], telltale: { size: "No 8" } },
      stick,
    );
    expect(new Set(shot.map(({ size }) => size)).size).toBe(3);
    const gaps = shot.slice(1).map(({ fromHookMm }, i) => fromHookMm - shot[i]!.fromHookMm);
    for (let i = 1; i < gaps.length; i++) expect(gaps[i]!).toBeGreaterThan(gaps[i - 1]!);
    expect(totalPullG(shot, water)).toBeCloseTo(stick.pullG, 9);
  });
});

describe("lift", () => {
  const spec: PatternSpec = { kind: "lift", anchor: "SSG", fromHookMm: 50 };

  it("sets one shot near the hook that may be too much for the float", () => {
    const shot = placed(spec, { ...stick, pullG: lead(1.4) });
    expect(told(shot)).toEqual(["SSG anchor 50"]);
  });

  it("warns of an anchor that leaves the float standing", () => {
    expect(codes(spec, { ...stick, pullG: lead(1.7) })).toEqual(["pattern.anchor-too-light"]);
  });
});

describe("all at the float", () => {
  it("leaves the line bare, and needs a lock", () => {
    expect(placed({ kind: "all at the float" }, waggler)).toEqual([]);
    expect(codes({ kind: "all at the float" }, stick)).toEqual(["pattern.no-lock"]);
  });
});

describe("every pattern", () => {
  const telltaleSize = fc.constantFrom("No 8", "No 10", "No 12");
  const telltale = fc.oneof(
    telltaleSize.map((size) => ({ size })),
    fc.record({ size: telltaleSize, fromHookMm: fc.integer({ min: 40, max: 500 }) }),
  );
  const sizes = fc.subarray(["AAA", "BB", "No 1", "No 4", "No 6", "No 8"], { minLength: 1 });
  const bulkParts = {
    sizes,
    share: fc.double({ min: 0.05, max: 1, noNaN: true }),
    fromHookMm: fc.integer({ min: 100, max: 2500 }),
    droppers: fc.constantFrom<readonly string[]>(
      [],
      ["No 8"],
      ["No 8", "No 10"],
      ["No 8", "No 9", "No 10", "No 11"],
    ),
    telltale,
  };
  const anySpec: fc.Arbitrary<PatternSpec> = fc.oneof(
    fc.record({
      kind: fc.constant("strung out" as const),
      size: fc.constantFrom("No 4", "No 6", "No 8"),
      gapMm: fc.integer({ min: 5, max: 600 }),
      alsoSizes: fc.constantFrom<readonly string[]>([], ["No 6", "No 8", "No 10"]),
      telltale,
    }),
    fc.record({ kind: fc.constant("bulk" as const), ...bulkParts }),
    fc.record({
      kind: fc.constant("spread bulk" as const),
      ...bulkParts,
      overMm: fc.integer({ min: 10, max: 1200 }),
    }),
    fc.record({
      kind: fc.constantFrom("shirt button" as const, "tapered shirt button" as const),
      sizes,
      telltale,
    }),
    fc.record({
      kind: fc.constant("lift" as const),
      anchor: fc.constantFrom("SSG", "AAA", "BB"),
      fromHookMm: fc.integer({ min: 10, max: 600 }),
    }),
    fc.record({ kind: fc.constant("all at the float" as const) }),
  );
  const anyRoom: fc.Arbitrary<PatternRoom> = fc
    .record({
      depthMm: fc.integer({ min: 400, max: 8000 }),
      draughtMm: fc.integer({ min: 20, max: 300 }),
      overdepthMm: fc.integer({ min: -200, max: 300 }),
      hookLengthMm: fc.integer({ min: 100, max: 600 }),
      massG: fc.double({ min: 0.1, max: 6, noNaN: true }),
      lineShare: fc.double({ min: 0.1, max: 0.6, noNaN: true }),
      locked: fc.boolean(),
      stocked: fc.integer({ min: 1, max: 40 }),
    })
    .map(({ depthMm, draughtMm, overdepthMm, hookLengthMm, massG, lineShare, locked, stocked }) => ({
      depthMm,
      floatToHookMm: depthMm + overdepthMm - draughtMm,
      hookLengthMm,
      pullG: lead(massG),
      locked,
      linePullMaxG: lead(massG) * lineShare,
      tub: tradeTub(Object.fromEntries(everySize.map((size) => [size, stocked])), "lead"),
      water,
    }));

  it("keeps its shot in order, apart, off the knot, below the float and within the load; or says why not", () => {
    const reached = new Map<string, number>();
    fc.assert(
      fc.property(anySpec, anyRoom, (spec, room) => {
        const answer = placePattern(spec, room);
        if (!answer.ok) {
          for (const { values } of answer.findings) {
            for (const value of Object.values(values)) expect(value).not.toBeNaN();
          }
          return;
        }
        reached.set(spec.kind, (reached.get(spec.kind) ?? 0) + 1);
        const shot = answer.value;
        for (const [i, one] of shot.entries()) {
          expect(one.fromHookMm).toBeGreaterThan(0);
          expect(one.fromHookMm).toBeLessThanOrEqual(room.floatToHookMm - floatClearMm + 1e-6);
          const onKnot = Math.abs(one.fromHookMm - room.hookLengthMm) < knotClearMm - 1e-6;
          expect({ onKnot, one }).toMatchObject({ onKnot: false });
          const above = shot[i + 1];
          if (!above) continue;
          const diameterMm = ballDiameterMm(above.massG, above.metal);
          expect(above.fromHookMm - one.fromHookMm).toBeGreaterThanOrEqual(diameterMm - 1e-6);
          expect(above.massG).toBeGreaterThanOrEqual(one.massG);
        }
        const stated = "telltale" in spec && spec.telltale.fromHookMm !== undefined;
        if (spec.kind !== "lift" && !stated) {
          for (const one of shot) expect(one.fromHookMm).toBeGreaterThan(room.hookLengthMm);
        }
        if (spec.kind !== "lift") {
          const mostG = room.locked ? room.linePullMaxG : room.pullG;
          expect(totalPullG(shot, water)).toBeLessThanOrEqual(mostG + 1e-9);
        }
        const left = tubWithout(room.tub, shot).reduce((sum, { count }) => sum + count, 0);
        const before = room.tub.reduce((sum, { count }) => sum + count, 0);
        expect(before - left).toBe(shot.length);
      }),
      { numRuns: 3000, seed: 9 },
    );
    for (const kind of patternKinds) expect(reached.get(kind) ?? 0).toBeGreaterThan(20);
  });

  it("works at the depth it says it needs", () => {
    let met = 0;
    fc.assert(
      fc.property(anySpec, anyRoom, (spec, room) => {
        const found = placePattern(spec, room).findings.find(({ code }) => code === "pattern.too-shallow");
        if (!found) return;
        met++;
        const { neededDepthMm, neededFloatToHookMm } = found.values as Record<string, number>;
        const deeper = { ...room, depthMm: neededDepthMm!, floatToHookMm: neededFloatToHookMm! + 1e-6 };
        expect(codes(spec, deeper)).not.toContain("pattern.too-shallow");
      }),
      { numRuns: 3000, seed: 10 },
    );
    expect(met).toBeGreaterThan(100);
  });

  it.each([
    ["a length below nothing", { floatToHookMm: -5 }, "pattern.bad-length"],
    ["a depth that is no number", { depthMm: Number.NaN }, "pattern.bad-length"],
    ["a capacity smaller than hook and bait", { pullG: -0.1 }, "pattern.no-pull-left"],
    ["an empty tub", { tub: [] }, "pattern.not-in-tub"],
    ["a telltale too heavy for the line", { linePullMaxG: 0.01 }, "pattern.too-heavy-for-line"],
  ])("answers %s with a finding", (_, change, code) => {
    const spec: PatternSpec = { kind: "shirt button", sizes: ["No 8"], telltale: { size: "No 8" } };
    expect(codes(spec, { ...waggler, ...change })).toEqual([code]);
  });

  it("refuses shot that grow towards the hook", () => {
    const spec: PatternSpec = {
      kind: "bulk",
      sizes: ["No 4"],
      share: 0.5,
      fromHookMm: 900,
      droppers: ["No 10", "No 8"],
      telltale: { size: "No 12" },
    };
    expect(codes(spec, stick)).toEqual(["pattern.grows-towards-hook"]);
    expect(tradeShot("No 10").massG).toBeLessThan(tradeShot("No 8").massG);
  });
});
