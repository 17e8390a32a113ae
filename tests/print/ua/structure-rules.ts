import type { RawElement } from "../raw-pdf.ts";
import { elementsOf, must, named, type UaRule } from "./rule.ts";

const standardTypes = new Set(
  "Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby Warichu Figure Formula Form".split(
    " ",
  ),
);

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

/** The structure tree: which elements stand in which, headings, tables, lists, figures. */
export const structureRules: readonly UaRule[] = [
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
    id: "7.1-11",
    says: "there is a structure tree with content",
    broken: must((pdf) => elementsOf(pdf).some(({ content }) => content.length > 0), "empty tree"),
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
  { id: "7.2-26", says: "an entry of contents stands in contents", broken: parentOnly("TOCI", ["TOC"]) },
  { id: "7.2-27", says: "contents hold entries", broken: kidsOnly("TOC", ["TOC", "TOCI", "Caption"]) },
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
];
