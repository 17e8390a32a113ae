import { createRequire } from "node:module";
import type { Face } from "../drawing/model.ts";
import type { Fonts } from "./fonts.ts";
import type { GlyphSource, Ligature } from "./glyph-source.ts";
import {
  classesOf,
  coveredBy,
  type FontTable,
  lookupsOf,
  postscriptNameOf,
  signsOf,
  tablesOf,
} from "./open-type.ts";
import { withoutInstructions } from "./outline-data.ts";

/** A face read from its file. */
export interface FontFile extends GlyphSource {
  readonly bytes: Uint8Array;
  /** The outline of a glyph in steps: moves, lines, curves. */
  path(glyph: number): readonly PathCommand[];
}

/** Fonts with the files that they come from. */
export interface FileFonts extends Fonts {
  readonly files: Readonly<Record<Face, FontFile>>;
}

export interface PathCommand {
  readonly command: string;
  readonly args: readonly number[];
}

/**
 * A face from the bytes of its file (TrueType, static).
 *
 * @throws Error where the bytes are no font
 */
export function readFontFile(bytes: Uint8Array): FontFile {
  const table = tablesOf(bytes);
  const [head, hhea, hmtx] = [table("head"), table("hhea"), table("hmtx")];
  const signs = signsOf(table("cmap"));
  const ligatures = ligaturesOf(table("GSUB"));
  const kerning = lookupsOf(table("GPOS"), "kern", 9).map((parts) => parts.map(pairsOf));
  const outlines = outlinesOf(table, head.i16(50) === 1);
  const lastAdvance = hhea.u16(34) - 1;
  let drawn: RawGlyphs | undefined;
  return {
    bytes,
    postscriptName: postscriptNameOf(table("name")),
    unitsPerEm: head.u16(18),
    ascent: hhea.i16(4),
    descent: hhea.i16(6),
    capHeight: table("OS/2").i16(88),
    italicAngle: table("post").fixed(4),
    box: [head.i16(36), head.i16(38), head.i16(40), head.i16(42)],
    glyphOf: (code) => signs.get(code),
    ligatures: (first) => ligatures.get(first) ?? [],
    advance: (glyph) => hmtx.u16(4 * Math.min(glyph, lastAdvance)),
    kern: (left, right) => kerning.reduce((sum, lookup) => sum + kernIn(lookup, left, right), 0),
    outline: (glyph) => withoutInstructions(outlines(glyph)),
    path: (glyph) => {
      drawn ??= readGlyphs(bytes);
      return drawn.getGlyph(glyph).path.commands;
    },
  };
}

/** Glyphs as a package reads them, which takes longer to load than most work takes without it. */
export function readGlyphs(bytes: Uint8Array): RawGlyphs {
  const { create } = createRequire(import.meta.url)("fontkit") as typeof import("fontkit");
  return create(Buffer.from(bytes)) as unknown as RawGlyphs;
}

/** Glyphs of a font as the package reads them. */
export interface RawGlyphs {
  readonly unitsPerEm: number;
  hasGlyphForCodePoint(code: number): boolean;
  glyphForCodePoint(code: number): { readonly id: number };
  getGlyph(id: number): {
    readonly advanceWidth: number;
    readonly path: { readonly commands: readonly PathCommand[] };
  };
}

function ligaturesOf(gsub: FontTable): ReadonlyMap<number, readonly Ligature[]> {
  const found = new Map<number, Ligature[]>();
  for (const part of lookupsOf(gsub, "liga", 7).flat()) {
    for (const [at, first] of coveredBy(part.at16(2)).entries()) {
      const set = part.at16(6 + 2 * at);
      const ligatures = set.list(2, set.u16(0), 2, set.at16).map((one) => ({
        glyph: one.u16(0),
        rest: one.list(4, one.u16(2) - 1, 2, one.u16),
      }));
      found.set(first, [...(found.get(first) ?? []), ...ligatures]);
    }
  }
  return found;
}

type KernLookup = readonly ((left: number, right: number) => number | undefined)[];

/** The first table of a lookup that knows the pair decides. */
function kernIn(lookup: KernLookup, left: number, right: number): number {
  for (const table of lookup) {
    const kern = table(left, right);
    if (kern !== undefined) return kern;
  }
  return 0;
}

/** What a part of a lookup adds to the advance of the left glyph of a pair; undefined where it does not know the pair. */
function pairsOf(part: FontTable): KernLookup[number] {
  const rows = new Map(coveredBy(part.at16(2)).map((glyph, at) => [glyph, at]));
  const [values, others] = [part.u16(4), part.u16(6)];
  const size = sizeOfValues(values) + sizeOfValues(others);
  const advanceAt = sizeOfValues(values & (xAdvance - 1));
  const advance = (of: FontTable, at: number) => (values & xAdvance ? of.i16(at + advanceAt) : 0);
  if (part.u16(0) === 1) {
    const sets = remembered((row) => {
      const set = part.at16(10 + 2 * row);
      return new Map(set.list(2, set.u16(0), 2 + size, (at) => [set.u16(at), advance(set, at + 2)]));
    });
    return (left, right) => {
      const row = rows.get(left);
      return row === undefined ? undefined : sets(row).get(right);
    };
  }
  const [first, second] = [classesOf(part.at16(8)), classesOf(part.at16(10))];
  const columns = part.u16(14);
  return (left, right) =>
    rows.has(left) ? advance(part, 16 + (first(left) * columns + second(right)) * size) : undefined;
}

/** The bit of a record of values that says that it has an advance; those before it are of values that stand before. */
const xAdvance = 0x4;

/** Bytes of a record of values: two for each bit that is set. */
function sizeOfValues(format: number): number {
  return 2 * [...format.toString(2)].filter((bit) => bit === "1").length;
}

function remembered<T>(read: (at: number) => T): (at: number) => T {
  const known = new Map<number, T>();
  return (at) => {
    const value = known.get(at) ?? read(at);
    known.set(at, value);
    return value;
  };
}

/** Outlines by the number of their glyph; `isLong` says how the places of glyphs are written. */
function outlinesOf(table: (tag: string) => FontTable, isLong: boolean): (glyph: number) => Uint8Array {
  const [loca, glyf] = [table("loca"), table("glyf")];
  const offset = (glyph: number) => (isLong ? loca.u32(4 * glyph) : 2 * loca.u16(2 * glyph));
  return (glyph) => glyf.bytes(offset(glyph), offset(glyph + 1) - offset(glyph));
}
