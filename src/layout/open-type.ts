import { rising } from "../core/lists.ts";

/** Big-endian numbers of one table of a font, or of a part of it, from its start. Source: ISO/IEC 14496-22 (Open Font Format). */
export class FontTable {
  readonly #view: DataView;

  constructor(bytes: Uint8Array, from = 0) {
    this.#view = new DataView(bytes.buffer, bytes.byteOffset + from, bytes.byteLength - from);
  }

  u16 = (at: number): number => this.#view.getUint16(at);
  i16 = (at: number): number => this.#view.getInt16(at);
  u32 = (at: number): number => this.#view.getUint32(at);
  /** A signed number with 16 bits of fraction. */
  fixed = (at: number): number => this.#view.getInt32(at) / 0x10000;
  tag = (at: number): string => String.fromCharCode(...this.bytes(at, 4));

  bytes(at: number, length: number): Uint8Array {
    return new Uint8Array(this.#view.buffer, this.#view.byteOffset + at, length);
  }

  /** What an offset of 16 bits leads to. */
  at16 = (at: number): FontTable => this.from(this.u16(at));

  from(at: number): FontTable {
    return new FontTable(this.bytes(at, this.#view.byteLength - at));
  }

  /** So many entries of a fixed size, read each by where it begins. */
  list<T>(at: number, count: number, size: number, read: (at: number) => T): T[] {
    return Array.from({ length: count }, (_, i) => read(at + i * size));
  }
}

/**
 * The tables of a font file by their tags.
 *
 * @throws Error where the font has none of the name that is asked for
 */
export function tablesOf(bytes: Uint8Array): (tag: string) => FontTable {
  const file = new FontTable(bytes);
  const starts = new Map(file.list(12, file.u16(4), 16, (at) => [file.tag(at), file.u32(at + 8)]));
  return (tag) => {
    const start = starts.get(tag);
    if (start === undefined) throw new Error(`the font has no table "${tag}"`);
    return file.from(start);
  };
}

/**
 * Lookups of a feature of `GSUB` or `GPOS` for any script, in their order, each with its parts.
 *
 * @param extension kind of the lookups whose parts stand further off in the file
 */
export function lookupsOf(
  table: FontTable,
  tag: string,
  extension: number,
): readonly (readonly FontTable[])[] {
  const [features, lookups] = [table.at16(6), table.at16(8)];
  const numbers = features
    .list(2, features.u16(0), 6, (at) => ({ tag: features.tag(at), feature: features.at16(at + 4) }))
    .filter((one) => one.tag === tag)
    .flatMap(({ feature }) => feature.list(4, feature.u16(2), 2, feature.u16));
  return rising(numbers).map((number) => {
    const lookup = lookups.at16(2 + 2 * number);
    const parts = lookup.list(6, lookup.u16(4), 2, lookup.at16);
    return lookup.u16(0) === extension ? parts.map((part) => part.from(part.u32(4))) : parts;
  });
}

/** Glyphs that a part of a lookup is about, in their order. */
export function coveredBy(coverage: FontTable): readonly number[] {
  const count = coverage.u16(2);
  if (coverage.u16(0) === 1) return coverage.list(4, count, 2, coverage.u16);
  return coverage
    .list(4, count, 6, (at) => {
      const from = coverage.u16(at);
      return Array.from({ length: coverage.u16(at + 2) - from + 1 }, (_, i) => from + i);
    })
    .flat();
}

/** Classes of glyphs; what is not listed is of class 0. */
export function classesOf(table: FontTable): (glyph: number) => number {
  const classes = new Map<number, number>();
  if (table.u16(0) === 1) {
    for (let i = 0; i < table.u16(4); i++) classes.set(table.u16(2) + i, table.u16(6 + 2 * i));
  } else {
    for (let i = 0; i < table.u16(2); i++) {
      const at = 4 + 6 * i;
      for (let glyph = table.u16(at); glyph <= table.u16(at + 2); glyph++)
        classes.set(glyph, table.u16(at + 4));
    }
  }
  return (glyph) => classes.get(glyph) ?? 0;
}

/** Glyphs by the code points of their signs. */
export function signsOf(cmap: FontTable): ReadonlyMap<number, number> {
  const tables = cmap.list(4, cmap.u16(2), 8, (at) => cmap.from(cmap.u32(at + 4)));
  const glyphs = new Map<number, number>();
  const whole = tables.find((table) => table.u16(0) === 12);
  const table = whole ?? tables.find((one) => one.u16(0) === 4);
  if (!table) throw new Error("the font has no table of Unicode's signs");
  const add = (code: number, glyph: number) => glyph !== 0 && glyphs.set(code, glyph);
  if (whole) {
    for (let i = 0; i < whole.u32(12); i++) {
      const at = 16 + 12 * i;
      const [first, last, glyph] = [whole.u32(at), whole.u32(at + 4), whole.u32(at + 8)];
      for (let code = first; code <= last; code++) add(code, glyph + code - first);
    }
    return glyphs;
  }
  const size = table.u16(6);
  for (let at = 14; at < 14 + size; at += 2) {
    // Ends, a filler, starts, differences and offsets stand one list behind the other.
    const [last, first] = [table.u16(at), table.u16(at + size + 2)];
    const [add16, offset] = [table.u16(at + 2 * size + 2), table.u16(at + 3 * size + 2)];
    for (let code = first; code <= last && code < 0xffff; code++) {
      const listed = offset === 0 ? code : table.u16(at + 3 * size + 2 + offset + 2 * (code - first));
      if (listed !== 0) add(code, (listed + add16) & 0xffff);
    }
  }
  return glyphs;
}

/** The name by which programs know the font. */
export function postscriptNameOf(name: FontTable): string {
  const texts = name.from(name.u16(4));
  const found = name
    .list(6, name.u16(2), 12, (at) => ({ isUnicode: name.u16(at) !== 1, of: name.u16(at + 6), at }))
    .find(({ of, isUnicode }) => of === 6 && isUnicode);
  if (!found) throw new Error("the font has no name for programs");
  const [length, from] = [name.u16(found.at + 8), name.u16(found.at + 10)];
  return String.fromCharCode(...texts.list(from, length / 2, 2, texts.u16));
}
