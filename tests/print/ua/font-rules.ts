import type { RawFont } from "../raw-font.ts";
import type { RawPdf } from "../raw-pdf.ts";
import { pieces, type UaRule } from "./rule.ts";

/** Codes that a page shows, with their font. */
function shown(pdf: RawPdf) {
  return pieces(pdf).flatMap(({ page, piece }) =>
    piece.font === undefined
      ? []
      : piece.codes.map((code) => ({ code, font: page.fonts.get(piece.font!)!, name: piece.font! })),
  );
}

const programWidth = ({ glyphs, programWidths }: RawFont, code: number) =>
  programWidths[glyphs.get(code) ?? -1];

function fonts(pdf: RawPdf) {
  return pdf.pages.flatMap((page) => [...page.fonts.values()]);
}

/** Fonts and the glyphs shown. */
export const fontRules: readonly UaRule[] = [
  {
    id: "7.21.3.1-1, 7.21.3.3-1",
    says: "fonts are composite and use the identity encoding",
    broken: (pdf) =>
      fonts(pdf)
        .filter((font) => font.subtype !== "Type0" || font.encoding !== "Identity-H")
        .map((font) => font.baseFont),
  },
  {
    id: "7.21.3.2-1",
    says: "embedded TrueType fonts map codes to glyphs",
    broken: (pdf) =>
      fonts(pdf)
        .filter((font) => font.descendantSubtype !== "CIDFontType2" || font.glyphs.size === 0)
        .map((font) => font.baseFont),
  },
  {
    id: "7.21.4.1-1",
    says: "fonts are embedded",
    broken: (pdf) =>
      fonts(pdf)
        .filter((font) => !font.embedded)
        .map((font) => font.baseFont),
  },
  {
    id: "7.21.4.1-2",
    says: "every glyph shown is in its font",
    broken: (pdf) =>
      shown(pdf)
        .filter(({ code, font }) => programWidth(font, code) === undefined)
        .map(({ code, name }) => `${name} ${code}`),
  },
  {
    id: "7.21.4.2-2",
    says: "there is no list of glyphs that could be wrong",
    broken: (pdf) =>
      fonts(pdf)
        .filter((font) => font.hasCidSet)
        .map((font) => font.baseFont),
  },
  {
    id: "7.21.5-1",
    says: "widths in dictionary and font agree to 1/1000 em",
    broken: (pdf) =>
      shown(pdf)
        .filter(({ code, font }) => !(Math.abs(font.widths.get(code)! - programWidth(font, code)!) <= 1))
        .map(({ code, name }) => `${name} ${code}`),
  },
  {
    id: "7.2-1, 7.21.7-1, 7.21.7-2",
    says: "every glyph shown maps to Unicode, none to zero or a byte order mark",
    broken: (pdf) =>
      shown(pdf)
        .filter(({ code, font }) => !/^[^\0\uFEFF\uFFFE]+$/.test(font.unicode.get(code) ?? ""))
        .map(({ code, name }) => `${name} ${code}`),
  },
  {
    id: "7.21.8-1",
    says: "the sign for a missing glyph is never shown",
    broken: (pdf) =>
      shown(pdf)
        .filter(({ code, font }) => font.glyphs.get(code) === 0)
        .map(({ name }) => name),
  },
];
