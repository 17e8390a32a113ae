/**
 * Outlines of glyphs as TrueType writes them: simple ones with points of their own, and ones put together from others.
 * Source: ISO/IEC 14496-22 (Open Font Format), table `glyf`.
 */

const headerLength = 10;

/** Flags of a part of an outline that is put together. */
const flag = {
  wordArguments: 0x0001,
  scale: 0x0008,
  more: 0x0020,
  scales: 0x0040,
  matrix: 0x0080,
  instructions: 0x0100,
} as const;

const viewOf = (data: Uint8Array) => new DataView(data.buffer, data.byteOffset, data.byteLength);

const isComposite = (data: Uint8Array) => data.length > 0 && viewOf(data).getInt16(0) < 0;

interface Part {
  /** Where its flags stand; the number of its glyph comes after them. */
  readonly at: number;
  readonly end: number;
}

/** The parts of an outline that is put together; none of a simple one. */
function partsOf(data: Uint8Array): Part[] {
  if (!isComposite(data)) return [];
  const view = viewOf(data);
  const parts: Part[] = [];
  for (let at = headerLength, goesOn = true; goesOn; ) {
    const flags = view.getUint16(at);
    const placed = flags & flag.wordArguments ? 4 : 2;
    const scaled = flags & flag.matrix ? 8 : flags & flag.scales ? 4 : flags & flag.scale ? 2 : 0;
    const end = at + 4 + placed + scaled;
    parts.push({ at, end });
    at = end;
    goesOn = (flags & flag.more) !== 0;
  }
  return parts;
}

/** Numbers of the glyphs that an outline is put together from. */
export function partGlyphs(data: Uint8Array): number[] {
  return partsOf(data).map(({ at }) => viewOf(data).getUint16(at + 2));
}

/** The same outline where glyphs have other numbers. */
export function renumbered(data: Uint8Array, numberOf: (glyph: number) => number): Uint8Array {
  const parts = partsOf(data);
  if (parts.length === 0) return data;
  const copy = data.slice();
  const view = viewOf(copy);
  for (const { at } of parts) view.setUint16(at + 2, numberOf(view.getUint16(at + 2)));
  return copy;
}

/** The same outline without the hints for coarse screens, which need tables that a cut-down font leaves out. */
export function withoutInstructions(data: Uint8Array): Uint8Array {
  if (data.length === 0) return data;
  const view = viewOf(data);
  if (isComposite(data)) {
    const parts = partsOf(data);
    const copy = data.slice(0, Math.max(...parts.map(({ end }) => end)));
    const copied = viewOf(copy);
    for (const { at } of parts) copied.setUint16(at, copied.getUint16(at) & ~flag.instructions);
    return copy;
  }
  const lengthAt = headerLength + 2 * view.getInt16(0);
  const length = view.getUint16(lengthAt);
  if (length === 0) return data;
  const copy = new Uint8Array(data.length - length);
  copy.set(data.subarray(0, lengthAt));
  copy.set(data.subarray(lengthAt + 2 + length), lengthAt + 2);
  return copy;
}
