import { base64 } from "../drawing/base64.ts";
import type { Face } from "../drawing/model.ts";
import type { GlyphSource, Ligature } from "./glyph-source.ts";
import { partGlyphs, renumbered } from "./outline-data.ts";

/**
 * A face cut down to some signs, as JSON: glyphs are numbered in the order of their signs, those that only stand within
 * others, or for several signs, after them.
 */
interface PackedFace
  extends Pick<
    GlyphSource,
    "postscriptName" | "unitsPerEm" | "ascent" | "descent" | "capHeight" | "italicAngle" | "box"
  > {
  readonly signs: string;
  /** By glyph. */
  readonly advances: readonly number[];
  /** By glyph: its row and its column in `kerning`. */
  readonly kernRows: readonly number[];
  readonly kernColumns: readonly number[];
  readonly kerning: readonly (readonly number[])[];
  readonly ligatures: readonly (readonly [first: number, ligature: Ligature])[];
  /** By glyph: how many bytes of `outlines`. */
  readonly lengths: readonly number[];
  /** Base64. */
  readonly outlines: string;
}

export type PackedFaces = Readonly<Record<Face, PackedFace>>;

/** Cuts a face down to signs; those that it lacks are left out. */
export function packedFace(source: GlyphSource, signs: ReadonlySet<string>): PackedFace {
  const had = [...signs].filter((sign) => source.glyphOf(codeOf(sign)) !== undefined).sort();
  const glyphs = [0, ...had.map((sign) => source.glyphOf(codeOf(sign)) ?? 0)];
  const bySign = new Map(glyphs.map((glyph, number) => [glyph, number]));
  const ligatures = glyphs.flatMap((glyph, first) =>
    source
      .ligatures(glyph)
      .filter(({ rest }) => rest.every((one) => bySign.has(one)))
      .map((ligature): [number, Ligature] => {
        const number = glyphs.push(ligature.glyph) - 1;
        return [first, { rest: ligature.rest.map((one) => bySign.get(one) ?? 0), glyph: number }];
      }),
  );
  const kerned = glyphs.length;
  const numberOf = (glyph: number): number => {
    const known = glyphs.indexOf(glyph);
    return known < 0 ? glyphs.push(glyph) - 1 : known;
  };
  const outlines: Uint8Array[] = [];
  for (let at = 0; at < glyphs.length; at++) {
    const outline = source.outline(glyphs[at] ?? 0);
    partGlyphs(outline).forEach(numberOf);
    outlines.push(renumbered(outline, numberOf));
  }
  const kern = glyphs
    .slice(0, kerned)
    .map((left) => glyphs.slice(0, kerned).map((right) => source.kern(left, right)));
  const rows = distinct(kern);
  const columns = distinct(turned(rows.kinds));
  const { postscriptName, unitsPerEm, ascent, descent, capHeight, italicAngle, box } = source;
  return {
    ...{ postscriptName, unitsPerEm, ascent, descent, capHeight, italicAngle, box },
    signs: had.join(""),
    advances: glyphs.map((glyph) => source.advance(glyph)),
    kernRows: rows.kindOf,
    kernColumns: columns.kindOf,
    kerning: turned(columns.kinds),
    ligatures,
    lengths: outlines.map(({ length }) => length),
    outlines: base64(outlines.flatMap((outline) => [...outline])),
  };
}

const codeOf = (sign: string) => sign.codePointAt(0) ?? 0;

const turned = (rows: readonly (readonly number[])[]): number[][] =>
  (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] ?? 0));

/** Rows that are alike as one, and which of them each row is. */
function distinct(rows: readonly (readonly number[])[]) {
  const kinds = new Map<string, { readonly at: number; readonly row: readonly number[] }>();
  const kindOf = rows.map((row) => {
    const key = row.join();
    const kind = kinds.get(key) ?? { at: kinds.size, row };
    kinds.set(key, kind);
    return kind.at;
  });
  return { kinds: [...kinds.values()].map(({ row }) => row), kindOf };
}

/** A face from its table. */
export function unpackedFace({ signs, ...face }: PackedFace): GlyphSource {
  const numbers = new Map([...signs].map((sign, i) => [codeOf(sign), i + 1]));
  const bytes = Uint8Array.from(atob(face.outlines), (sign) => sign.charCodeAt(0));
  const starts = [0];
  for (const length of face.lengths) starts.push((starts.at(-1) ?? 0) + length);
  const ligatures = new Map<number, Ligature[]>();
  for (const [first, ligature] of face.ligatures) {
    ligatures.set(first, [...(ligatures.get(first) ?? []), ligature]);
  }
  return {
    ...face,
    glyphOf: (code) => numbers.get(code),
    ligatures: (first) => ligatures.get(first) ?? [],
    advance: (glyph) => face.advances[glyph] ?? 0,
    kern: (left, right) => face.kerning[face.kernRows[left] ?? -1]?.[face.kernColumns[right] ?? -1] ?? 0,
    outline: (glyph) => bytes.subarray(starts[glyph], starts[glyph + 1]),
  };
}

export function unpackedFaces({ regular, bold, italic }: PackedFaces): Readonly<Record<Face, GlyphSource>> {
  return { regular: unpackedFace(regular), bold: unpackedFace(bold), italic: unpackedFace(italic) };
}
