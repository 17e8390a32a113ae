/** What a face of a font is made of, in units of its em: read from its file, or from a table made of it. */
export interface GlyphSource {
  readonly postscriptName: string;
  readonly unitsPerEm: number;
  readonly ascent: number;
  /** Below the baseline, so less than 0. */
  readonly descent: number;
  readonly capHeight: number;
  /** Degrees, counterclockwise: a slanted face has less than 0. */
  readonly italicAngle: number;
  /** Left, bottom, right and top of all glyphs laid on one another. */
  readonly box: readonly [number, number, number, number];
  /** Number of the glyph of a code point; none where the font lacks the sign. */
  glyphOf(codePoint: number): number | undefined;
  /** Glyphs that stand for several, by the first of these; the longest first. */
  ligatures(first: number): readonly Ligature[];
  advance(glyph: number): number;
  /** What is added to the advance of the left glyph where the right one follows. */
  kern(left: number, right: number): number;
  /** Outline as TrueType has it in its `glyf` table, without instructions; empty for a space. */
  outline(glyph: number): Uint8Array;
}

export interface Ligature {
  /** Those that follow the first. */
  readonly rest: readonly number[];
  readonly glyph: number;
}
