import { first, known, last } from "../../core/lists.ts";
import type { Face } from "../../drawing/model.ts";
import { type Fonts, faces } from "../../layout/fonts.ts";
import type { GlyphSource } from "../../layout/glyph-source.ts";
import { partGlyphs, renumbered } from "../../layout/outline-data.ts";
import { latin1 } from "./pdf-bytes.ts";
import type { PdfFile } from "./pdf-file.ts";
import { fontName, type Signs, signCode } from "./pdf-signs.ts";
import { hex4, type PdfDict, type PdfRef, PdfString, type PdfValue } from "./pdf-values.ts";
import { trueTypeFile } from "./true-type-file.ts";

/** The fonts of a document, by the names that its pages have for them: of each face the signs that are used of it. */
export function embeddedFonts(file: PdfFile, signs: Signs, fonts: Fonts): PdfDict {
  return Object.fromEntries(
    faces.flatMap((face) =>
      planesOf(signs[face]).map(([plane, some]) => [
        fontName(face, plane),
        embedded(file, fonts.faces[face], tagOf(face, plane), some),
      ]),
    ),
  );
}

/** A sign of a font, its code, and the number of its glyph in the face's source. */
interface Coded {
  readonly sign: string;
  readonly code: number;
  readonly glyph: number;
}

/** Signs by their planes, in the order of their codes. */
function planesOf(signs: readonly string[]): [plane: number, signs: string[]][] {
  const planes = new Map<number, string[]>();
  const sorted = signs.toSorted((a, b) => signCode(a).number - signCode(b).number);
  for (const sign of sorted) {
    const { plane } = signCode(sign);
    planes.set(plane, [...(planes.get(plane) ?? []), sign]);
  }
  return [...planes].sort(([a], [b]) => a - b);
}

const letter = (number: number) => String.fromCharCode(0x41 + number);

/** A tag for each of a document's fonts, as subset fonts carry one. Source: ISO 32000-1, section 9.6.4. */
const tagOf = (face: Face, plane: number) => `DOT${letter(plane)}A${letter(faces.indexOf(face))}`;

/** Writes what is used of a face. Source: ISO 32000-1, sections 9.7 to 9.10. */
function embedded(
  file: PdfFile,
  { source, layout }: Fonts["faces"][Face],
  tag: string,
  signs: readonly string[],
): PdfRef {
  const coded = signs.map(
    (sign): Coded => ({ sign, code: signCode(sign).number, glyph: first(layout(sign).glyphs).id }),
  );
  const { postscriptName, italicAngle, ascent, descent, capHeight, box } = source;
  const perMille = (units: number) => Math.round((units * 1e3) / source.unitsPerEm);
  const name = `${tag}+${postscriptName}`;
  const { numbers, glyphs } = numbered(source, coded);
  const program = trueTypeFile(source, glyphs);
  const descriptor = file.add({
    Type: "FontDescriptor",
    FontName: name,
    Flags: symbolic + (italicAngle === 0 ? 0 : italic),
    FontBBox: box.map(perMille),
    ItalicAngle: italicAngle,
    Ascent: perMille(ascent),
    Descent: perMille(descent),
    CapHeight: perMille(capHeight),
    StemV: 0,
    FontFile2: file.addPacked(program, { Length1: program.length }),
  });
  const descendant = file.add({
    Type: "Font",
    Subtype: "CIDFontType2",
    BaseFont: name,
    CIDSystemInfo: {
      Registry: PdfString.ascii("Adobe"),
      Ordering: PdfString.ascii("Identity"),
      Supplement: 0,
    },
    FontDescriptor: descriptor,
    CIDToGIDMap: file.addPacked(glyphMap(coded, numbers)),
    W: widths(coded, (glyph) => perMille(source.advance(glyph))),
  });
  return file.add({
    Type: "Font",
    Subtype: "Type0",
    BaseFont: name,
    Encoding: "Identity-H",
    DescendantFonts: [descendant],
    ToUnicode: file.addPacked(latin1(signsOfCodes(coded))),
  });
}

/** The outlines of all used glyphs, and of those that they are put together from: 0 is what stands for a sign that a font lacks. */
function numbered(source: GlyphSource, coded: readonly Coded[]) {
  const all = [0];
  const numbers = new Map([[0, 0]]);
  const number = (glyph: number): number => {
    let found = numbers.get(glyph);
    if (found === undefined) {
      found = all.push(glyph) - 1;
      numbers.set(glyph, found);
    }
    return found;
  };
  for (const { glyph } of coded) number(glyph);
  for (let at = 0; at < all.length; at++) partGlyphs(source.outline(all[at] ?? 0)).forEach(number);
  const glyphs = all.map((glyph) => ({
    advance: source.advance(glyph),
    outline: renumbered(source.outline(glyph), number),
  }));
  return { numbers, glyphs };
}

/** Two bytes for each code up to the last. Source: ISO 32000-1, table 117. */
function glyphMap(coded: readonly Coded[], numbers: ReadonlyMap<number, number>): Uint8Array {
  const map = new DataView(new ArrayBuffer(2 * (last(coded).code + 1)));
  for (const { code, glyph } of coded) map.setUint16(2 * code, known(numbers, glyph));
  return new Uint8Array(map.buffer);
}

/** Widths of codes, those in a row together. Source: ISO 32000-1, section 9.7.4.3. */
function widths(coded: readonly Coded[], widthOf: (glyph: number) => number): PdfValue[] {
  const rows: { readonly from: number; readonly widths: number[] }[] = [];
  for (const { code, glyph } of coded) {
    const row = rows.at(-1);
    if (row && code === row.from + row.widths.length) row.widths.push(widthOf(glyph));
    else rows.push({ from: code, widths: [widthOf(glyph)] });
  }
  return rows.flatMap((row) => [row.from, row.widths]);
}

/** Which signs each code stands for, so that text can be searched and copied. */
function signsOfCodes(coded: readonly Coded[]): string {
  const lines = coded.map(({ sign, code }) => `<${hex4(code)}> <${unitsOf(sign)}>`);
  const blocks: string[] = [];
  for (let at = 0; at < lines.length; at += mostInBlock) {
    const some = lines.slice(at, at + mostInBlock);
    blocks.push(`${some.length} beginbfchar\n${some.join("\n")}\nendbfchar`);
  }
  return `/CIDInit /ProcSet findresource begin
12 dict begin
begincmap
/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
/CMapName /Adobe-Identity-UCS def
/CMapType 2 def
1 begincodespacerange
<0000> <FFFF>
endcodespacerange
${blocks.join("\n")}
endcmap
CMapName currentdict /CMap defineresource pop
end
end
`;
}

const unitsOf = (sign: string) =>
  Array.from({ length: sign.length }, (_, i) => hex4(sign.charCodeAt(i))).join("");

/** Flags of a font's descriptor. Source: ISO 32000-1, table 123. */
const symbolic = 4;
const italic = 64;

/** Source: ISO 32000-1, section 9.10.3, after Adobe Technical Note 5014. */
const mostInBlock = 100;
