import { describe, expect, test } from "vitest";
import { faces } from "../../src/layout/fonts.ts";
import { nodeFonts } from "../../src/layout/node-fonts.ts";

const fonts = nodeFonts();

describe.each(faces)("the %s face", (face) => {
  const { bytes, layout, unitsPerEm } = fonts.faces[face];
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = new Map<string, { offset: number; length: number }>();
  for (let i = 0; i < view.getUint16(4); i++) {
    const at = 12 + 16 * i;
    const tag = String.fromCharCode(...bytes.subarray(at, at + 4));
    tables.set(tag, { offset: view.getUint32(at + 8), length: view.getUint32(at + 12) });
  }

  // The subsetter writes halved offsets without padding, so an odd length would break every glyph after it.
  test("has glyphs of even length only", () => {
    const { offset, length } = tables.get("loca")!;
    const isLong = view.getInt16(tables.get("head")!.offset + 50) === 1;
    const offsets = isLong
      ? Array.from({ length: length / 4 }, (_, i) => view.getUint32(offset + 4 * i))
      : Array.from({ length: length / 2 }, (_, i) => 2 * view.getUint16(offset + 2 * i));
    expect(offsets.length).toBeGreaterThan(300);
    expect(offsets.filter((at) => at % 2 !== 0)).toEqual([]);
  });

  test("has the signs that cards need", () => {
    const notdef = 0;
    for (const sign of "½¼¾⅓⅛°×±−–—→←↑↓≈≤≥№µ€£’‘“”·•…%") {
      expect(
        layout(sign).glyphs.map((glyph) => glyph.id),
        sign,
      ).not.toContain(notdef);
    }
  });

  test("has figures of one width", () => {
    const widths = new Set([..."0123456789"].map((digit) => layout(digit).advanceWidth));
    expect([...widths]).toHaveLength(1);
  });

  test("measures a line as the sum of its advances and kerning", () => {
    const text = "AVAT To. 1.5 m";
    const plain = [...text].reduce((sum, letter) => sum + layout(letter).advanceWidth, 0);
    const kerned = fonts.measure(text, 1, face) * unitsPerEm;
    expect(kerned).toBeLessThan(plain);
    expect(kerned).toBeGreaterThan(0.9 * plain);
  });
});
