import { last } from "../../core/lists.ts";
import type { GroupItem, Item, PathItem, TextItem } from "../../drawing/model.ts";
import type { Fonts } from "../../layout/fonts.ts";
import { type Matrix, moved, type PaperSide, placing } from "../../layout/paper.ts";
import { type Extent, extentOf } from "../extent.ts";
import type { ContentWriter } from "./pdf-content.ts";
import type { PdfFile } from "./pdf-file.ts";
import { type Links, linkAnnotation } from "./pdf-links.ts";
import type { PointBox, StructureElement, StructureTree } from "./pdf-structure.ts";
import type { PdfRef } from "./pdf-values.ts";

export const pointsPerMm = 72 / 25.4;

/** A heading met while painting, for the outline. */
export interface Heading {
  readonly level: number;
  readonly text: string;
  readonly page: PdfRef;
  readonly topPt: number;
  /** Place of its page in the order of reading. */
  readonly reading: number;
}

interface Around {
  readonly element?: StructureElement;
  /** From here to the paper, for boxes and headings. */
  readonly toPaper: Matrix;
}

/** What all sides of a document share. */
interface DocumentParts {
  readonly file: PdfFile;
  readonly writer: ContentWriter;
  readonly tree: StructureTree;
  readonly fonts: Fonts;
  readonly links: Links;
  readonly pages: readonly PdfRef[];
}

/** What a side gives besides its content stream and its part of the structure tree. */
interface PaintedSide {
  /** For the page's `StructParents`. */
  readonly number: number;
  readonly headings: readonly Heading[];
  readonly annotations: readonly PdfRef[];
}

/** Paints one side of paper into a content stream and the structure tree. */
export function paintSide(side: PaperSide, page: PdfRef, parts: DocumentParts): PaintedSide {
  const { file, writer, tree, fonts, links, pages } = parts;
  const pageNumber = tree.nextPage();
  const headings: Heading[] = [];
  const annotations: PdfRef[] = [];

  const paintItems = (items: readonly Item[], around: Around): void => {
    for (const run of runsOfKind(items, links)) {
      if (run[0]!.kind === "group") paintGroup(run[0] as GroupItem, around);
      else if (run[0]!.kind === "text") paintLines(run as TextItem[], around);
      else writer.artifact(() => paintPlain(run));
    }
  };

  const paintLines = (lines: readonly TextItem[], { element, toPaper }: Around): void => {
    const [first] = lines;
    if (element === undefined) throw new Error(`text without a role on the page: ${JSON.stringify(first)}`);
    const target = links.get(first!.link ?? "");
    const owner = target ? element.child("Link") : element;
    writer.marked(owner.role, tree.mark(pageNumber, page, owner), () => paintPlain(lines));
    if (!target) return;
    for (const line of lines) {
      const words = { ...line, text: line.text.trim() };
      const extent = extentOf([words], fonts)!;
      writer.artifact(() => writer.shape(underline(words, extent)));
      const box = boxOnPage(extent, toPaper);
      annotations.push(linkAnnotation(file, target, box, page, pages, owner, tree));
    }
  };

  const paintGroup = (group: GroupItem, around: Around): void => {
    const shift: Matrix = [1, 0, 0, 1, group.xMm, group.yMm];
    const inside: Around = { ...around, toPaper: times(around.toPaper, shift) };
    writer.moved(shift, () => {
      if (group.artifact) {
        writer.artifact(() => paintPlain(group.items));
      } else if (group.role === "Figure") {
        paintFigure(group, inside);
      } else if (group.role) {
        const element = tree.element(group.role, around.element, group.element);
        if (group.role === "TR") scopeHeaders(group);
        if (group.role === "TD" && group.span) element.spanning(group.span);
        if (group.role === "TH") element.headerOf(scopes.get(group) ?? "Row", group.span);
        if (/^H[1-6]$/.test(group.role)) headings.push(heading(group, inside));
        paintItems(group.items, { ...inside, element });
      } else {
        paintItems(group.items, inside);
      }
    });
  };

  const paintFigure = (group: GroupItem, inside: Around): void => {
    if (!group.alt) throw new Error("a figure without alternative text");
    const element = tree.element("Figure", inside.element);
    element.alternative(group.alt);
    const extent = extentOf(group.items, fonts);
    if (extent) element.box(boxOnPage(extent, inside.toPaper));
    // A space ends each label, or labels run together when they are copied.
    writer.marked("Figure", tree.mark(pageNumber, page, element), () => paintPlain(group.items, " "));
  };

  const boxOnPage = ({ left, top, right, bottom }: Extent, toPaper: Matrix): PointBox => {
    const a = moved(toPaper, left, top);
    const b = moved(toPaper, right, bottom);
    return [
      pt(Math.min(a.xMm, b.xMm)),
      pt(side.heightMm - Math.max(a.yMm, b.yMm)),
      pt(Math.max(a.xMm, b.xMm)),
      pt(side.heightMm - Math.min(a.yMm, b.yMm)),
    ];
  };

  /** Marks without tags of their own. */
  const paintPlain = (items: readonly Item[], after = ""): void => {
    for (const item of items) {
      if (item.kind === "text") {
        writer.line(item, after);
      } else if (item.kind === "group") {
        writer.moved([1, 0, 0, 1, item.xMm, item.yMm], () => paintPlain(item.items, after));
      } else if (item.kind === "image") {
        writer.image(item);
      } else {
        writer.shape(item);
      }
    }
  };

  const scopes = new Map<GroupItem, "Row" | "Column">();

  /** A row of nothing but headers heads its columns; a header among other cells heads its row. */
  const scopeHeaders = (row: GroupItem): void => {
    const cells = row.items.filter(
      (item): item is GroupItem => item.kind === "group" && item.role !== undefined,
    );
    const scope = cells.every((cell) => cell.role === "TH") ? "Column" : "Row";
    for (const cell of cells) scopes.set(cell, scope);
  };

  const heading = (group: GroupItem, inside: Around): Heading => {
    const extent = extentOf(group.items, fonts);
    const top = extent ? moved(inside.toPaper, extent.left, extent.top).yMm : 0;
    return {
      level: Number(group.role!.slice(1)),
      text: wordsOf(group.items).trim(),
      page,
      topPt: pt(side.heightMm - top),
      reading: tree.reading,
    };
  };

  writer.moved([pointsPerMm, 0, 0, -pointsPerMm, 0, side.heightMm * pointsPerMm], () => {
    for (const part of side.parts) {
      const matrix = placing(part);
      tree.reading = part.reading ?? 0;
      writer.moved(matrix, () => paintItems(part.items, { toPaper: matrix }));
    }
  });
  return { number: pageNumber, headings, annotations };
}

