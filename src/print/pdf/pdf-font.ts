import type { PlacedGlyph } from "../../layout/fonts.ts";
import type { GlyphSource } from "../../layout/glyph-source.ts";
import { partGlyphs, renumbered } from "../../layout/outline-data.ts";
import { latin1 } from "./pdf-bytes.ts";
import type { PdfFile } from "./pdf-file.ts";
import { hex4, type PdfRef, PdfString } from "./pdf-values.ts";
import { trueTypeFile } from "./true-type-file.ts";

/** A face as a document embeds it: its glyphs are numbered in the order in which the document first uses them. */
export class PdfFont {
  #ref: PdfRef | undefined;
  readonly #source: GlyphSource;
  /** By its number here: 0 is what stands for a sign that a font lacks. */
  readonly #glyphs: number[] = [0];
  /** By its number in the source and the signs that it stands for. */
  readonly #numbers = new Map<string, number>();
  readonly #texts: string[] = [""];

  constructor(
    private readonly file: PdfFile,
    source: GlyphSource,
    private readonly tag: string,
  ) {
    this.#source = source;
  }

  /** Reserved only where the face is used. */
  get ref(): PdfRef {
    this.#ref ??= this.file.reserve();
    return this.#ref;
  }

  /** The code of a glyph in strings of text, as hexadecimal digits. */
  codeOf({ id, text }: Pick<PlacedGlyph, "id" | "text">): string {
    const key = `${id} ${text}`;
    let number = this.#numbers.get(key);
    if (number === undefined) {
      number = this.#glyphs.push(id) - 1;
      this.#texts.push(text);
      this.#numbers.set(key, number);
    }
    return hex4(number);
  }

  get isUsed(): boolean {
    return this.#glyphs.length > 1;
  }

  /** Writes what has been used of the face. Source: ISO 32000-1, sections 9.7 to 9.10. */
  finish(): void {
    const { file } = this;
    const source = this.#source;
    const { postscriptName, italicAngle, ascent, descent, capHeight, box } = source;
    const perMille = (units: number) => Math.round((units * 1e3) / source.unitsPerEm);
    const name = `${this.tag}+${postscriptName}`;
    const widths = this.#glyphs.map((glyph) => perMille(source.advance(glyph)));
    const program = trueTypeFile(source, this.#withParts());
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
    const glyphs = file.add({
      Type: "Font",
      Subtype: "CIDFontType2",
      BaseFont: name,
      CIDSystemInfo: {
        Registry: PdfString.ascii("Adobe"),
        Ordering: PdfString.ascii("Identity"),
        Supplement: 0,
      },
      FontDescriptor: descriptor,
      CIDToGIDMap: "Identity",
      W: [0, widths],
    });
    file.set(this.ref, {
      Type: "Font",
      Subtype: "Type0",
      BaseFont: name,
      Encoding: "Identity-H",
      DescendantFonts: [glyphs],
      ToUnicode: file.addPacked(latin1(this.#signs())),
    });
  }

  /** The outlines of all used glyphs and of those that they are put together from. */
  #withParts(): { advance: number; outline: Uint8Array }[] {
    const source = this.#source;
    const all = [...this.#glyphs];
    const numberOf = new Map<number, number>();
    for (const [number, glyph] of all.entries()) if (!numberOf.has(glyph)) numberOf.set(glyph, number);
    const number = (glyph: number): number => {
      let known = numberOf.get(glyph);
      if (known === undefined) {
        known = all.push(glyph) - 1;
        numberOf.set(glyph, known);
      }
      return known;
    };
    for (let at = 0; at < all.length; at++) partGlyphs(source.outline(all[at] ?? 0)).forEach(number);
    return all.map((glyph) => ({
      advance: source.advance(glyph),
      outline: renumbered(source.outline(glyph), number),
    }));
  }

  /** Which signs each code stands for, so that text can be searched and copied. */
  #signs(): string {
    const lines = this.#texts.flatMap((text, number) =>
      number === 0
        ? []
        : [
            `<${hex4(number)}> <${[...Array(text.length).keys()].map((i) => hex4(text.charCodeAt(i))).join("")}>`,
          ],
    );
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
}

/** Flags of a font's descriptor. Source: ISO 32000-1, table 123. */
const symbolic = 4;
const italic = 64;

/** Source: ISO 32000-1, section 9.10.3, after Adobe Technical Note 5014. */
const mostInBlock = 100;
