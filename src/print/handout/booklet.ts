import type { PaperSide, Placed } from "../../layout/paper.ts";

/**
 * Pages in the order in which folded sheets hold them, inside one another: the first sheet holds the last page and the
 * first, its back the second and the last but one, and so on inwards. Blank pages fill up to whole sheets at the end.
 *
 * @returns pairs of page numbers from 0, left and right, front and back in turn; undefined is a blank
 */
export function foldingOrder(pageCount: number): (readonly [number | undefined, number | undefined])[] {
  const places = Math.ceil(pageCount / 4) * 4;
  const page = (number: number) => (number < pageCount ? number : undefined);
  const sides: (readonly [number | undefined, number | undefined])[] = [];
  for (let first = 0; first < places / 2; first += 2) {
    sides.push([page(places - 1 - first), page(first)], [page(first + 1), page(places - 2 - first)]);
  }
  return sides;
}

/**
 * Pages laid in pairs on sheets twice as wide, to be printed on both sides turned on the short edge and folded in the
 * middle.
 */
export function imposeBooklet(pages: readonly PaperSide[]): PaperSide[] {
  const [first] = pages;
  if (first === undefined) return [];
  const { widthMm, heightMm } = first;
  const at = (number: number | undefined, xMm: number): readonly Placed[] =>
    number === undefined ? [] : pages[number]!.parts.map((part) => ({ ...part, xMm: part.xMm + xMm }));
  return foldingOrder(pages.length).map(([left, right]) => ({
    widthMm: 2 * widthMm,
    heightMm,
    viewTurn: 0,
    parts: [...at(left, 0), ...at(right, widthMm)],
  }));
}
