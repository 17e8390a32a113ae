import { entry } from "../../core/lists.ts";
import type { PaperSide } from "../../layout/paper.ts";
import type { PdfFile } from "./pdf-file.ts";
import type { PdfImages } from "./pdf-images.ts";
import { type Links, linkAnnotation } from "./pdf-links.ts";
import { type PaintedSide, pointsPerMm, type SideDeed } from "./pdf-side.ts";
import type { StructureElement, StructureTree } from "./pdf-structure.ts";
import type { PdfDict, PdfRef } from "./pdf-values.ts";

/** A heading met on a page, for the outline. */
export interface Heading {
  readonly level: number;
  readonly text: string;
  readonly page: PdfRef;
  readonly topPt: number;
  /** Place of its page in the order of reading. */
  readonly reading: number;
}

/** What all pages of a document share. */
interface DocumentParts {
  readonly file: PdfFile;
  readonly images: PdfImages;
  readonly tree: StructureTree;
  readonly links: Links;
  readonly pages: readonly PdfRef[];
}

/** A side as a page of a document. */
export interface Page {
  /** What is its own. */
  readonly dict: PdfDict;
  /** Its pictures by their names. */
  readonly pictures: PdfDict | undefined;
  readonly headings: readonly Heading[];
}

/**
 * Makes a painted side a page of a document, and its part of the structure tree.
 *
 * @throws Error where the document does not know where a link of the side leads
 */
export function pageOfSide(
  { widthMm, heightMm, viewTurn, parts: placed }: PaperSide,
  painted: PaintedSide,
  page: PdfRef,
  { file, images, tree, links, pages }: DocumentParts,
): Page {
  const number = tree.nextPage();
  const headings: Heading[] = [];
  const annotations: PdfRef[] = [];
  const enter = (deeds: readonly SideDeed[], reading: number) => {
    const elements: StructureElement[] = [];
    const element = (of: number) => entry(elements, of);
    tree.reading = reading;
    for (const deed of deeds) {
      if (deed.do === "mark") tree.mark(number, page, element(deed.of));
      else if (deed.do === "element")
        elements.push(
          tree.element(deed.role, deed.in === undefined ? undefined : element(deed.in), deed.name),
        );
      else if (deed.do === "span") element(deed.of).spanning(deed.columns);
      else if (deed.do === "head") element(deed.of).headerOf(deed.scope, deed.columns);
      else if (deed.do === "figure") {
        element(deed.of).alternative(deed.alt);
        if (deed.box) element(deed.of).box(deed.box);
      } else if (deed.do === "heading") {
        const { level, text, topPt } = deed;
        headings.push({ level, text, page, topPt, reading });
      } else {
        const target = links.get(deed.name);
        if (!target) throw new Error(`nothing is known of the link ${deed.name}`);
        annotations.push(linkAnnotation(file, target, deed.box, page, pages, element(deed.of), tree));
      }
    }
  };
  for (const [i, deeds] of painted.deeds.entries()) enter(deeds, entry(placed, i).reading ?? 0);
  const dict = {
    Type: "Page",
    MediaBox: [0, 0, widthMm * pointsPerMm, heightMm * pointsPerMm],
    Contents: file.addFlate(painted.content),
    StructParents: number,
    Annots: annotations.length > 0 ? annotations : undefined,
    Tabs: "S",
    Rotate: viewTurn === 0 ? undefined : viewTurn,
  };
  return { dict, pictures: images.named(painted.images), headings };
}
