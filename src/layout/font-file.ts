import * as fontkit from "fontkit";
import { rising } from "../core/lists.ts";
import type { Face } from "../drawing/model.ts";
import type { Fonts } from "./fonts.ts";
import type { GlyphSource, Ligature } from "./glyph-source.ts";
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
  // The types of the package leave out the tables.
  const font = fontkit.create(bytes as never) as unknown as RawFont;
  const ligatures = ligaturesOf(font);
  const kerning = kerningOf(font);
  const kern = remembered((pair) => {
    const [left, right] = [Math.floor(pair / glyphsMost), pair % glyphsMost];
    return kerning.reduce((sum, lookup) => sum + kernIn(lookup, left, right), 0);
  });
  const outlines = outlinesOf(bytes);
  const { minX, minY, maxX, maxY } = font.bbox;
  const { postscriptName, unitsPerEm, ascent, descent, capHeight, italicAngle } = font;
  return {
    bytes,
    postscriptName,
    unitsPerEm,
    ascent,
    descent,
    capHeight,
    italicAngle,
    box: [minX, minY, maxX, maxY],
    glyphOf: remembered((code) =>
      font.hasGlyphForCodePoint(code) ? font.glyphForCodePoint(code).id : undefined,
    ),
    ligatures: (first) => ligatures.get(first) ?? [],
    advance: remembered((glyph) => font.getGlyph(glyph).advanceWidth),
    kern: (left, right) => kern(left * glyphsMost + right),
    outline: (glyph) => withoutInstructions(outlines(glyph)),
    path: (glyph) => font.getGlyph(glyph).path.commands,
  };
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

/** What else is used of the package's own reading of a face. */
interface RawFont
  extends RawGlyphs,
    Pick<GlyphSource, "postscriptName" | "ascent" | "descent" | "capHeight" | "italicAngle"> {
  readonly bbox: Readonly<Record<"minX" | "minY" | "maxX" | "maxY", number>>;
  readonly GSUB: LayoutTable<LigatureTable>;
  readonly GPOS: LayoutTable<{ readonly extension: PairTable }>;
}

/** Sources of the tables' form: ISO/IEC 14496-22 (Open Font Format), GSUB and GPOS. */
interface LayoutTable<Sub> {
  readonly featureList: readonly {
    readonly tag: string;
    readonly feature: { readonly lookupListIndexes: readonly number[] };
  }[];
  readonly lookupList: { get(at: number): { readonly subTables: readonly Sub[] } };
}

type Coverage =
  | { readonly version: 1; readonly glyphs: readonly number[] }
  | {
      readonly version: 2;
      readonly rangeRecords: readonly { start: number; end: number; startCoverageIndex: number }[];
    };

interface LigatureTable {
  readonly coverage: Coverage;
  readonly ligatureSets: {
    get(at: number): readonly { readonly glyph: number; readonly components: readonly number[] }[];
  };
}

type ClassTable =
  | { readonly version: 1; readonly startGlyph: number; readonly classValueArray: readonly number[] }
  | {
      readonly version: 2;
      readonly classRangeRecord: readonly { start: number; end: number; class: number }[];
    };

interface Advance {
  readonly value1?: { readonly xAdvance?: number };
}

type PairTable = { readonly coverage: Coverage } & (
  | {
      readonly version: 1;
      readonly pairSets: { get(at: number): readonly (Advance & { readonly secondGlyph: number })[] };
    }
  | {
      readonly version: 2;
      readonly classDef1: ClassTable;
      readonly classDef2: ClassTable;
      readonly classRecords: { get(at: number): { get(at: number): Advance } };
    }
);

/** The lookups of a feature for any script, in their order. */
function lookupsOf<Sub>({ featureList, lookupList }: LayoutTable<Sub>, tag: string): (readonly Sub[])[] {
  const numbers = featureList
    .filter((one) => one.tag === tag)
    .flatMap(({ feature }) => feature.lookupListIndexes);
  return rising(numbers).map((at) => lookupList.get(at).subTables);
}

