import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import * as fontkit from "fontkit";
import { describe, expect, test } from "vitest";
import { measureText } from "../../../src/drawing/labels/font-metrics.ts";
import { advanceWidths } from "../../../src/drawing/labels/font-widths.ts";
import type { Face } from "../../../src/drawing/model.ts";

const folder = createRequire(import.meta.url)
  .resolve("@expo-google-fonts/ibm-plex-sans/package.json")
  .replace(/package\.json$/, "");
const files: Readonly<Record<Face, string>> = {
  regular: "400Regular/IBMPlexSans_400Regular.ttf",
  bold: "600SemiBold/IBMPlexSans_600SemiBold.ttf",
  italic: "400Regular_Italic/IBMPlexSans_400Regular_Italic.ttf",
};
const faces = Object.entries(files).map(([face, file]) => ({
  face: face as Face,
  font: fontkit.create(readFileSync(folder + file)) as fontkit.Font,
}));

/** What the font itself makes of a line, kerning included [em]. */
function shapedEm(font: (typeof faces)[number]["font"], text: string): number {
  return font.layout(text).advanceWidth / font.unitsPerEm;
}

const labels = [
  "56–206 cm",
  "7 × No 8, 25 cm apart",
  "float, locked by 2 × BB + 2 × No 4",
  "31 cm No 10, just above the loop",
  "hook size 16, double maggot",
  "Avon, To a T, VAWA 1.5 m (4 ft 11 in)",
  "0.16 mm ± ½ ≈ 20 °C → ≤ 3",
];

describe("text widths against the font files, read by fontkit", () => {
  test.each(faces)("$face: every character of the table has the font's advance width", ({ face, font }) => {
    for (const [width, text] of advanceWidths[face])
      for (const character of text) {
        const glyph = font.glyphForCodePoint(character.codePointAt(0)!);
        expect(Math.abs((glyph.advanceWidth / font.unitsPerEm) * 1000 - width)).toBeLessThanOrEqual(0.5);
      }
  });

  test.each(faces)(
    "$face: labels measure within 2 % of the shaped line, kerning being left out",
    ({ face, font }) => {
      for (const label of labels) {
        const shaped = shapedEm(font, label);
        expect(Math.abs(measureText(label, 1, face) - shaped) / shaped, label).toBeLessThan(0.02);
      }
    },
  );

  test("width grows with the size, and a character outside the table counts as a whole em", () => {
    expect(measureText("depth", 4, "bold")).toBeCloseTo(4 * measureText("depth", 1, "bold"), 12);
    expect(measureText("⌀", 3, "regular")).toBe(3);
    expect(measureText("", 3, "regular")).toBe(0);
  });
});
