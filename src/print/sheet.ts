import type { Item } from "../drawing/model.ts";
import type { PaperSide, Placed, QuarterTurn } from "../layout/paper.ts";
import { unprintableMm } from "./paper-sizes.ts";
import { checkBar, checkBarHeightMm, cropMarks, foldMarks, type MarkedCard } from "./sheet-marks.ts";

interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A face of a card as it is laid out, and how it is turned to lie on the card as it lies on the sheet. */
export interface CardFace extends Size {
  readonly items: readonly Item[];
  readonly turn: QuarterTurn;
}

/** A card as it lies on a sheet: both its faces fill the same rectangle. */
export interface Card extends Size {
  readonly id: string;
  readonly front: CardFace;
  readonly back: CardFace;
}

/** How the sheet gets its backs: a printer turns it on an edge, or it is printed on one side and folded. */
export const turnings = ["long edge", "short edge", "fold"] as const;
export type Turning = (typeof turnings)[number];

/** A line of words for the foot of a sheet, laid out as wide as `noteWidthMm`. */
export interface SheetNote extends Size {
  readonly items: readonly Item[];
}

/** Between two cards [mm]: each can be cut out and sealed with 3 mm of film around it. */
export const cardGapMm = 6;

/** Where cards go on a sheet, from its left and top edge. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly cellWidthMm: number;
  readonly cellHeightMm: number;
}

/**
 * As many cells as the paper takes inside its unprintable margin with the foot left free, in the middle of the paper
 * across, so that the backs meet the fronts whichever edge the sheet is turned on.
 */
export function sheetGrid(paper: Size, cell: Size, footMm: number): Grid {
  const howMany = (roomMm: number, sizeMm: number) =>
    Math.floor((roomMm + cardGapMm) / (sizeMm + cardGapMm) + 1e-9);
  const columns = howMany(paper.widthMm - 2 * unprintableMm, cell.widthMm);
  const rows = howMany(paper.heightMm - 2 * unprintableMm - footMm, cell.heightMm);
  const extent = (count: number, sizeMm: number) => count * sizeMm + (count - 1) * cardGapMm;
  return {
    columns,
    rows,
    leftMm: (paper.widthMm - extent(columns, cell.widthMm)) / 2,
    topMm: unprintableMm + (paper.heightMm - 2 * unprintableMm - footMm - extent(rows, cell.heightMm)) / 2,
    cellWidthMm: cell.widthMm,
    cellHeightMm: cell.heightMm,
  };
}

/** Room at the foot of a sheet for the check bar and the note below it [mm]. */
export function footHeightMm(note: Size): number {
  return checkBarHeightMm + note.heightMm + 3;
}

export function noteWidthMm(paper: Size): number {
  return paper.widthMm - 2 * (unprintableMm + 2);
}

/**
 * Cards of one size laid out on sheets, fronts and backs, with crop marks and a check bar.
 *
 * @param notes words for the foot of a front and of a back
 * @returns sides in the order a printer takes them: front, back, front, back …; only fronts for `fold`
 * @throws Error where the paper takes no card
 */
export function sheets(
  cards: readonly Card[],
  paper: Size,
  turning: Turning,
  notes: { readonly front: SheetNote; readonly back: SheetNote },
): PaperSide[] {
  const first = cards[0];
  if (first === undefined) return [];
  const folded = turning === "fold";
  const cell = { widthMm: first.widthMm * (folded ? 2 : 1), heightMm: first.heightMm };
  const grid = sheetGrid(paper, cell, footHeightMm(notes.front));
  const perSheet = grid.columns * grid.rows;
  if (perSheet < 1) throw new Error("the paper takes no card");
  const sides: PaperSide[] = [];
  for (let at = 0; at < cards.length; at += perSheet) {
    const some = cards.slice(at, at + perSheet).map((card, i) => ({ card, cell: cellAt(grid, i) }));
    if (folded) {
      sides.push(foldSide(some, paper, notes.front));
    } else {
      sides.push(frontSide(some, paper, notes.front), backSide(some, paper, turning, notes.back));
    }
  }
  return sides;
}

interface CardInCell {
  readonly card: Card;
  readonly cell: { readonly xMm: number; readonly yMm: number };
}

function cellAt({ columns, leftMm, topMm, cellWidthMm, cellHeightMm }: Grid, i: number): CardInCell["cell"] {
  return {
    xMm: leftMm + (i % columns) * (cellWidthMm + cardGapMm),
    yMm: topMm + Math.floor(i / columns) * (cellHeightMm + cardGapMm),
  };
}

function place(face: CardFace, xMm: number, yMm: number): Placed {
  return { ...face, xMm, yMm };
}

function frontSide(some: readonly CardInCell[], paper: Size, note: SheetNote): PaperSide {
  const faces = some.map(({ card, cell }) => place(card.front, cell.xMm, cell.yMm));
  return side(paper, faces, note, some.map(marked), []);
}

/** Mirrored across, as the paper's other side is seen; turned on its short edge it also lies upside down. */
function backSide(some: readonly CardInCell[], paper: Size, turning: Turning, note: SheetNote): PaperSide {
  const faces = some.map(({ card, cell }) =>
    place(card.back, paper.widthMm - cell.xMm - card.widthMm, cell.yMm),
  );
  const back = side(paper, faces, note, [], []);
  return turning === "short edge" ? upsideDown(back) : back;
}

function upsideDown(side: PaperSide): PaperSide {
  const parts = side.parts.map((part): Placed => {
    const [widthMm, heightMm] =
      part.turn % 180 === 0 ? [part.widthMm, part.heightMm] : [part.heightMm, part.widthMm];
    return {
      ...part,
      xMm: side.widthMm - part.xMm - widthMm,
      yMm: side.heightMm - part.yMm - heightMm,
      turn: ((part.turn + 180) % 360) as QuarterTurn,
    };
  });
  return { ...side, parts };
}

/** Front and back side by side, to be folded back along the line between them. */
function foldSide(some: readonly CardInCell[], paper: Size, note: SheetNote): PaperSide {
  const faces = some.flatMap(({ card, cell }) => [
    place(card.front, cell.xMm, cell.yMm),
    place(card.back, cell.xMm + card.widthMm, cell.yMm),
  ]);
  const open = some.map((one) => ({ ...marked(one), widthMm: 2 * one.card.widthMm }));
  return side(paper, faces, note, open, open);
}

function marked({ card: { widthMm, heightMm }, cell }: CardInCell): MarkedCard {
  return { ...cell, widthMm, heightMm };
}

function side(
  paper: Size,
  faces: readonly Placed[],
  note: SheetNote,
  cut: readonly MarkedCard[],
  folded: readonly MarkedCard[],
): PaperSide {
  const noteYMm = paper.heightMm - unprintableMm - note.heightMm;
  const marks: Item[] = [
    ...cropMarks(cut),
    ...foldMarks(folded),
    ...checkBar(paper.widthMm / 2, noteYMm - 1.5),
  ];
  const whole = { widthMm: paper.widthMm, heightMm: paper.heightMm, xMm: 0, yMm: 0, turn: 0 as const };
  const foot: Placed = { ...note, xMm: (paper.widthMm - note.widthMm) / 2, yMm: noteYMm, turn: 0 };
  return { ...paper, viewTurn: 0, parts: [...faces, { ...whole, items: marks }, foot] };
}
