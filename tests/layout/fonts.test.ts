import * as fontkit from "fontkit";
import { describe, expect, test } from "vitest";
import { faces, makeFonts } from "../../src/layout/fonts.ts";
import { packedFace, unpackedFace } from "../../src/layout/glyph-table.ts";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { fontSigns } from "../../src/model/font-signs.ts";
import { seeded } from "../support/seeded.ts";

const fonts = nodeFonts();

const signs = fontSigns.flatMap(([first, last]) =>
  Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)),
);

/** What a general-purpose library makes of a line: its glyphs, and where each begins. */
interface Shaped {
  readonly glyphs: readonly { readonly id: number }[];
  readonly positions: readonly { readonly xAdvance: number }[];
}

describe.each(faces)("the %s face", (face) => {
  const { layout, source } = fonts.faces[face];
  const reference = fontkit.create(fonts.files[face].bytes as never) as unknown as {
    layout(text: string): Shaped;
  };
  const ours = (text: string) => layout(text).glyphs.map(({ id, advance, kern }) => [id, advance + kern]);
  const theirs = (text: string) => {
    const { glyphs, positions } = reference.layout(text);
    return glyphs.map(({ id }, i) => [id, positions[i]!.xAdvance]);
  };

  test("has the signs that cards need", () => {
    for (const sign of "½¼¾⅓⅛°×±−–—→←↑↓≈≤≥№µ€£’‘“”·•…%") {
      expect(source.glyphOf(sign.codePointAt(0)!), sign).toBeGreaterThan(0);
    }
  });

  test("has figures of one width", () => {
    const widths = new Set([..."0123456789"].map((digit) => layout(digit).width));
    expect([...widths]).toHaveLength(1);
  });

  test("kerns and joins words as a general-purpose shaper does", () => {
    for (const text of [
      "AVAT To. 1.5 m",
      "fish: 14½ ft, first offer",
      "Ärger, L’étang: «Tout»",
      "Τόνος",
      "Рыба Ту.",
    ]) {
      expect(ours(text), text).toEqual(theirs(text));
    }
  });

  test("kerns any two signs as a general-purpose shaper does", () => {
    const random = seeded(1);
    const any = () => signs[Math.floor(random.next().value * signs.length)]!;
    // A fraction slash makes that library change the figures beside it.
    const pairs = Array.from({ length: 1500 }, () => any() + any()).filter((pair) => !pair.includes("⁄"));
    for (const pair of pairs) {
      const [wide, narrow] = [layout(pair).width, theirs(pair.replaceAll("\u00A0", " "))];
      expect(wide, pair).toBe(narrow.reduce((sum, [, advance]) => sum + advance!, 0));
    }
  });

  test("comes back from its table", () => {
    const text = "To AVAT first: 14½ ft, Ärger — ‘hook’ fi";
    const unpacked = unpackedFace(JSON.parse(JSON.stringify(packedFace(source, new Set(text)))));
    const packed = makeFonts({ regular: unpacked, bold: unpacked, italic: unpacked }).faces.regular;
    const told = ({ glyphs }: ReturnType<typeof layout>) =>
      glyphs.map(({ text: of, advance, kern }) => [of, advance, kern]);
    expect(told(packed.layout(text))).toEqual(told(layout(text)));
    const simple = packed.layout("o").glyphs[0]!;
    expect(packed.source.outline(simple.id)).toEqual(source.outline(layout("o").glyphs[0]!.id));
  });
});

test("a sign that the fonts lack is an error that names it", () => {
  expect(() => fonts.measure("float 🎣", 3, "regular")).toThrow('no sign for "🎣"');
});
