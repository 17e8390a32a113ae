import { zlibSync } from "fflate";
import { latin1 } from "./pdf-bytes.ts";
import { type PdfDict, PdfRef, PdfString, type PdfValue, written } from "./pdf-values.ts";

/** Where an object lies: in the file itself, or in a stream of objects. */
type Place = { readonly at: number } | { readonly inside: number; readonly index: number };

interface PdfStream {
  readonly dict: PdfDict;
  readonly bytes: Uint8Array;
}

/** How hard streams are packed, 0–9. */
const level = 3;

/** Packs the bytes of a stream. */
export type Pack = (bytes: Uint8Array) => Uint8Array;

export const packed: Pack = (bytes) => zlibSync(bytes, { level });

/** Objects that one stream of objects holds: many pack better, few are found sooner. */
const objectsPerStream = 200;

/** The objects of a PDF file, written one after another at the end. Source: ISO 32000-1, section 7.5. */
export class PdfFile {
  /** By number, from 1. */
  readonly #objects: (PdfValue | PdfStream | undefined)[] = [undefined];
  readonly #pack: Pack;

  /** @param pack of whoever has streams packed already */
  constructor(pack = packed) {
    this.#pack = pack;
  }

  /** A number for an object that is given later. */
  reserve(): PdfRef {
    return new PdfRef(this.#objects.push(undefined) - 1);
  }

  set({ number }: PdfRef, object: PdfValue): void {
    this.#objects[number] = object;
  }

  add(object: PdfValue): PdfRef {
    return new PdfRef(this.#objects.push(object) - 1);
  }

  addStream(bytes: Uint8Array, dict: PdfDict = {}): PdfRef {
    return new PdfRef(this.#objects.push({ dict, bytes }) - 1);
  }

  addPacked(bytes: Uint8Array, dict: PdfDict = {}): PdfRef {
    return this.addFlate(this.#pack(bytes), dict);
  }

  /** @param bytes packed already */
  addFlate(bytes: Uint8Array, dict: PdfDict = {}): PdfRef {
    return this.addStream(bytes, { ...dict, Filter: "FlateDecode" });
  }

  /**
   * The file's bytes.
   *
   * @param trailer with its `Root`
   */
  bytes(trailer: PdfDict): Uint8Array {
    const out = new Output();
    out.text("%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n");
    const places = new Map<number, Place>();
    let plain: [number, PdfValue][] = [];
    const flush = () => {
      if (plain.length === 0) return;
      const { number } = this.addPacked(...objectStream(plain));
      for (const [index, [inside]] of plain.entries()) places.set(inside, { inside: number, index });
      plain = [];
    };
    const last = this.#objects.length;
    for (let number = 1; number < last; number++) {
      const object = this.#objects[number];
      if (object === undefined) throw new Error(`object ${number} of the file was never given`);
      if (isStream(object)) continue;
      plain.push([number, object]);
      if (plain.length === objectsPerStream) flush();
    }
    flush();
    for (const [number, object] of this.#objects.entries()) {
      if (object === undefined || !isStream(object)) continue;
      places.set(number, { at: out.length });
      out.stream(number, object);
    }
    const id = PdfString.hex(identifier(out.parts));
    const { number } = this.reserve();
    places.set(number, { at: out.length });
    const startsAt = out.length;
    out.stream(number, placesStream(places, { ...trailer, ID: [id, id] }));
    out.text(`startxref\n${startsAt}\n%%EOF\n`);
    return out.bytes();
  }
}

function isStream(object: PdfValue | PdfStream): object is PdfStream {
  return (
    typeof object === "object" && object !== null && "bytes" in object && object.bytes instanceof Uint8Array
  );
}

/** Many objects as one stream. Source: ISO 32000-1, section 7.5.7. */
function objectStream(objects: readonly (readonly [number, PdfValue])[]): [Uint8Array, PdfDict] {
  let heads = "";
  let bodies = "";
  for (const [number, object] of objects) {
    heads += `${number} ${bodies.length} `;
    bodies += `${written(object)}\n`;
  }
  return [latin1(heads + bodies), { Type: "ObjStm", N: objects.length, First: heads.length }];
}

/** The table of where every object lies. Source: ISO 32000-1, section 7.5.8. */
function placesStream(places: ReadonlyMap<number, Place>, trailer: PdfDict): PdfStream {
  const count = Math.max(...places.keys()) + 1;
  const widths = [1, 4, 2];
  const rowLength = 7;
  const rows = new DataView(new ArrayBuffer(count * rowLength));
  rows.setUint16(5, 0xffff);
  for (const [number, place] of places) {
    const row = number * rowLength;
    rows.setUint8(row, "at" in place ? 1 : 2);
    rows.setUint32(row + 1, "at" in place ? place.at : place.inside);
    rows.setUint16(row + 5, "at" in place ? 0 : place.index);
  }
  const bytes = zlibSync(new Uint8Array(rows.buffer), { level });
  return { bytes, dict: { Type: "XRef", Size: count, W: widths, ...trailer, Filter: "FlateDecode" } };
}

/**
 * A number of 128 bits, as hexadecimal digits, that stands for some bytes: four hashes of them, each mixed with the one before.
 * Source of the hash: FNV-1a, 32 bits (RFC 9923).
 */
function identifier(parts: readonly Uint8Array[]): string {
  const prime = 0x01000193;
  let [a, b, c, d] = [0x811c9dc5, 0x811c9dc4, 0x811c9dc7, 0x811c9dc6];
  for (const part of parts) {
    for (let i = 0; i < part.length; i++) {
      const byte = part[i] ?? 0;
      a = Math.imul(a ^ byte, prime);
      b = Math.imul(b ^ byte ^ a, prime);
      c = Math.imul(c ^ byte ^ b, prime);
      d = Math.imul(d ^ byte ^ c, prime);
    }
  }
  return [a, b, c, d].map((hash) => (hash >>> 0).toString(16).padStart(8, "0").toUpperCase()).join("");
}

/** Bytes gathered in pieces. */
class Output {
  readonly parts: Uint8Array[] = [];
  length = 0;

  text(text: string): void {
    this.#add(latin1(text));
  }

  stream(number: number, { dict, bytes }: PdfStream): void {
    this.text(`${number} 0 obj\n${written({ ...dict, Length: bytes.length })}\nstream\n`);
    this.#add(bytes);
    this.text("\nendstream\nendobj\n");
  }

  #add(bytes: Uint8Array): void {
    this.parts.push(bytes);
    this.length += bytes.length;
  }

  bytes(): Uint8Array {
    const all = new Uint8Array(this.length);
    let at = 0;
    for (const part of this.parts) {
      all.set(part, at);
      at += part.length;
    }
    return all;
  }
}
