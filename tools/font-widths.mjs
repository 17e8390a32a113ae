// Reads the advance widths of the faces in use from their font files and writes src/drawing/labels/font-widths.ts, so that
// drawings can be laid out where no font file is at hand (in the browser, in the core's own tests), and the signs that
// all faces have into src/model/font-signs.ts, so that content is held against them before anything is laid out.
import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import * as fontkit from "fontkit";

const require = createRequire(import.meta.url);
const folder = require.resolve("@expo-google-fonts/ibm-plex-sans/package.json").replace(/package\.json$/, "");
const faces = {
  regular: "400Regular/IBMPlexSans_400Regular.ttf",
  bold: "600SemiBold/IBMPlexSans_600SemiBold.ttf",
  italic: "400Regular_Italic/IBMPlexSans_400Regular_Italic.ttf",
};

/** Basic Latin, Latin-1, Latin Extended-A, then the signs used in print. */
const ranges = [
  [0x20, 0x7e],
  [0xa0, 0x17f],
];
const signs = "–—‘’‚“”„†•…‰′″⁄€№™←↑→↓−≈≠≤≥⅓⅔⅛⅜⅝⅞";
const characters = ranges
  .flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)))
  .concat([...signs]);

const tables = Object.entries(faces).map(([face, file]) => {
  const font = fontkit.create(readFileSync(folder + file));
  const rows = characters
    .filter((character) => font.hasGlyphForCodePoint(character.codePointAt(0)))
    .map((character) => {
      const code = character.codePointAt(0);
      const width = Math.round((font.glyphForCodePoint(code).advanceWidth / font.unitsPerEm) * 1000);
      return [code, width];
    });
  const byWidth = new Map();
  for (const [code, width] of rows)
    byWidth.set(width, (byWidth.get(width) ?? "") + String.fromCodePoint(code));
  const lines = [...byWidth]
    .sort(([a], [b]) => a - b)
    .map(([width, text]) => `    [${width}, ${JSON.stringify(text)}],`);
  return `  ${face}: [\n${lines.join("\n")}\n  ],`;
});

writeFileSync(
  "src/drawing/labels/font-widths.ts",
  `import type { Face } from "../model.ts";

/**
 * Advance widths of IBM Plex Sans in thousandths of an em, each with the characters that have it.
 * Made by tools/font-widths.mjs from the font files; do not edit.
 */
export const advanceWidths: Readonly<Record<Face, readonly (readonly [number, string])[]>> = {
${tables.join("\n")}
};
`,
);

const fonts = Object.values(faces).map((file) => fontkit.create(readFileSync(folder + file)));
const shared = fonts[0].characterSet.filter((code) => fonts.every((font) => font.hasGlyphForCodePoint(code)));
// Invisible signs, marks on their own, private signs and spaces but the two usual ones are nothing to lay out.
const isShown = (code) =>
  !/[\p{C}\p{M}\p{Z}\uFFFD]/u.test(String.fromCodePoint(code)) || code === 0x20 || code === 0xa0;
const shown = [...new Set(shared)].filter(isShown).sort((a, b) => a - b);
const runs = shown.reduce((found, code) => {
  const last = found.at(-1);
  if (last?.[1] === code - 1) last[1] = code;
  else found.push([code, code]);
  return found;
}, []);

writeFileSync(
  "src/model/font-signs.ts",
  `/**
 * The signs that IBM Plex Sans has in all faces in use, as first and last code point of each run of them.
 * Made by tools/font-widths.mjs from the font files; do not edit.
 */
export const fontSigns: readonly (readonly [number, number])[] = [
${runs.map(([first, last]) => `  [0x${first.toString(16)}, 0x${last.toString(16)}],`).join("\n")}
];
`,
);
