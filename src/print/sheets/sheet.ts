import type { Item } from "../../drawing/model.ts";
import type { PaperSide, Placed, QuarterTurn } from "../../layout/paper.ts";
import { unprintableMm } from "./paper-sizes.ts";
import {
  checkBar,
  checkBarHeightMm,
  cornerMarks,
  cropMarks,
  foldMarks,
  type MarkedCard,
  roundedCorners,
} from "./sheet-marks.ts";

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
type Turning = (typeof turnings)[number];

/** A line of words for the foot of a sheet, laid out as wide as `noteWidthMm`. */
interface SheetNote extends Size {
  readonly items: readonly Item[];
}

/**
 * How cards lie: apart, so that each can be cut out and sealed with film around it, or edge to edge, so that the paper
 * is halved and halved again.
 */
export type Cutting = "apart" | "halving";

/** Between two cards that lie apart [mm]: 3 mm of film for each. */
const cardGapMm = 6;

/** Where cards go on a sheet, from its left and top edge. */
interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly cellWidthMm: number;
  readonly cellHeightMm: number;
  readonly gapMm: number;
}

/**
 * As many cells as the paper takes, in the middle across, so that backs meet fronts. Cards that lie apart keep off the
 * unprintable margin and the foot of the sheet; halved ones fill the paper, as their content keeps off their edges.
 */
function sheetGrid(paper: Size, cell: Size, cutting: Cutting, footMm: number): Grid {
  const apart = cutting === "apart";
  const gapMm = apart ? cardGapMm : 0;
  const edgeMm = apart ? unprintableMm : 0;
  const heightMm = paper.heightMm - 2 * edgeMm - (apart ? footMm : 0);
  const howMany = (roomMm: number, sizeMm: number) => Math.floor((roomMm + gapMm) / (sizeMm + gapMm) + 1e-9);
  const columns = howMany(paper.widthMm - 2 * edgeMm, cell.widthMm);
  const rows = howMany(heightMm, cell.heightMm);
  const extent = (count: number, sizeMm: number) => count * sizeMm + (count - 1) * gapMm;
  return {
    columns,
    rows,
    leftMm: (paper.widthMm - extent(columns, cell.widthMm)) / 2,
    topMm: edgeMm + (heightMm - extent(rows, cell.heightMm)) / 2,
    cellWidthMm: cell.widthMm,
    cellHeightMm: cell.heightMm,
    gapMm,
  };
}

/** Room at the foot of a sheet for the check bar and the note below it [mm]. */
function footHeightMm(note: Size): number {
  return checkBarHeightMm + note.heightMm + 3;
}

export function noteWidthMm(paper: Size): number {
  return paper.widthMm - 2 * (unprintableMm + 2);
}

/**
 * Cards of one size laid out on sheets, fronts and backs, with crop marks and a check bar.
 *
 * @param notes words for the foot of a front and of a back
 * @returns sides in the order a printer takes them: front, back, front, back …; only fronts for `fold`; none where the
 * paper is too small for a card
 */
export function sheets(
  cards: readonly Card[],
  paper: Size,
  turning: Turning,
  cutting: Cutting,
  notes: { readonly front: SheetNote; readonly back: SheetNote },
): PaperSide[] {
  const first = cards[0];
  if (first === undefined) return [];
  const folded = turning === "fold";
  const cell = { widthMm: first.widthMm * (folded ? 2 : 1), heightMm: first.heightMm };
  const grid = sheetGrid(paper, cell, cutting, footHeightMm(notes.front));
  const perSheet = grid.columns * grid.rows;
  if (perSheet < 1) return [];
  const sides: PaperSide[] = [];
  for (let at = 0; at < cards.length; at += perSheet) {
    const some = cards.slice(at, at + perSheet).map((card, i) => ({ card, cell: cellAt(grid, i) }));
    const sheet = { paper, grid, some };
    if (folded) sides.push(foldSide(sheet, notes.front));
    else sides.push(frontSide(sheet, notes.front), backSide(sheet, turning, notes.back));
  }
  return sides;
}

interface CardInCell {
  readonly card: Card;
  readonly cell: { readonly xMm: number; readonly yMm: number };
}

interface Sheet {
  readonly paper: Size;
  readonly grid: Grid;
  readonly some: readonly CardInCell[];
}

