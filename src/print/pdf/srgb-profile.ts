/**
 * The colour space sRGB as an ICC profile, written from its standard's figures. Sources: IEC 61966-2-1 (primaries, white and
 * curve); ICC.1:2010 (the file, and the primaries' adaptation to D50 by its annex E).
 */
export function srgbProfile(): Uint8Array {
  const curve = [2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045];
  const light = parametricCurve(curve);
  const tags: readonly (readonly [string, Uint8Array])[] = [
    ["desc", words("sRGB")],
    ["cprt", words("CC0")],
    ["wtpt", numbers("XYZ ", d50)],
    ["chad", numbers("sf32", d65ToD50)],
    ["rXYZ", numbers("XYZ ", [0.43604, 0.22248, 0.01392])],
    ["gXYZ", numbers("XYZ ", [0.38511, 0.71691, 0.09707])],
    ["bXYZ", numbers("XYZ ", [0.14305, 0.06061, 0.71391])],
    ["rTRC", light],
    ["gTRC", light],
    ["bTRC", light],
  ];
  const places = new Map<Uint8Array, number>();
  let end = headerLength + 4 + 12 * tags.length;
  for (const [, data] of tags) {
    if (places.has(data)) continue;
    places.set(data, end);
    end += Math.ceil(data.length / 4) * 4;
  }
  const out = new Writer(end);
  writeHeader(out, end);
  out.at = headerLength;
  out.whole(tags.length);
  for (const [name, data] of tags) {
    out.sign(name);
    out.whole(places.get(data) ?? 0);
    out.whole(data.length);
  }
  for (const [data, at] of places) out.bytes.set(data, at);
  return out.bytes;
}

const headerLength = 128;
const d50 = [0.9642, 1, 0.8249];
const d65ToD50 = [1.04789, 0.02292, -0.05022, 0.02958, 0.99048, -0.01708, -0.00925, 0.01507, 0.75168];

/** A monitor's profile of version 4.3, perceptual, of a day of its own so that it never changes. */
function writeHeader(out: Writer, length: number): void {
  out.whole(length);
  out.whole(0);
  out.whole(0x04300000);
  for (const name of ["mntr", "RGB ", "XYZ "]) out.sign(name);
  for (const part of [2026, 1, 1, 0, 0, 0]) out.half(part);
  out.sign("acsp");
  out.at = 68;
  d50.forEach((value) => {
    out.fixed(value);
  });
}

function numbers(type: string, values: readonly number[]): Uint8Array {
  const out = new Writer(8 + 4 * values.length);
  out.sign(type);
  out.whole(0);
  for (const value of values) out.fixed(value);
  return out.bytes;
}

/** `(a·x + b)^g` from `d` on, `c·x` below. */
function parametricCurve(values: readonly number[]): Uint8Array {
  const out = new Writer(12 + 4 * values.length);
  out.sign("para");
  out.whole(0);
  out.half(3);
  out.half(0);
  for (const value of values) out.fixed(value);
  return out.bytes;
}

function words(text: string): Uint8Array {
  const out = new Writer(28 + 2 * text.length);
  out.sign("mluc");
  for (const value of [0, 1, 12]) out.whole(value);
  out.sign("enUS");
  out.whole(2 * text.length);
  out.whole(28);
  for (let i = 0; i < text.length; i++) out.half(text.charCodeAt(i));
  return out.bytes;
}

/** Numbers one after another, the highest byte first. */
class Writer {
  readonly bytes: Uint8Array;
  readonly #view: DataView;
  at = 0;

  constructor(length: number) {
    this.bytes = new Uint8Array(length);
    this.#view = new DataView(this.bytes.buffer);
  }

  whole(value: number): void {
    this.#view.setUint32(this.at, value);
    this.at += 4;
  }

  half(value: number): void {
    this.#view.setUint16(this.at, value);
    this.at += 2;
  }

  /** In 65536ths. */
  fixed(value: number): void {
    this.#view.setInt32(this.at, Math.round(value * 65536));
    this.at += 4;
  }

  sign(text: string): void {
    for (let i = 0; i < text.length; i++) this.bytes[this.at++] = text.charCodeAt(i);
  }
}
