import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { floatMassG, floatPullG, lengthMm } from "../../../src/core/float/float.ts";
import { shotEffects, tipStates } from "../../../src/core/float/shot-effects.ts";
import { draughtMm, liftMm, loadForTipG, pullToSinkG, tipShowingMm } from "../../../src/core/float/tip.ts";
import { pullG, type Shot } from "../../../src/core/tackle/shot.ts";
import { pool, stick, straightQuill, tippedFloat } from "../floats.ts";

fc.configureGlobal({ seed: 20, numRuns: 200 });

// Water at 10 °C weighs 999.7026 kg/m³ (Tanaka et al. 2001), so 1 g of lead (11 340 kg/m³) pulls
// 1 − 999.7026/11 340 = 0.911843 g.
const leadShare = 0.911843;

describe("a straight quill marked 2 AAA", () => {
  // Area π/4 · 5² = 19.6350 mm²; 185 mm of it under water: 3632.47 mm³ = 3.63139 g of water.
  // Pull 2 · 0.8 g · 0.911843 = 1.45895 g; own mass 3.63139 − 1.45895 = 2.17244 g.
  it("takes a pull of 1.459 g and so weighs 2.172 g", () => {
    expect(floatPullG(straightQuill, pool)).toBeCloseTo(1.6 * leadShare, 5);
    expect(floatMassG(straightQuill, pool)).toBeCloseTo(2.17244, 4);
  });

  it("shows its 15 mm at its marking", () => {
    expect(tipShowingMm(straightQuill, floatPullG(straightQuill, pool), pool)).toBeCloseTo(15, 10);
  });

  // A No 8 (0.06 g lead) pulls 0.054711 g = 54.727 mm³ of water: 54.727/19.635 = 2.787 mm.
  it("sinks 2.8 mm for a No 8 more and rises as much for one fewer", () => {
    const no8 = { size: "No 8", massG: 0.06, metal: "lead" } as const;
    const [effect] = shotEffects(straightQuill, floatPullG(straightQuill, pool), [no8], [no8], pool);
    expect(effect!.oneMoreMm).toBeCloseTo(15 - 2.787, 3);
    expect(effect!.oneFewerMm).toBeCloseTo(15 + 2.787, 3);
  });

  it("tells one fewer only of a shot that it carries, and none where it lies flat without it", () => {
    const full = floatPullG(straightQuill, pool);
    const aaa = { size: "AAA", massG: 0.8, metal: "lead" } as const;
    const ssg = { size: "SSG", massG: 1.6, metal: "lead" } as const;
    const fewer = (carried: readonly Shot[]) =>
      shotEffects(straightQuill, full, [ssg], carried, pool).map((effect) => effect.oneFewerMm);
    expect(fewer([aaa])).toEqual([undefined]);
    // Without any load a float of one thickness has nothing that could make it stand.
    expect(fewer([ssg])).toEqual([null]);
  });

  // 15 mm · 19.635 mm² = 294.52 mm³ = 0.29444 g of water.
  it("needs 0.294 g of a fish to go under", () => {
    expect(pullToSinkG(straightQuill, floatPullG(straightQuill, pool), pool)).toBeCloseTo(0.29444, 4);
  });

  it("goes under with a BB too many", () => {
    const bb = { size: "BB", massG: 0.4, metal: "lead" } as const;
    const full = floatPullG(straightQuill, pool);
    expect(tipShowingMm(straightQuill, full + pullG(0.4, "lead", pool), pool)).toBeNull();
    expect(draughtMm(straightQuill, full + 1, pool)).toBe(200);
    expect(tipStates(straightQuill, full, bb, pool).map((s) => [s.load, s.changeG])).toEqual([
      ["too little", -0.4],
      ["right", 0],
      ["too much", 0.4],
    ]);
    // 0.4 · 0.911843 = 0.364737 g = 364.85 mm³: 18.581 mm.
    const [little, right, much] = tipStates(straightQuill, full, bb, pool);
    expect(little!.tipShowingMm).toBeCloseTo(33.581, 2);
    expect(right!.tipShowingMm).toBeCloseTo(15, 10);
    expect(much!.tipShowingMm).toBe(0);
  });
});

