import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { totalPullG, tubWithout } from "../../../src/core/loading/loading.ts";
import { floatClearMm, knotClearMm } from "../../../src/core/patterns/clearance.ts";
import type { PatternKind, PatternRoom, PatternSpec } from "../../../src/core/patterns/pattern.ts";
import { placePattern } from "../../../src/core/patterns/table.ts";
import { ballDiameterMm } from "../../../src/core/tackle/shot.ts";
import { tradeShot, tradeTub } from "../loading-instances.ts";
import { codes, everySize, lead, stick, waggler, water } from "./rooms.ts";

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
    const reached: Record<PatternKind, number> = {
      "strung out": 0,
      bulk: 0,
      "spread bulk": 0,
      "shirt button": 0,
      "tapered shirt button": 0,
      lift: 0,
      "all at the float": 0,
    };
    fc.assert(
      fc.property(anySpec, anyRoom, (spec, room) => {
        const answer = placePattern(spec, room);
        if (!answer.ok) {
          for (const { values } of answer.findings) {
            for (const value of Object.values(values)) expect(value).not.toBeNaN();
          }
          return;
        }
        reached[spec.kind]++;
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
      { numRuns: 1500, seed: 9 },
    );
    expect(Object.entries(reached).filter(([, times]) => times <= 20)).toEqual([]);
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
        // As much and no more: a millimetre less of line does not.
        const shorter = { ...room, floatToHookMm: neededFloatToHookMm! - 1 };
        expect(codes(spec, shorter)).toContain("pattern.too-shallow");
      }),
      { numRuns: 1500, seed: 10 },
    );
    expect(met).toBeGreaterThan(100);
  });

  it.each([
    ["a length below nothing", { floatToHookMm: -5 }, "pattern.bad-length"],
    ["no water at all", { depthMm: 0 }, "pattern.bad-length"],
    ["a hook at the float", { floatToHookMm: 0 }, "pattern.bad-length"],
    ["no hook length", { hookLengthMm: 0 }, "pattern.bad-length"],
    ["a depth that is no number", { depthMm: Number.NaN }, "beyond-reckoning"],
    ["a capacity smaller than hook and bait", { pullG: -0.1 }, "pattern.no-pull-left"],
    ["an empty tub", { tub: [] }, "pattern.not-in-tub"],
    ["a telltale too heavy for the line", { linePullMaxG: 0.01 }, "pattern.too-heavy-for-line"],
  ])("answers %s with a finding", (_, change, code) => {
    const spec: PatternSpec = { kind: "shirt button", sizes: ["No 8"], telltale: { size: "No 8" } };
    expect(codes(spec, { ...waggler, ...change })).toEqual([code]);
  });

  it("keeps two centimetres off the hook, common practice without a source", () => {
    const spec = (fromHookMm: number): PatternSpec => ({
      kind: "shirt button",
      sizes: ["No 8"],
      telltale: { size: "No 8", fromHookMm },
    });
    expect(codes(spec(20), waggler)).toEqual([]);
    expect(codes(spec(19.9), waggler)).toEqual(["pattern.too-near-hook"]);
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
