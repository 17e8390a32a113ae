import { entry } from "../../core/lists.ts";
import { type Matrix, moved, type PaperSide, type Placed, placing } from "../../layout/paper.ts";
import type { Extent } from "../extent.ts";
import { movedBy } from "./pdf-content.ts";
import type { PdfFile } from "./pdf-file.ts";
import type { PdfImages } from "./pdf-images.ts";
import type { CodedLines } from "./pdf-lines.ts";
import { type Links, linkAnnotation } from "./pdf-links.ts";
import type { PaintedPart } from "./pdf-part.ts";
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

/** What all sides of a document share. */
interface DocumentParts {
  readonly file: PdfFile;
  readonly lines: CodedLines;
  readonly images: PdfImages;
  readonly tree: StructureTree;
  readonly links: Links;
  readonly pages: readonly PdfRef[];
  readonly paint: (part: Placed) => PaintedPart;
}

interface PaintedSide {
  readonly stream: string;
  /** For the page's `StructParents`. */
  readonly number: number;
  readonly headings: readonly Heading[];
  readonly annotations: readonly PdfRef[];
}

/** Lays painted parts on one side of paper: its content stream, and its part of the structure tree. */
export function paintSide(side: PaperSide, page: PdfRef, parts: DocumentParts): PaintedSide {
  const { file, lines, images, tree, links, pages, paint } = parts;
  const pageNumber = tree.nextPage();
  const headings: Heading[] = [];
  const annotations: PdfRef[] = [];

  /** Does what a part asks of its document, and gives the part's content stream. */
  const lay = ({ stream }: PaintedPart, toPaper: Matrix): string => {
    const elements: StructureElement[] = [];
    const element = (number: number) => entry(elements, number);
    let text = "";
    for (const piece of stream) {
      if (typeof piece === "string") text += piece;
      else if ("line" in piece) text += lines.shown(piece.line);
      else if ("mark" in piece) text += tree.mark(pageNumber, page, element(piece.mark));
      else if ("image" in piece) text += images.nameOf(piece.image);
      else if (piece.do === "element")
        elements.push(
          tree.element(piece.role, piece.in === undefined ? undefined : element(piece.in), piece.name),
        );
      else if (piece.do === "span") element(piece.of).spanning(piece.columns);
      else if (piece.do === "head") element(piece.of).headerOf(piece.scope, piece.columns);
      else if (piece.do === "figure") {
        element(piece.of).alternative(piece.alt);
        if (piece.box) element(piece.of).box(onPage(piece.box, toPaper, side));
      } else if (piece.do === "heading") {
        const { level, text: words, at } = piece;
        const topPt = pt(side.heightMm - moved(toPaper, at.xMm, at.yMm).yMm);
        headings.push({ level, text: words, page, topPt, reading: tree.reading });
      } else {
        const owner = element(piece.of);
        const target = links.get(piece.name);
        if (!target) throw new Error(`nothing is known of the link ${piece.name}`);
        const box = onPage(piece.box, toPaper, side);
        annotations.push(linkAnnotation(file, target, box, page, pages, owner, tree));
      }
    }
    return text;
  };

  const laid = side.parts.map((part) => {
    const matrix = placing(part);
    tree.reading = part.reading ?? 0;
    return within(matrix, lay(paint(part), matrix));
  });
  const toPoints: Matrix = [pointsPerMm, 0, 0, -pointsPerMm, 0, side.heightMm * pointsPerMm];
  return { stream: within(toPoints, laid.join("")), number: pageNumber, headings, annotations };
}

function within(matrix: Matrix, inside: string): string {
  const begin = movedBy(matrix);
  return begin === "" ? inside : `${begin}${inside}Q\n`;
}

/** A rectangle of a part in the points of its page. */
function onPage({ left, top, right, bottom }: Extent, toPaper: Matrix, { heightMm }: PaperSide): PointBox {
  const a = moved(toPaper, left, top);
  const b = moved(toPaper, right, bottom);
  return [
    pt(Math.min(a.xMm, b.xMm)),
    pt(heightMm - Math.max(a.yMm, b.yMm)),
    pt(Math.max(a.xMm, b.xMm)),
    pt(heightMm - Math.min(a.yMm, b.yMm)),
  ];
}

function pt(mm: number): number {
  return Math.round(mm * pointsPerMm * 1e3) / 1e3;
}