describe("a stick marked 4 No 4", () => {
  // Below the mark: stem π/4 · 4 · 60 = 188.496; cone part π · 30/12 · (4 + 12 + 36) = 408.407;
  // body π/4 · 36 · 30 = 848.230; half the top cone, 6 to 5 mm: π · 10/12 · (36 + 30 + 25) = 238.238.
  // Together 1683.370 mm³ = 1.682870 g; pull 4 · 0.2 · 0.911843 = 0.729474 g; own mass 0.953395 g.
  it("weighs 0.953 g", () => {
    expect(floatPullG(stick, pool)).toBeCloseTo(0.729474, 5);
    expect(floatMassG(stick, pool)).toBeCloseTo(0.953395, 4);
  });

  // One No 4 fewer: 0.182369 g = 182.423 mm³ less. The 10 mm cone part below the mark holds 238.238 mm³, so the
  // water line stays in it, where 55.815 mm³ are left above d = 6: r³ = 27 + 3 · 55.815 · (−0.05)/π = 24.3350,
  // r = 2.89790, x = (3 − 2.89790)/0.05 = 2.0420 mm above the body; tip showing 20 − 2.042 = 17.958 mm.
  it("shows 18 mm with three of them", () => {
    const three = pullG(0.6, "lead", pool);
    expect(tipShowingMm(stick, three, pool)).toBeCloseTo(17.958, 2);
  });
});

describe("a thin tip", () => {
  // 0.06 g of lead pulls 0.054711 g; area of a 2 mm tip π/4 · 4 = 3.14159 mm²; 54.727 mm³/3.14159 mm² = 17.42 mm.
  it("of 2 mm lifts about 17 mm when a 0.06 g lead shot is taken off it", () => {
    const float = tippedFloat(2);
    expect(liftMm(float, floatPullG(float, pool), pullG(0.06, "lead", pool), pool)).toBeCloseTo(17.42, 2);
  });
});

describe("the marked capacity", () => {
  it("holds in fresh water; the sea carries more", () => {
    // 35 of salt at 10 °C: 1026.952 − 999.703 = 27.25 kg/m³ more on 3.63247 cm³ = 0.0990 g.
    const sea = { tempC: 10, salinity: 35 };
    expect(floatPullG(straightQuill, sea) - floatPullG(straightQuill, pool)).toBeCloseTo(0.099, 3);
    expect(floatMassG(straightQuill, sea)).toBeCloseTo(floatMassG(straightQuill, pool), 10);
  });
});

const loads = fc.double({ min: 0, max: 6, noNaN: true });
const floats = fc.oneof(
  fc.constant(straightQuill),
  fc.constant(stick),
  fc.double({ min: 0.8, max: 12, noNaN: true }).map((d) => tippedFloat(d)),
);

describe("any float", () => {
  it("never shows more tip for more shot", () => {
    fc.assert(
      fc.property(floats, loads, fc.double({ min: 0.001, max: 2, noNaN: true }), (float, load, more) => {
        const before = tipShowingMm(float, load, pool) ?? 0;
        expect(tipShowingMm(float, load + more, pool) ?? 0).toBeLessThanOrEqual(before + 1e-9);
      }),
    );
  });

  it("has the load back from the tip it shows", () => {
    fc.assert(
      fc.property(floats, loads, (float, load) => {
        const showing = tipShowingMm(float, load, pool);
        if (showing !== null) expect(loadForTipG(float, showing, pool)).toBeCloseTo(load, 9);
      }),
    );
  });

  it("is as long as draught and tip together", () => {
    fc.assert(
      fc.property(floats, loads, (float, load) => {
        const showing = tipShowingMm(float, load, pool) ?? 0;
        expect(draughtMm(float, load, pool) + showing).toBeCloseTo(lengthMm(float), 9);
      }),
    );
  });

  it("goes under for a pull that is no number", () => {
    expect(tipShowingMm(straightQuill, Number.NaN, pool)).toBeNull();
  });
});
