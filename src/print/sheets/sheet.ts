import type { Item } from "../../drawing/model.ts";
import { type PaperSide, type Placed, placed, type QuarterTurn } from "../../layout/paper.ts";
import { digestOf } from "../../model/digest.ts";
import type { CheckedBar } from "../../words/unit-systems.ts";
import { unprintableMm } from "./paper-sizes.ts";
import {
  checkBar,
  checkBarHeightMm,
  cornerMarks,
  cropMarks,
  foldMarks,
  lightCrosses,
  lightRings,
  type MarkedCard,
  type Place,
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
  /** Stands for all that its marks are made from, where that is known. */
  readonly from?: string;
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

/** Words for the foot of a sheet, laid out as wide as `noteWidthMm`. */
interface SheetNote extends Size {
  readonly items: readonly Item[];
  /** The bar above it. */
  readonly bar?: CheckedBar;
}

interface Notes {
  readonly front: SheetNote;
  readonly back: SheetNote;
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

/** From the check bar to the words that explain it. */
const barToNoteMm = 1.2;

/** Room at the foot of a sheet for the check bar and the note below it [mm]. */
function footHeightMm(note: Size): number {
  return checkBarHeightMm + note.heightMm + 3;
}

export function noteWidthMm(paper: Size): number {
  return paper.widthMm - 2 * (unprintableMm + 2);
}

/**
 * Cards of one size laid out on sheets, fronts and backs, with crop marks, a check bar, and marks that show through where
 * backs lie right. Bar and words are at the foot of each sheet; where cards leave no foot free they are on a sheet of
 * their own before all others, as no card keeps them.
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
  notes: Notes,
): PaperSide[] {
  const first = cards[0];
  if (first === undefined) return [];
  const folded = turning === "fold";
  const cell = { widthMm: first.widthMm * (folded ? 2 : 1), heightMm: first.heightMm };
  const grid = sheetGrid(paper, cell, cutting, footHeightMm(notes.front));
  const perSheet = grid.columns * grid.rows;
  if (perSheet < 1) return [];
  const free = footIsFree(paper, grid, notes.front);
  const sides = free ? [] : sheetOfNotes(paper, turning, notes);
  for (let at = 0; at < cards.length; at += perSheet) {
    const some = cards.slice(at, at + perSheet).map((card, i) => ({ card, cell: cellAt(grid, i) }));
    const sheet = { paper, grid, some };
    if (folded) sides.push(side(sheet, facesToFold(some), free && notes.front, marksToFold(sheet)));
    else sides.push(frontSide(sheet, free && notes.front), backSide(sheet, turning, free && notes.back));
  }
  return sides;
}

/** Whether words and bar have room below the cards. */
function footIsFree(paper: Size, { topMm, rows, cellHeightMm, gapMm }: Grid, note: Size): boolean {
  const cardsEndMm = topMm + rows * cellHeightMm + (rows - 1) * gapMm;
  return paper.heightMm - unprintableMm - footHeightMm(note) >= cardsEndMm - 1e-6;
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
  return placed(face, { xMm, yMm, turn: face.turn });
}

/** Words for a side, where they lie on it. */
type NoteHere = SheetNote | false;

function frontSide(sheet: Sheet, note: NoteHere): PaperSide {
  const faces = sheet.some.map(({ card, cell }) => place(card.front, cell.xMm, cell.yMm));
  const crosses = lightCrosses(besideCards(sheet));
  return side(sheet, faces, note, [...cutMarks(sheet, sheet.some.map(marked)), ...crosses]);
}

/** Mirrored across, as the paper's other side is seen; turned on its short edge it also lies upside down. */
function backSide(sheet: Sheet, turning: Turning, note: NoteHere): PaperSide {
  const faces = sheet.some.map(({ card, cell }) =>
    place(card.back, sheet.paper.widthMm - cell.xMm - card.widthMm, cell.yMm),
  );
  return turnedOver(side(sheet, faces, note, lightRings(besideCards(sheet))), turning);
}

/** A back as it lies on the paper: upside down where that is turned on its short edge. */
function turnedOver(side: PaperSide, turning: Turning): PaperSide {
  if (turning !== "short edge") return side;
  const parts = side.parts.map((part): Placed => {
    const [widthMm, heightMm] =
      part.turn % 180 === 0 ? [part.widthMm, part.heightMm] : [part.heightMm, part.widthMm];
    return placed(part, {
      xMm: side.widthMm - part.xMm - widthMm,
      yMm: side.heightMm - part.yMm - heightMm,
      turn: ((part.turn + 180) % 360) as QuarterTurn,
    });
  });
  return { ...side, parts };
}

/** Front and back side by side, to be folded back along the line between them. */
function facesToFold(some: readonly CardInCell[]): Placed[] {
  return some.flatMap(({ card, cell }) => [
    place(card.front, cell.xMm, cell.yMm),
    place(card.back, cell.xMm + card.widthMm, cell.yMm),
  ]);
}

function marksToFold(sheet: Sheet): Item[] {
  const open = sheet.some.map((one) => ({ ...marked(one), widthMm: 2 * one.card.widthMm }));
  return [...cutMarks(sheet, open), ...foldMarks(open, sheet.grid.gapMm === 0)];
}

function marked({ card: { widthMm, heightMm }, cell }: CardInCell): MarkedCard {
  return { ...cell, widthMm, heightMm };
}

function cutMarks({ grid }: Pick<Sheet, "grid">, cards: readonly MarkedCard[]): Item[] {
  return grid.gapMm === 0 ? cornerMarks(cards) : [...cropMarks(cards), ...roundedCorners(cards)];
}

/** White that a mark needs on either side of its middle [mm]. */
const markRoomMm = 3;

/** In the waste left and right of the cards, level with the middles of the first row and the last; the same on both sides. */
function besideCards({ paper, grid }: Sheet): Place[] {
  const { leftMm, topMm, rows, cellHeightMm, gapMm } = grid;
  if (leftMm - unprintableMm < 2 * markRoomMm) return [];
  const xMm = (unprintableMm + leftMm) / 2;
  const firstMm = topMm + cellHeightMm / 2;
  const lastMm = firstMm + (rows - 1) * (cellHeightMm + gapMm);
  return [...new Set([firstMm, lastMm])].flatMap((yMm) => mirrored({ xMm, yMm }, paper));
}

const mirrored = ({ xMm, yMm }: Place, { widthMm }: Size): Place[] => [
  { xMm, yMm },
  { xMm: widthMm - xMm, yMm },
];

/** Words and bar by themselves, for cards that fill their sheets, with the marks that show through. */
function sheetOfNotes(paper: Size, turning: Turning, notes: Notes): PaperSide[] {
  const sheet = { paper };
  if (turning === "fold") return [side(sheet, [], notes.front, [])];
  const xMm = paper.widthMm / 10;
  const places = [1 / 10, 1 / 2].flatMap((down) => mirrored({ xMm, yMm: down * paper.heightMm }, paper));
  return [
    side(sheet, [], notes.front, lightCrosses(places)),
    turnedOver(side(sheet, [], false, lightRings(places)), turning),
  ];
}

function side(
  { paper }: Pick<Sheet, "paper">,
  faces: readonly Placed[],
  note: NoteHere,
  marks: readonly Item[],
): PaperSide {
  const { widthMm, heightMm } = paper;
  const over = (items: readonly Item[]): Placed => {
    return { widthMm, heightMm, xMm: 0, yMm: 0, turn: 0, items, from: digestOf(items) };
  };
  const parts = note ? [over([...marks, ...barAbove(note, paper)]), noteAtFoot(note, paper)] : [over(marks)];
  return { widthMm, heightMm, viewTurn: 0, parts: [...faces, ...parts] };
}

const noteTopMm = (note: SheetNote, paper: Size) => paper.heightMm - unprintableMm - note.heightMm;

function noteAtFoot(note: SheetNote, paper: Size): Placed {
  const xMm = (paper.widthMm - note.widthMm) / 2;
  return { ...note, xMm, yMm: noteTopMm(note, paper), turn: 0, from: digestOf(note.items) };
}

function barAbove(note: SheetNote, paper: Size): Item[] {
  return checkBar(paper.widthMm / 2, noteTopMm(note, paper) - barToNoteMm, note.bar);
}
