import type { FontFile, PathCommand, RawGlyphs } from "./font-file.ts";
import { simpleOutline } from "./simple-outline.ts";

/** Numbers of lent glyphs start here: no font has as many of its own. */
const lentFrom = 0x10000;

/**
 * A face that takes the signs that it lacks from another font: in its own units, sign beside sign, without kerning.
 * The lent font has one face, which stands for all of ours.
 */
export function withLentSigns(face: FontFile, lending: RawGlyphs): FontFile {
  const scale = face.unitsPerEm / lending.unitsPerEm;
  const lent = (glyph: number) => lending.getGlyph(glyph - lentFrom);
  const isLent = (glyph: number) => glyph >= lentFrom;
  const path = (glyph: number): readonly PathCommand[] =>
    lent(glyph).path.commands.map(({ command, args }) => ({ command, args: args.map((arg) => arg * scale) }));
  return {
    ...face,
    glyphOf: (code) => {
      const own = face.glyphOf(code);
      if (own !== undefined || !lending.hasGlyphForCodePoint(code)) return own;
      return lentFrom + lending.glyphForCodePoint(code).id;
    },
    ligatures: (first) => (isLent(first) ? [] : face.ligatures(first)),
    advance: (glyph) => (isLent(glyph) ? Math.round(lent(glyph).advanceWidth * scale) : face.advance(glyph)),
    kern: (left, right) => (isLent(left) || isLent(right) ? 0 : face.kern(left, right)),
    outline: (glyph) => (isLent(glyph) ? simpleOutline(path(glyph)) : face.outline(glyph)),
    path: (glyph) => (isLent(glyph) ? path(glyph) : face.path(glyph)),
  };
}
