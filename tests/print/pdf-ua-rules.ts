import { PDFDict, PDFName } from "pdf-lib";
import { entry, type RawElement, type RawPdf } from "./raw-pdf.ts";

/** A rule of PDF/UA-1 that a program can check, and what of a file breaks it. */
export interface UaRule {
  /** Clause of ISO 14289-1:2014 and number of the test in the published list of machine checks. */
  readonly id: string;
  readonly says: string;
  readonly broken: (pdf: RawPdf) => readonly string[];
}

const standardTypes = new Set(
  "Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby Warichu Figure Formula Form".split(
    " ",
  ),
);

function all(element: RawElement): RawElement[] {
  return [element, ...element.kids.flatMap(all)];
}

/** Every element of the structure tree, in reading order. */
export function elementsOf(pdf: RawPdf): RawElement[] {
  return all(pdf.root);
}

const named = (element: RawElement) => `${element.type} ${element.ref}`;

function kidsOnly(parent: string, allowed: readonly string[]): UaRule["broken"] {
  return (pdf) =>
    elementsOf(pdf)
      .filter(({ type, kids }) => type === parent && kids.some((kid) => !allowed.includes(kid.type)))
      .map(named);
}

function parentOnly(type: string, allowed: readonly string[]): UaRule["broken"] {
  return (pdf) =>
    elementsOf(pdf)
      .filter((element) => element.type === type && !allowed.includes(element.parent))
      .map(named);
}

function columnsOf(row: RawElement): number {
  return row.kids.reduce((sum, cell) => sum + cell.span, 0);
}

function must(holds: (pdf: RawPdf) => boolean, otherwise: string): UaRule["broken"] {
  return (pdf) => (holds(pdf) ? [] : [otherwise]);
}

function pieces(pdf: RawPdf) {
  return pdf.pages.flatMap((page) => page.pieces.map((piece) => ({ page, piece })));
}

/** Codes that a page shows, with their font. */
function shown(pdf: RawPdf) {
  return pieces(pdf).flatMap(({ page, piece }) =>
    piece.font === undefined
      ? []
      : piece.codes.map((code) => ({ code, font: page.fonts.get(piece.font!)!, name: piece.font! })),
  );
}

function fonts(pdf: RawPdf) {
  return pdf.pages.flatMap((page) => [...page.fonts.values()]);
}

const language = /^[a-zA-Z]{1,8}(-[a-zA-Z0-9]{1,8})*$/;
const catalogDict = (pdf: RawPdf, key: string) => pdf.catalog.lookupMaybe(PDFName.of(key), PDFDict);

/**
 * Source: ISO 14289-1:2014 as listed by the veraPDF consortium's validation profile for PDF/UA-1 (CC BY 4.0), one rule
 * a test number. Left out as there is nothing here that they speak of: form fields, annotations and links (a rule
 * below holds that there are none), optional content, embedded files, encryption, media clips, XFA, XObjects,
 * formulas, notes, contents lists as TOC, row groups, and fonts other than composite TrueType ones.
 */
