import type { GlyphSource } from "../../layout/glyph-source.ts";

interface Glyph {
  readonly advance: number;
  readonly outline: Uint8Array;
}

/**
 * A font file of some glyphs of a face, numbered from 0, with the tables that a PDF asks for.
 * Sources: ISO/IEC 14496-22 (Open Font Format); ISO 32000-1, section 9.9.
 */
export function trueTypeFile(source: GlyphSource, glyphs: readonly Glyph[]): Uint8Array {
  const { glyf, loca } = outlineTables(glyphs);
  const tables: [string, Uint8Array][] = [
    ["glyf", glyf],
    ["head", headTable(source)],
    ["hhea", hheaTable(source, glyphs)],
    ["hmtx", hmtxTable(glyphs)],
    ["loca", loca],
    ["maxp", maxpTable(glyphs)],
  ];
  const headLength = 12 + 16 * tables.length;
  const file = new Uint8Array(headLength + tables.reduce((sum, [, table]) => sum + padded(table.length), 0));
  const view = new DataView(file.buffer);
  view.setUint32(0, 0x00010000);
  view.setUint16(4, tables.length);
  const power = Math.floor(Math.log2(tables.length));
  view.setUint16(6, 16 * 2 ** power);
  view.setUint16(8, power);
  view.setUint16(10, 16 * (tables.length - 2 ** power));
  let at = headLength;
  let headAt = 0;
  for (const [i, [tag, table]] of tables.entries()) {
    file.set(table, at);
    if (tag === "head") headAt = at;
    const entry = 12 + 16 * i;
    for (let c = 0; c < 4; c++) file[entry + c] = tag.charCodeAt(c);
    view.setUint32(entry + 4, checksum(view, at, padded(table.length)));
    view.setUint32(entry + 8, at);
    view.setUint32(entry + 12, table.length);
    at += padded(table.length);
  }
  view.setUint32(headAt + 8, (0xb1b0afba - checksum(view, 0, file.length)) >>> 0);
  return file;
}

const padded = (length: number) => Math.ceil(length / 4) * 4;

function checksum(view: DataView, from: number, length: number): number {
  let sum = 0;
  for (let at = from; at < from + length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  return sum;
}

function outlineTables(glyphs: readonly Glyph[]): { glyf: Uint8Array; loca: Uint8Array } {
  const glyf = new Uint8Array(glyphs.reduce((sum, { outline }) => sum + padded(outline.length), 0));
  const loca = new DataView(new ArrayBuffer(4 * (glyphs.length + 1)));
  let at = 0;
  for (const [i, { outline }] of glyphs.entries()) {
    glyf.set(outline, at);
    at += padded(outline.length);
    loca.setUint32(4 * (i + 1), at);
  }
  return { glyf, loca: new Uint8Array(loca.buffer) };
}

/** Numbers of two bytes, one after another; those of four bytes as their two halves. */
function words(numbers: readonly number[]): Uint8Array {
  const view = new DataView(new ArrayBuffer(2 * numbers.length));
  for (const [i, number] of numbers.entries()) view.setInt16(2 * i, number);
  return new Uint8Array(view.buffer);
}

/** Places of points in whole units, left sidebearings at the leftmost points; offsets of outlines are long. */
function headTable({ unitsPerEm, box, italicAngle }: GlyphSource): Uint8Array {
  const version = [1, 0];
  const revision = [1, 0];
  const checksumLater = [0, 0];
  const magic = [0x5f0f, 0x3cf5];
  const dates = [0, 0, 0, 0, 0, 0, 0, 0];
  const style = italicAngle === 0 ? 0 : 2;
  return words([
    ...[...version, ...revision, ...checksumLater, ...magic],
    ...[0x0003, unitsPerEm, ...dates, ...box],
    ...[style, 6, 2, 1, 0],
  ]);
}

function hheaTable({ ascent, descent }: GlyphSource, glyphs: readonly Glyph[]): Uint8Array {
  const widest = Math.max(...glyphs.map(({ advance }) => advance));
  return words([1, 0, ascent, descent, 0, widest, 0, 0, widest, 1, 0, 0, 0, 0, 0, 0, 0, glyphs.length]);
}

function hmtxTable(glyphs: readonly Glyph[]): Uint8Array {
  return words(glyphs.flatMap(({ advance, outline }) => [advance, leftOf(outline)]));
}

const leftOf = (outline: Uint8Array) => (outline.length === 0 ? 0 : int16(outline, 2));

function int16(data: Uint8Array, at: number): number {
  return new DataView(data.buffer, data.byteOffset).getInt16(at);
}

/** The most that any glyph has: those put together from others are counted as if from the largest alone. */
function maxpTable(glyphs: readonly Glyph[]): Uint8Array {
  const simple = glyphs.map(({ outline }) => outline).filter((one) => one.length > 0 && int16(one, 0) >= 0);
  const contours = simple.map((one) => int16(one, 0));
  const points = simple.map((one, i) => (contours[i] ? int16(one, 8 + 2 * (contours[i] ?? 0)) + 1 : 0));
  const mostContours = Math.max(0, ...contours);
  const mostPoints = Math.max(0, ...points);
  return words([
    ...[1, 0, glyphs.length, mostPoints, mostContours, 4 * mostPoints, 4 * mostContours],
    ...[2, 0, 0, 0, 0, 0, 0, 4, 2],
  ]);
}
