import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseLoad } from "../../../src/core/tackle/load-notation.ts";
import type { ShotScale } from "../../../src/core/tackle/shot.ts";
import { valuesOf } from "../../support/findings.ts";
import { tradeScale } from "../trade-scale.ts";

function massG(text: string, scale = tradeScale): number {
  const load = parseLoad(text, scale);
  if (!load.ok) throw new Error(JSON.stringify(load.findings));
  return load.value.massG;
}

function refusal(text: string, scale = tradeScale) {
  const load = parseLoad(text, scale);
  if (load.ok) throw new Error(`${text} was read as ${load.value.massG} g`);
  return load.findings[0]!;
}

describe("a load as it is written", () => {
  it.each([
    ["2 AAA + 3 No 8", 1.78],
    ["4BB", 1.6],
    ["1.2 g", 1.2],
    ["1.2g", 1.2],
    [".5 g", 0.5],
    // The worked example of a trade list (common practice, no source): 1.14 + 0.06.
    ["19 No 8 + 3 No 12", 1.2],
    ["4 no.4", 0.8],
    ["3xNo8", 0.18],
    ["2 × aaa", 1.6],
    ["1½ SSG", 2.4],
    ["½ SSG", 0.8],
    ["1 g + 2 No 8", 1.12],
  ])("reads %s as %f g", (text, expectedG) => {
    expect(massG(text)).toBeCloseTo(expectedG, 12);
  });

  it("keeps the terms by the scale's names", () => {
    expect(parseLoad("2aaa+3 no8", tradeScale)).toEqual({
      ok: true,
      findings: [],
      value: {
        massG: 2 * 0.8 + 3 * 0.06,
        parts: [
          { count: 2, size: "AAA", massG: 0.8 },
          { count: 3, size: "No 8", massG: 0.06 },
        ],
      },
    });
  });

  it("names the scale and its sizes where a size is not in it", () => {
    const found = refusal("2 SA");
    expect(found.code).toBe("load.unknown-size");
    expect(found.values).toMatchObject({ size: "SA", scale: "trade figures" });
    expect(valuesOf([found], "load.unknown-size").sizes).toBe(
      "SSG, AAA, BB, No 1, No 4, No 6, No 8, No 9, No 10, No 11, No 12, No 13",
    );
  });

  it.each([
    ["8", "load.bare-number"],
    ["1.2", "load.bare-number"],
    ["4 8", "load.unknown-size"],
    ["AAA", "load.no-count"],
    ["No 8", "load.no-count"],
    ["0 BB", "load.zero"],
    ["0 g", "load.zero"],
    ["1.5 AAA", "load.not-understood"],
    ["1,2 g", "load.not-understood"],
    ["-2 BB", "load.not-understood"],
    ["", "load.not-understood"],
    ["2 AAA +", "load.not-understood"],
    ["2 AAA ++ 1 BB", "load.not-understood"],
    ["g", "load.not-understood"],
    ["1..2 g", "load.not-understood"],
    ["2 stone", "load.unknown-size"],
  ])("does not guess at '%s'", (text, code) => {
    expect(refusal(text).code).toBe(code);
  });

  it("tells a count from a size that begins with a number only where the writing does", () => {
    const numbered: ShotScale = {
      id: "b",
      title: "B scale",
      sizes: [
        { name: "2B", massG: 0.75 },
        { name: "B", massG: 0.55 },
      ],
    };
    expect(refusal("2B", numbered)).toMatchObject({
      code: "load.two-readings",
      values: { size: "2B", count: "2", countedSize: "B" },
    });
    expect(massG("1 2B", numbered)).toBe(0.75);
    expect(massG("2 x B", numbered)).toBe(1.1);
    expect(massG("3B", numbered)).toBeCloseTo(1.65, 12);
  });

  it("gives every load back that it can write, and never a mass that is not a number", () => {
    const term = fc.record({
      count: fc.integer({ min: 1, max: 30 }),
      size: fc.constantFrom(...tradeScale.sizes),
    });
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 5 }), (terms) => {
        const text = terms.map(({ count, size }) => `${count} ${size.name}`).join(" + ");
        const wanted = terms.reduce((sum, { count, size }) => sum + count * size.massG, 0);
        expect(massG(text)).toBeCloseTo(wanted, 9);
      }),
      { seed: 3 },
    );
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."0123456789.½ +-xgNoABS") }), (text) => {
        const load = parseLoad(text, tradeScale);
        if (load.ok) expect(load.value.massG).toBeGreaterThan(0);
        else expect(load.findings).toHaveLength(1);
      }),
      { seed: 4, numRuns: 500 },
    );
  });
});
