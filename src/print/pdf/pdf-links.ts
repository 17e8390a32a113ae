import { entry } from "../../core/lists.ts";
import type { PdfFile } from "./pdf-file.ts";
import type { PointBox, StructureElement, StructureTree } from "./pdf-structure.ts";
import { type PdfRef, PdfString } from "./pdf-values.ts";

/** Where a link leads, and what is told of it to somebody who cannot see the page. */
export type LinkTarget = { readonly about: string } & (
  | { readonly address: string }
  /** A page of the document, from 0. */
  | { readonly page: number }
);

/** The links of a document by the names that its words have for them. */
export type Links = ReadonlyMap<string, LinkTarget>;

/**
 * A place on a page that leads elsewhere, tied to its element. Sources: ISO 32000-1, sections 12.5.6.5 and 14.7.4.3;
 * ISO 14289-1, section 7.18.
 *
 * @param pages of the document, in order
 */
export function linkAnnotation(
  file: PdfFile,
  target: LinkTarget,
  box: PointBox,
  page: PdfRef,
  pages: readonly PdfRef[],
  element: StructureElement,
  tree: StructureTree,
): PdfRef {
  const action =
    "page" in target
      ? { S: "GoTo", D: [entry(pages, target.page), "Fit"] }
      : { S: "URI", URI: PdfString.ascii(plainAddress(target.address)) };
  const annotation = file.add({
    Type: "Annot",
    Subtype: "Link",
    Rect: box,
    Border: [0, 0, 0],
    F: 4,
    P: page,
    Contents: PdfString.text(target.about),
    StructParent: tree.owned(element),
    A: action,
  });
  element.holds(page, annotation);
  return annotation;
}

/** An address whose signs are seven-bit already, with none that is special in a string of the file. */
function plainAddress(address: string): string {
  return address.replace(/[()\\]/g, (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`);
}
