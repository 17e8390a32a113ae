import { describe, expect, it } from "vitest";
import {
  clutchWaterMl,
  type Knot,
  lineChain,
  type TiedKnot,
  weakestAtWorstG,
} from "../../../src/core/tackle/knots.ts";
import { gPerPound } from "../../../src/core/units.ts";

const knot = (strengthShareLow: number, strengthShareHigh: number): Knot => ({
  id: "knot",
  title: "Knot",
  strengthShareLow,
  strengthShareHigh,
  basis: "common practice",
});
const tied = (where: TiedKnot["where"], low: number, high: number): TiedKnot => ({
  where,
  knot: knot(low, high),
});
const line = (pounds: number) => ({ strengthG: pounds * gPerPound, diameterMm: 0.16 });

describe("the line as a chain", () => {
  // 4 lb main line, loop 50–95 %: 2 to 3.8 lb, middle 2.9 lb. 3 lb hook length, loop the same: 1.5 to 2.85, middle
  // 2.175 lb; hook knot 85–90 %: 2.55 to 2.7 lb. Margin 2.9 − 2.175 = 0.725 lb; at worst 2 − 2.7 = −0.7 lb (the
  // hook length can hold 2.7 lb at most, at its hook knot), at best 3.8 − 1.5 = 2.3 lb.
  it("breaks first at the hook length's loop", () => {
    const chain = lineChain({
      mainLine: line(4),
      hookLine: line(3),
      knots: [
        tied("main line loop", 0.5, 0.95),
        tied("hook length loop", 0.5, 0.95),
        tied("hook", 0.85, 0.9),
      ],
    });
    if (!chain.ok) throw new Error("no chain");
    const { breaksFirst, marginLowG, marginMiddleG, marginHighG, parts } = chain.value;
    expect(breaksFirst).toMatchObject({ part: "hook length", knot: { where: "hook length loop" } });
    expect(breaksFirst.lowG / gPerPound).toBeCloseTo(1.5, 9);
    expect(breaksFirst.highG / gPerPound).toBeCloseTo(2.85, 9);
    // The clutch gives line first: three quarters of 1.5 lb are 510 g, so half a litre of water.
    expect(weakestAtWorstG(chain.value) / gPerPound).toBeCloseTo(1.5, 9);
    expect(clutchWaterMl(chain.value)).toBe(500);
    expect(marginMiddleG / gPerPound).toBeCloseTo(0.725, 9);
    expect(marginLowG / gPerPound).toBeCloseTo(-0.7, 9);
    expect(marginHighG / gPerPound).toBeCloseTo(2.3, 9);
    expect(parts).toHaveLength(5);
    expect(chain.findings).toEqual([]);
  });

  it("warns where the main line's knot is the weak link", () => {
    const chain = lineChain({
      mainLine: line(4),
      hookLine: line(3),
      knots: [tied("main line loop", 0.36, 0.4), tied("hook", 0.85, 0.95)],
    });
    expect(chain.ok && chain.value.breaksFirst.part).toBe("main line");
    expect(chain.findings[0]).toMatchObject({ code: "main-line-weak-link", severity: "warning" });
  });

  it("warns where both are alike", () => {
    const chain = lineChain({ mainLine: line(3), hookLine: line(3), knots: [] });
    expect(chain.findings.map(({ code }) => code)).toEqual(["main-line-weak-link"]);
  });

  it("takes a knot whose share is known for sure, and one that leaves all of the line's strength", () => {
    const knots = [tied("hook", 1, 1), tied("hook length loop", 0.8, 0.8)];
    expect(lineChain({ mainLine: line(4), hookLine: line(2), knots }).ok).toBe(true);
  });

  it("has its clutch give line at three quarters of that, to the lower 50 ml of water", () => {
    // Three quarters of 2 lb at half its strength are 340 g, of 5 lb 850.5 g.
    const waterMl = (lb: number) => {
      const chain = lineChain({ mainLine: line(9), hookLine: line(lb), knots: [tied("hook", 0.5, 0.6)] });
      return chain.ok && clutchWaterMl(chain.value);
    };
    expect([2, 5].map(waterMl)).toEqual([300, 850]);
  });

  it("refuses strengths and shares that cannot be", () => {
    for (const strengthG of [Number.NaN, 0, -1, Number.POSITIVE_INFINITY]) {
      const broken = { strengthG, diameterMm: 0.1 };
      const told = lineChain({ mainLine: line(4), hookLine: broken, knots: [] }).findings;
      expect(told).toMatchObject([{ code: "line-strength", values: { part: "hook length" } }]);
    }
    for (const [low, high] of [
      [0, 0.5],
      [0.9, 0.5],
      [0.9, 1.1],
      [0.9, 1.01],
      [Number.NaN, 1],
    ] as const) {
      const chain = lineChain({ mainLine: line(4), hookLine: line(3), knots: [tied("hook", low, high)] });
      expect(chain.findings[0]!.code).toBe("knot-share");
    }
  });
});
