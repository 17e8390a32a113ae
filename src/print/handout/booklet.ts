import type { GroupItem } from "../../drawing/model.ts";
import { type PaperSide, type Placed, placed } from "../../layout/paper.ts";
import { digestOf } from "../../model/digest.ts";
import { sectionMark } from "./section-mark.ts";

/** Sheets of office paper that fold well by hand, one inside the other (common practice, no source). */
const sheetsInSectionMax = 6;

/** Sheets that are folded together; the booklet is a stack of such sections. */
interface Section {
  /** From 0. */
  readonly firstPage: number;
  readonly sheets: number;
}

/** Pages shared out to as few sections as may be, as equal as may be, the thicker ones first. */
export function sectionsOf(pageCount: number): Section[] {
  const sheets = Math.ceil(pageCount / 4);
  const count = Math.ceil(sheets / sheetsInSectionMax);
  const thick = sheets % count;
  const sections: Section[] = [];
  let firstPage = 0;
  for (let i = 0; i < count; i++) {
    const section = { firstPage, sheets: Math.floor(sheets / count) + (i < thick ? 1 : 0) };
    sections.push(section);
    firstPage += 4 * section.sheets;
  }
  return sections;
}

/**
 * Pages in the order in which the folded sheets of a section hold them, inside one another: the first sheet holds its
 * last page and its first, the sheet's back the second and the last but one, and so on inwards.
 *
 * @returns pairs of page numbers from 0, left and right, front and back in turn; numbers beyond the last page are blanks
 */
export function foldingOrder({ firstPage, sheets }: Section): (readonly [number, number])[] {
  const lastPage = firstPage + 4 * sheets - 1;
  return Array.from({ length: sheets }, (_, sheet) => 2 * sheet).flatMap((inwards) => [
    [lastPage - inwards, firstPage + inwards] as const,
    [firstPage + inwards + 1, lastPage - inwards - 1] as const,
  ]);
}

/** A page as a part of a wider side, read in the order of the pages; nothing where there is no such page. */
export function pageAt(pages: readonly PaperSide[], number: number, xMm: number): readonly Placed[] {
  return (pages[number]?.parts ?? []).map((part) =>
    placed(part, { xMm: part.xMm + xMm, yMm: part.yMm, turn: part.turn, reading: number }),
  );
}

/**
 * Pages laid in pairs on sheets twice as wide, to be printed on both sides turned on the short edge. The first side of
 * each section, which is outside once it is folded, tells the section's number at the fold.
 */
export function imposeBooklet(pages: readonly PaperSide[]): PaperSide[] {
  const [first] = pages;
  if (first === undefined) return [];
  const paper = { widthMm: 2 * first.widthMm, heightMm: first.heightMm };
  const sections = sectionsOf(pages.length);
  return sections.flatMap((section, s) =>
    foldingOrder(section).map(([left, right], side): PaperSide => {
      const marks: GroupItem[] =
        side === 0 && sections.length > 1 ? [sectionMark(s + 1, sections.length, paper)] : [];
      const overAll = { ...paper, xMm: 0, yMm: 0, turn: 0, items: marks, from: digestOf(marks) } as const;
      return {
        ...paper,
        viewTurn: 0,
        parts: [...pageAt(pages, left, 0), ...pageAt(pages, right, first.widthMm), overAll],
      };
    }),
  );
}