function cellAt({ columns, leftMm, topMm, cellWidthMm, cellHeightMm, gapMm }: Grid, i: number) {
  return {
    xMm: leftMm + (i % columns) * (cellWidthMm + gapMm),
    yMm: topMm + Math.floor(i / columns) * (cellHeightMm + gapMm),
  };
}

function place(face: CardFace, xMm: number, yMm: number): Placed {
  return { ...face, xMm, yMm };
}

function frontSide(sheet: Sheet, note: SheetNote): PaperSide {
  const faces = sheet.some.map(({ card, cell }) => place(card.front, cell.xMm, cell.yMm));
  return side(sheet, faces, note, cutMarks(sheet, note, sheet.some.map(marked)));
}

/** Mirrored across, as the paper's other side is seen; turned on its short edge it also lies upside down. */
function backSide(sheet: Sheet, turning: Turning, note: SheetNote): PaperSide {
  const faces = sheet.some.map(({ card, cell }) =>
    place(card.back, sheet.paper.widthMm - cell.xMm - card.widthMm, cell.yMm),
  );
  const back = side(sheet, faces, note, []);
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
function foldSide(sheet: Sheet, note: SheetNote): PaperSide {
  const faces = sheet.some.flatMap(({ card, cell }) => [
    place(card.front, cell.xMm, cell.yMm),
    place(card.back, cell.xMm + card.widthMm, cell.yMm),
  ]);
  const open = sheet.some.map((one) => ({ ...marked(one), widthMm: 2 * one.card.widthMm }));
  return side(sheet, faces, note, [
    ...cutMarks(sheet, note, open),
    ...foldMarks(open, sheet.grid.gapMm === 0),
  ]);
}

function marked({ card: { widthMm, heightMm }, cell }: CardInCell): MarkedCard {
  return { ...cell, widthMm, heightMm };
}

function cutMarks(sheet: Sheet, note: Size, cards: readonly MarkedCard[]): Item[] {
  return sheet.grid.gapMm === 0
    ? cornerMarks(cards, foot(sheet, note).onCut)
    : [...cropMarks(cards), ...roundedCorners(cards)];
}

interface Foot {
  readonly noteYMm: number;
  readonly bar: Item[];
  /** Middle of a bar that lies along a cut. */
  readonly onCut?: { readonly xMm: number; readonly yMm: number };
}

/** From the check bar to the words that explain it. */
const barToNoteMm = 1.2;

/**
 * The check bar and its words: at the foot of the sheet where that is free, else at the middle cut, in the white that
 * cards keep along their edges, the words above it as holes are punched below it.
 */
function foot({ paper, grid }: Sheet, note: Size): Foot {
  const { topMm, rows, cellHeightMm, gapMm } = grid;
  const cardsEndMm = topMm + rows * cellHeightMm + (rows - 1) * gapMm;
  const middleMm = paper.widthMm / 2;
  const noteYMm = paper.heightMm - unprintableMm - note.heightMm;
  if (paper.heightMm - unprintableMm - footHeightMm(note) >= cardsEndMm - 1e-6) {
    return { noteYMm, bar: checkBar(middleMm, noteYMm - barToNoteMm, "up") };
  }
  const cutMm = topMm + Math.floor(rows / 2) * cellHeightMm;
  return {
    noteYMm: cutMm - barToNoteMm - note.heightMm,
    bar: checkBar(middleMm, cutMm, "down"),
    onCut: { xMm: middleMm, yMm: cutMm },
  };
}

function side(sheet: Sheet, faces: readonly Placed[], note: SheetNote, cut: readonly Item[]): PaperSide {
  const { paper } = sheet;
  const { noteYMm, bar } = foot(sheet, note);
  const whole = { widthMm: paper.widthMm, heightMm: paper.heightMm, xMm: 0, yMm: 0, turn: 0 as const };
  const words: Placed = { ...note, xMm: (paper.widthMm - note.widthMm) / 2, yMm: noteYMm, turn: 0 };
  return {
    widthMm: paper.widthMm,
    heightMm: paper.heightMm,
    viewTurn: 0,
    parts: [...faces, { ...whole, items: [...cut, ...bar] }, words],
  };
}
