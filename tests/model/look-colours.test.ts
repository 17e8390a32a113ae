import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coloursOf, grounds, nearestLegible } from "../../src/model/look-colours.ts";

/** Source: WCAG 2.2, definitions of relative luminance and of contrast ratio. */
function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light! + 0.05) / (dark! + 0.05);
}

const colour = fc
  .integer({ min: 0, max: 0xffffff })
  .map((value) => `#${value.toString(16).padStart(6, "0")}`);

describe("a guide's own colours", () => {
  it("stay as they are where they can be read", () => {
    expect(nearestLegible("main", "#0A4D57")).toBe("#0a4d57");
    expect(nearestLegible("accent", "#a8330c")).toBe("#a8330c");
  });

  it("are made no darker than it takes where they cannot, and keep their hue", () => {
    const nearest = nearestLegible("accent", "#ff7a45");
    const least = Math.min(...grounds.light.map((ground) => contrast(nearest, ground)));
    expect(least).toBeGreaterThanOrEqual(4.5);
    expect(least).toBeLessThan(4.65);
    const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(nearest.slice(at, at + 2), 16));
    expect(red).toBeGreaterThan(green!);
    expect(green).toBeGreaterThan(blue!);
  });

  it("come out legible in both themes, whatever was asked for", () => {
    const extremes: [string, string][] = [
      ["#000000", "#ffffff"],
      ["#ffffff", "#000000"],
    ];
    fc.assert(
      fc.property(colour, colour, (askedMain, askedAccent) => {
        const main = nearestLegible("main", askedMain);
        const accent = nearestLegible("accent", askedAccent);
        for (const theme of ["light", "dark"] as const) {
          const seen = coloursOf(theme, { main, accent });
          for (const ground of grounds[theme]) {
            expect(contrast(seen.link, ground)).toBeGreaterThanOrEqual(7);
            expect(contrast(seen.accent, ground)).toBeGreaterThanOrEqual(4.5);
          }
          expect(contrast(seen.deep, "#ffffff")).toBeGreaterThanOrEqual(7);
          expect(contrast(seen.deep, seen.onDeep)).toBeGreaterThanOrEqual(3);
        }
      }),
      { numRuns: 200, seed: 20, examples: extremes },
    );
  });

  it("are held against the grounds that the style sheet has", () => {
    const style = readFileSync("templates/styles/base.css", "utf8");
    const [light, dark] = style.split("@media (prefers-color-scheme: dark)");
    for (const [theme, rules] of [
      ["light", light],
      ["dark", dark],
    ] as const) {
      const declared = ["ground", "raised", "chosen"].map(
        (name) => new RegExp(`--${name}: (#\\w+)`).exec(rules!)?.[1],
      );
      expect(grounds[theme]).toEqual(declared);
    }
  });
});