function pt(mm: number): number {
  return Math.round(mm * pointsPerMm * 1e3) / 1e3;
}

function times([a, b, c, d, e, f]: Matrix, [a2, b2, c2, d2, e2, f2]: Matrix): Matrix {
  return [
    a * a2 + c * b2,
    b * a2 + d * b2,
    a * c2 + c * d2,
    b * c2 + d * d2,
    a * e2 + c * f2 + e,
    b * e2 + d * f2 + f,
  ];
}

/** The line below the words of a link. */
function underline({ yMm, sizeMm }: TextItem, { left, right }: Extent): PathItem {
  const below = yMm + 0.14 * sizeMm;
  const steps: PathItem["steps"] = [
    ["M", left, below],
    ["L", right, below],
  ];
  return { kind: "path", steps, stroke: { ink: "soft", widthMm: 0.04 * sizeMm } };
}

/** Groups alone; neighbouring lines together unless one is a link, neighbouring shapes together. */
function runsOfKind(items: readonly Item[], links: Links): Item[][] {
  const runs: Item[][] = [];
  let before = "";
  for (const item of items) {
    const link = item.kind === "text" && item.link !== undefined && links.has(item.link) ? item.link : "";
    const kind = item.kind === "circle" ? "path" : item.kind + link;
    if (kind === before && kind !== "group") last(runs).push(item);
    else runs.push([item]);
    before = kind;
  }
  return runs;
}

function wordsOf(items: readonly Item[]): string {
  return items
    .map((item) => (item.kind === "text" ? item.text : item.kind === "group" ? wordsOf(item.items) : ""))
    .join("");
}