function ligaturesOf({ GSUB }: RawFont): ReadonlyMap<number, readonly Ligature[]> {
  const found = new Map<number, Ligature[]>();
  for (const { coverage, ligatureSets } of lookupsOf(GSUB, "liga").flat()) {
    for (const [at, first] of covered(coverage).entries()) {
      const set = ligatureSets.get(at).map(({ glyph, components }) => ({ glyph, rest: [...components] }));
      found.set(first, [...(found.get(first) ?? []), ...set]);
    }
  }
  return found;
}

type KernLookup = readonly ((left: number, right: number) => number | undefined)[];

function kerningOf({ GPOS }: RawFont): KernLookup[] {
  return lookupsOf(GPOS, "kern").map((tables) => tables.map(({ extension }) => pairsOf(extension)));
}

/** The first table of a lookup that knows the pair decides. */
function kernIn(lookup: KernLookup, left: number, right: number): number {
  for (const table of lookup) {
    const kern = table(left, right);
    if (kern !== undefined) return kern;
  }
  return 0;
}

function pairsOf(table: PairTable): KernLookup[number] {
  const rows = new Map(covered(table.coverage).map((glyph, at) => [glyph, at]));
  if (table.version === 1) {
    const sets = remembered(
      (row) =>
        new Map(
          [...table.pairSets.get(row)].map(({ secondGlyph, value1 }) => [secondGlyph, value1?.xAdvance ?? 0]),
        ),
    );
    return (left, right) => {
      const row = rows.get(left);
      return row === undefined ? undefined : sets(row).get(right);
    };
  }
  const [first, second] = [classesOf(table.classDef1), classesOf(table.classDef2)];
  const records = remembered((row) => {
    const record = table.classRecords.get(row);
    return remembered((column) => record.get(column).value1?.xAdvance ?? 0);
  });
  return (left, right) => (rows.has(left) ? records(first(left))(second(right)) : undefined);
}

/** More than the number of any glyph, which has two bytes. */
const glyphsMost = 0x10000;

/** The package decodes a table anew each time that it is asked. */
function remembered<T>(read: (at: number) => T): (at: number) => T {
  const known = new Map<number, T>();
  return (at) => {
    let value = known.get(at);
    if (value === undefined) {
      value = read(at);
      known.set(at, value);
    }
    return value;
  };
}

function covered(coverage: Coverage): number[] {
  if (coverage.version === 1) return [...coverage.glyphs];
  return coverage.rangeRecords.flatMap(({ start, end }) =>
    Array.from({ length: end - start + 1 }, (_, i) => start + i),
  );
}

function classesOf(table: ClassTable): (glyph: number) => number {
  if (table.version === 1) {
    return remembered((glyph) => table.classValueArray[glyph - table.startGlyph] ?? 0);
  }
  return remembered(
    (glyph) => table.classRangeRecord.find(({ start, end }) => start <= glyph && glyph <= end)?.class ?? 0,
  );
}

/** Outlines by the number of their glyph. Source: ISO/IEC 14496-22, `loca` and `glyf`. */
function outlinesOf(bytes: Uint8Array): (glyph: number) => Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = new Map<string, number>();
  for (let i = 0; i < view.getUint16(4); i++) {
    const at = 12 + 16 * i;
    tables.set(String.fromCharCode(...bytes.subarray(at, at + 4)), view.getUint32(at + 8));
  }
  const startOf = (tag: string): number => {
    const at = tables.get(tag);
    if (at === undefined) throw new Error(`the font has no table "${tag}"`);
    return at;
  };
  const [head, loca, glyf] = [startOf("head"), startOf("loca"), startOf("glyf")];
  const isLong = view.getInt16(head + 50) === 1;
  const offset = (glyph: number) =>
    isLong ? view.getUint32(loca + 4 * glyph) : 2 * view.getUint16(loca + 2 * glyph);
  // A plain array: slices of Node's own kind are no copies.
  const data = new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return (glyph) => data.subarray(glyf + offset(glyph), glyf + offset(glyph + 1));
}
