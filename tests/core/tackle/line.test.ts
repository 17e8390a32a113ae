import convert from "convert";
import { describe, expect, it } from "vitest";
import {
  clutchWaterMl,
  type Knot,
  lineChain,
  type TiedKnot,
  weakestAtWorstG,
} from "../../../src/core/tackle/knots.ts";
import { lineClass, lineClasses, linePullG } from "../../../src/core/tackle/line.ts";
import { gPerPound } from "../../../src/core/units.ts";
import { pool } from "../floats.ts";

describe("line classes", () => {
  // IGFA line classes: kilograms, the pounds they are called, and their exact pounds cut to three digits.
  const published = [
    [1, 2, 2.204],
    [2, 4, 4.409],
    [3, 6, 6.613],
    [4, 8, 8.818],
    [6, 12, 13.227],
    [8, 16, 17.636],
    [10, 20, 22.046],
    [15, 30, 33.069],
    [24, 50, 52.91],
    [37, 80, 81.57],
    [60, 130, 132.277],
  ] as const;

  it("are the published ones", () => {
    expect(lineClasses.map(({ kg, lb }) => [kg, lb])).toEqual(published.map(([kg, lb]) => [kg, lb]));
  });

  it.each(published)("of %d kg, called %d lb, is %d lb exactly", (kg, _, exactLb) => {
    expect(Math.abs((kg * 1000) / gPerPound - exactLb)).toBeLessThan(0.01);
    expect(Math.abs(convert(kg, "kg").to("lb") - exactLb)).toBeLessThan(0.01);
  });

  it("take the line that breaks under their kilograms", () => {
    expect(lineClass(2000)).toEqual({ kg: 2, lb: 4 });
    expect(lineClass(2001)).toEqual({ kg: 3, lb: 6 });
    expect(lineClass(60001)).toBe(undefined);
    expect(lineClass(0)).toBe(undefined);
    expect(lineClass(Number.NaN)).toBe(undefined);
  });
});

describe("line in the water", () => {
  // π/4 · 0.15² · 1000 mm³ · 1.14 mg/mm³ = 20.15 mg in air; 1 − 999.70/1140 = 12.307 % of it: 2.48 mg.
  it("pulls 0.0025 g a metre in 0.15 mm nylon, next to nothing", () => {
    expect(linePullG({ strengthG: 1000, diameterMm: 0.15 }, 1000, pool)).toBeCloseTo(0.00248, 5);
  });
});

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

  it("refuses strengths and shares that cannot be", () => {
    const broken = { strengthG: Number.NaN, diameterMm: 0.1 };
    expect(lineChain({ mainLine: broken, hookLine: line(3), knots: [] }).findings[0]!.code).toBe(
      "line-strength",
    );
    for (const [low, high] of [
      [0, 0.5],
      [0.9, 0.5],
      [0.9, 1.1],
      [Number.NaN, 1],
    ] as const) {
      const chain = lineChain({ mainLine: line(4), hookLine: line(3), knots: [tied("hook", low, high)] });
      expect(chain.findings[0]!.code).toBe("knot-share");
    }
  });
});