export const uaRules: readonly UaRule[] = [
  {
    id: "5-1, 5-2, 5-3",
    says: "the metadata name part 1 of the standard, with the prefix pdfuaid",
    broken: must(
      ({ xmp }) =>
        /xmlns:pdfuaid="http:\/\/www\.aiim\.org\/pdfua\/ns\/id\/"/.test(xmp) &&
        /<pdfuaid:part>1<\/pdfuaid:part>/.test(xmp),
      "no identifier",
    ),
  },
  {
    id: "6.1-1",
    says: "the header is %PDF-1.0 to 1.7",
    broken: must((pdf) => /^%PDF-1\.[0-7]/.test(pdf.header), "header"),
  },
  {
    id: "6.2-1",
    says: "the file is marked as tagged",
    broken: must((pdf) => entry(catalogDict(pdf, "MarkInfo"), "Marked") === "true", "Marked"),
  },
  {
    id: "7.1-1",
    says: "no artifact stands inside tagged content",
    broken: (pdf) =>
      pieces(pdf)
        .filter(({ piece }) => piece.around.findIndex(({ tag }) => tag === "Artifact") > 0)
        .map(({ piece }) => piece.operator),
  },
  {
    id: "7.1-2",
    says: "no tagged content stands inside an artifact",
    broken: (pdf) =>
      pieces(pdf)
        .filter(({ piece: { around } }) => around[0]?.tag === "Artifact" && around.length > 1)
        .map(({ piece }) => piece.operator),
  },
  {
    id: "7.1-3",
    says: "all that is painted is an artifact or belongs to an element, and the element knows it",
    broken: (pdf) => {
      const claimed = new Map(
        elementsOf(pdf).flatMap((e) =>
          e.content.map(({ page, mcid }) => [`${page} ${mcid}`, e.ref] as const),
        ),
      );
      return pieces(pdf)
        .filter(({ page, piece: { around } }) => {
          if (around[0]?.tag === "Artifact") return false;
          const mcid = around[0]?.mcid;
          if (mcid === undefined) return true;
          const owner = claimed.get(`${page.ref} ${mcid}`);
          return owner === undefined || pdf.owners.get(page.structParents ?? -1)?.[mcid] !== owner;
        })
        .map(({ page, piece }) => `${piece.operator} on ${page.ref}`);
    },
  },
  {
    id: "7.1-4",
    says: "nothing is suspect",
    broken: must((pdf) => entry(catalogDict(pdf, "MarkInfo"), "Suspects") !== "true", "Suspects"),
  },
  {
    id: "7.1-5, 7.1-6, 7.1-7",
    says: "elements are of standard types, and none is mapped",
    broken: (pdf) => [
      ...elementsOf(pdf)
        .filter(({ type }) => !standardTypes.has(type))
        .map(named),
      ...(pdf.roleMap ? ["RoleMap"] : []),
    ],
  },
  {
    id: "7.1-8",
    says: "there is a metadata stream",
    broken: must(({ xmp }) => xmp.includes("<x:xmpmeta"), "none"),
  },
  {
    id: "7.1-9",
    says: "the metadata give the title",
    broken: must(
      ({ xmp }) => /<dc:title>.*<rdf:li[^>]*>[^<]+<\/rdf:li>.*<\/dc:title>/s.test(xmp),
      "dc:title",
    ),
  },
  {
    id: "7.1-10",
    says: "viewers show the title",
    broken: must(
      (pdf) => entry(catalogDict(pdf, "ViewerPreferences"), "DisplayDocTitle") === "true",
      "not shown",
    ),
  },
  {
    id: "7.1-11",
    says: "there is a structure tree with content",
    broken: must((pdf) => elementsOf(pdf).some(({ content }) => content.length > 0), "empty tree"),
  },
  {
    id: "7.2-2, 7.2-22, 7.2-29, 7.2-33, 7.2-34",
    says: "the language of text, alternatives, outline and metadata is known",
    broken: must((pdf) => language.test(entry(pdf.catalog, "Lang") ?? ""), "Lang"),
  },
  { id: "7.2-3", says: "a table holds rows", broken: kidsOnly("Table", ["TR"]) },
  { id: "7.2-4", says: "a row stands in a table", broken: parentOnly("TR", ["Table"]) },
  { id: "7.2-8", says: "a header cell stands in a row", broken: parentOnly("TH", ["TR"]) },
  { id: "7.2-9", says: "a cell stands in a row", broken: parentOnly("TD", ["TR"]) },
  { id: "7.2-10", says: "a row holds cells", broken: kidsOnly("TR", ["TH", "TD"]) },
  {
    id: "7.2-15, 7.2-41, 7.2-42, 7.2-43",
    says: "all rows of a table have as many cells",
    broken: (pdf) =>
      elementsOf(pdf)
        .filter(({ type, kids }) => type === "Table" && new Set(kids.map(columnsOf)).size > 1)
        .map(named),
  },
  { id: "7.2-17", says: "a list item stands in a list", broken: parentOnly("LI", ["L"]) },
  { id: "7.2-18", says: "a list body stands in an item", broken: parentOnly("LBody", ["LI"]) },
  { id: "7.2-19", says: "a list holds items", broken: kidsOnly("L", ["L", "LI"]) },
  { id: "7.2-20", says: "an item holds labels and bodies", broken: kidsOnly("LI", ["Lbl", "LBody"]) },
  {
    id: "7.3-1",
    says: "a figure has alternative text",
    broken: (pdf) =>
      elementsOf(pdf)
        .filter(({ type, alt }) => type === "Figure" && !alt)
        .map(named),
  },
  {
    id: "7.4.2-1",
    says: "headings begin with the first level and skip none going down",
    broken: (pdf) => {
      const headings = elementsOf(pdf).filter(({ type }) => /^H[1-6]$/.test(type));
      let before = 0;
      return headings.flatMap((heading) => {
        const level = Number(heading.type.slice(1));
        const skips = level > before + 1;
        before = level;
        return skips ? [named(heading)] : [];
      });
    },
  },
  {
    id: "7.4.4-1, 7.4.4-2, 7.4.4-3",
    says: "headings are numbered, none is plain H",
    broken: (pdf) =>
      elementsOf(pdf)
        .filter(({ type }) => type === "H")
        .map(named),
  },
  {
    id: "7.5-1",
    says: "header cells say what they head",
    broken: (pdf) =>
      elementsOf(pdf)
        .filter(({ type, scope }) => type === "TH" && !["Row", "Column", "Both"].includes(scope ?? ""))
        .map(named),
  },
  { id: "7.16-1", says: "the file is not encrypted", broken: must((pdf) => !pdf.encrypted, "Encrypt") },
  {
    id: "7.18",
    says: "there are no annotations or form fields, and tabs follow the structure all the same",
    broken: (pdf) => [
      ...pdf.pages.filter((page) => page.annotations > 0 || page.tabs !== "S").map((page) => page.ref),
      ...(pdf.catalog.has(PDFName.of("AcroForm")) ? ["AcroForm"] : []),
    ],
  },
  {
    id: "7.20-1, 7.20-2",
    says: "there are no XObjects",
    broken: (pdf) => pdf.pages.filter((page) => page.xObjects > 0).map((page) => page.ref),
  },
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
        .filter((font) => font.descendantSubtype !== "CIDFontType2" || font.cidToGid !== "Identity")
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
        .filter(({ code, font }) => font.programWidths[code] === undefined)
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
        .filter(({ code, font }) => !(Math.abs(font.widths.get(code)! - font.programWidths[code]!) <= 1))
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
        .filter(({ code }) => code === 0)
        .map(({ name }) => name),
  },
];

/** Every break of every rule, as `7.3-1: Figure 12 0 R`. */
export function uaBreaks(pdf: RawPdf): string[] {
  return uaRules.flatMap(({ id, broken }) => broken(pdf).map((what) => `${id}: ${what}`));
}
