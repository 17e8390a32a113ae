import { decodePDFRawStream, PDFArray, PDFDict, PDFName, PDFNumber, PDFRawStream } from "@cantoo/pdf-lib";
import * as fontkit from "fontkit";

/** A composite font as it stands in the file. */
export interface RawFont {
  readonly subtype: string;
  readonly baseFont: string;
  readonly encoding: string;
  readonly descendantSubtype: string;
  /** Code → glyph of the embedded program. */
  readonly glyphs: ReadonlyMap<number, number>;
  readonly embedded: boolean;
  readonly hasCidSet: boolean;
  /** Code → text. */
  readonly unicode: ReadonlyMap<number, string>;
  /** Widths of the font dictionary [1/1000 em]. */
  readonly widths: ReadonlyMap<number, number>;
  /** Advances of the embedded program [1/1000 em], by glyph. */
  readonly programWidths: readonly number[];
}

interface Program {
  readonly head: { readonly unitsPerEm: number };
  readonly maxp: { readonly numGlyphs: number };
  readonly hmtx: { readonly metrics: { get(glyph: number): { readonly advance: number } } };
}

export function rawFont(dict: PDFDict): RawFont {
  const descendant = dict.lookup(PDFName.of("DescendantFonts"), PDFArray).lookup(0, PDFDict);
  const descriptor = descendant.lookup(PDFName.of("FontDescriptor"), PDFDict);
  const file = descriptor.lookup(PDFName.of("FontFile2"));
  const name = (from: PDFDict, key: string) => from.lookup(PDFName.of(key), PDFName).decodeText();
  return {
    subtype: name(dict, "Subtype"),
    baseFont: name(dict, "BaseFont"),
    encoding: name(dict, "Encoding"),
    descendantSubtype: name(descendant, "Subtype"),
    glyphs: glyphsOf(descendant),
    embedded: file instanceof PDFRawStream,
    hasCidSet: descriptor.has(PDFName.of("CIDSet")),
    unicode: unicodeOf(dict),
    widths: widthsOf(descendant.lookup(PDFName.of("W"), PDFArray)),
    programWidths: file instanceof PDFRawStream ? programWidths(decodePDFRawStream(file).decode()) : [],
  };
}

/** Source: ISO 32000-1, table 117: two bytes for each code. */
function glyphsOf(descendant: PDFDict): Map<number, number> {
  const stream = descendant.lookup(PDFName.of("CIDToGIDMap"));
  if (!(stream instanceof PDFRawStream)) return new Map();
  const bytes = decodePDFRawStream(stream).decode();
  const codes = Array.from({ length: bytes.length / 2 }, (_, code) => code);
  return new Map(codes.map((code) => [code, 256 * bytes[2 * code]! + bytes[2 * code + 1]!]));
}

/** Source: ISO 32000-1, section 9.10.3: `bfchar` and `bfrange` of a ToUnicode CMap. */
function unicodeOf(dict: PDFDict): Map<number, string> {
  const stream = dict.lookup(PDFName.of("ToUnicode"));
  if (!(stream instanceof PDFRawStream)) return new Map();
  const cmap = new TextDecoder("latin1").decode(decodePDFRawStream(stream).decode());
  if (/beginbfrange/.test(cmap)) throw new Error("a CMap with ranges: read them here too");
  const map = new Map<number, string>();
  for (const [, code, text] of cmap.matchAll(/<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>\s*$/gm)) {
    const units = text!.match(/.{4}/g)!.map((digits) => Number.parseInt(digits, 16));
    map.set(Number.parseInt(code!, 16), String.fromCharCode(...units));
  }
  return map;
}

function widthsOf(list: PDFArray): Map<number, number> {
  const widths = new Map<number, number>();
  for (let i = 0; i < list.size(); i += 2) {
    const first = list.lookup(i, PDFNumber).asNumber();
    list
      .lookup(i + 1, PDFArray)
      .asArray()
      .forEach((width, n) => {
        widths.set(first + n, (width as PDFNumber).asNumber());
      });
  }
  return widths;
}

function programWidths(bytes: Uint8Array): number[] {
  const { head, maxp, hmtx } = fontkit.create(bytes as never) as unknown as Program;
  return Array.from(
    { length: maxp.numGlyphs },
    (_, glyph) => (hmtx.metrics.get(glyph).advance * 1000) / head.unitsPerEm,
  );
}
