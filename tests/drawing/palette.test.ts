import { describe, expect, test } from "vitest";
import type { Ink } from "../../src/drawing/model.ts";
import { paletteCss, palettes, printGrey } from "../../src/drawing/palette.ts";

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high! + 0.05) / (low! + 0.05);
}

test("the contrast formula gives the published ratios on white", () => {
  // WCAG 2.2 technique G18 and common checkers: black 21:1, #767676 4.54:1, pure red 4.0:1.
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
  expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.5422, 3);
  expect(contrast("#ff0000", "#ffffff")).toBeCloseTo(3.9985, 3);
});

describe.each(Object.entries(palettes))("%s", (_, colours) => {
  const grounds = [colours.paper, colours.water];

  test.each(["ink", "soft", "accent"] satisfies Ink[])(
    "%s carries text: 4.5:1 on paper and on water",
    (ink) => {
      for (const ground of grounds) expect(contrast(colours[ink], ground)).toBeGreaterThanOrEqual(4.5);
    },
  );

  test("faint carries marks, tone fills: 3:1 on paper and on water", () => {
    for (const ground of grounds) {
      expect(contrast(colours.faint, ground)).toBeGreaterThanOrEqual(3);
      expect(contrast(colours.tone, ground)).toBeGreaterThanOrEqual(3);
    }
  });
});

test("print is grey, its tints that carry meaning are at least 20 % black", () => {
  for (const [ink, colour] of Object.entries(palettes.print)) {
    expect(colour).toMatch(/^#(..)\1\1$/);
    if (ink !== "paper" && ink !== "water") expect(printGrey(ink as Ink)).toBeLessThanOrEqual(0.8);
  }
});

test("the style sheet names every ink for light, dark, forced colours and print", () => {
  for (const ink of Object.keys(palettes.light))
    expect(paletteCss().split(`--drawing-${ink}:`)).toHaveLength(5);
  // What a reader's own colours are called. Source: CSS Color Module Level 4, section 6.2.
  expect(paletteCss()).toMatch(/forced-colors:active\){:root{--drawing-ink:CanvasText;/);
  // There it says that something cannot be used.
  expect(paletteCss()).not.toContain("GrayText");
});

test("where colours are forced, a drawing has those of text and ground alone: others mean a link, or what cannot be used", () => {
  // CSS Color Module Level 4, section 6.2: what each system colour is for.
  const block = /forced-colors:active\)\{:root\{([^}]*)\}/.exec(paletteCss())![1]!;
  const found = new Set(block.split(";").map((one) => one.split(":")[1]));
  expect([...found].sort()).toEqual(["Canvas", "CanvasText"]);
});
