import type { RawElement, RawPdf } from "../raw-pdf.ts";

/** A rule of PDF/UA-1 that a program can check, and what of a file breaks it. */
export interface UaRule {
  /** Clause of ISO 14289-1:2014 and number of the test in the published list of machine checks. */
  readonly id: string;
  readonly says: string;
  readonly broken: (pdf: RawPdf) => readonly string[];
}

export function must(holds: (pdf: RawPdf) => boolean, otherwise: string): UaRule["broken"] {
  return (pdf) => (holds(pdf) ? [] : [otherwise]);
}

/** Every element of the structure tree, in reading order. */
export function elementsOf(pdf: RawPdf): RawElement[] {
  return all(pdf.root);
}

function all(element: RawElement): RawElement[] {
  return [element, ...element.kids.flatMap(all)];
}

export const named = (element: RawElement) => `${element.type} ${element.ref}`;

/** What pages paint, piece by piece. */
export function pieces(pdf: RawPdf) {
  return pdf.pages.flatMap((page) => page.pieces.map((piece) => ({ page, piece })));
}
