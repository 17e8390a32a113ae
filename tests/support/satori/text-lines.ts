import type { MeasureText, TextItem } from "../../../src/drawing/model.ts";
import type { TextRun } from "../../../src/layout/nodes.ts";
import type { TextPiece } from "./measure-boxes.ts";

/**
 * How far a word may be from where its line, set as one piece, would have it [mm]. satori kerns within its pieces
 * only, and makes punctuation a piece of its own; a whole line is kerned through, which draws its words a little
 * together.
 */
const shiftMaxMm = 0.5;

/** The text without what only keeps it on one line. */
const seen = (text: string) => text.replaceAll("\uFEFF", "");

/** Takes the pieces of a page in turn, and puts the spaces back that line breaking left out. */
export class PieceReader {
  private at = 0;

  constructor(
    private readonly pieces: readonly TextPiece[],
    private readonly measure: MeasureText,
  ) {}

  /**
   * The runs of one box as lines of text. A space between two items, a line's end included, stands at the end of the
   * first, so that the words stay apart when the text is copied or read aloud.
   *
   * @throws Error where the pieces are not the runs' own words: a change in satori.
   */
  lines(runs: readonly TextRun[]): TextItem[] {
    const items: TextItem[] = [];
    let spaceBefore = false;
    for (const run of runs) {
      let item: TextItem | undefined;
      let last: TextPiece | undefined;
      let rest = seen(run.text);
      for (;;) {
        const trimmed = rest.trimStart();
        if (trimmed !== rest) spaceBefore = true;
        rest = trimmed;
        if (rest === "") break;
        const piece = this.next();
        if (!rest.startsWith(piece.text)) {
          throw new Error(`satori set "${piece.text}" where "${rest.slice(0, 40)}" should be`);
        }
        rest = rest.slice(piece.text.length);
        const joined = item && last && this.join(item, last, spaceBefore, piece);
        if (joined) {
          items[items.length - 1] = joined;
          item = joined;
        } else {
          if (spaceBefore) endWithSpace(items);
          item = { kind: "text", ...run, xMm: piece.xMm, yMm: piece.yMm, text: piece.text, anchor: "start" };
          items.push(item);
        }
        last = piece;
        spaceBefore = false;
      }
    }
    return items;
  }

  /** @throws Error where pieces are left over. */
  finish(): void {
    const left = this.pieces.slice(this.at).find((piece) => piece.text.trim() !== "");
    if (left) throw new Error(`satori set "${left.text}" twice`);
  }

  private next(): TextPiece {
    const words = (piece: TextPiece) => seen(piece.text).trim();
    while (this.pieces[this.at] && words(this.pieces[this.at]!) === "") this.at += 1;
    const piece = this.pieces[this.at];
    if (piece === undefined) throw new Error("satori left words out");
    this.at += 1;
    return { ...piece, text: words(piece) };
  }

  /** The piece set on to its line, if it stands where the line goes on. */
  private join(item: TextItem, last: TextPiece, space: boolean, piece: TextPiece): TextItem | undefined {
    if (piece.yMm !== item.yMm) return undefined;
    const gap = space ? " " : "";
    const expectedMm = last.xMm + this.measure(last.text + gap, item.sizeMm, item.face);
    if (Math.abs(piece.xMm - expectedMm) > shiftMaxMm) return undefined;
    return { ...item, text: item.text + gap + piece.text };
  }
}

function endWithSpace(items: TextItem[]): void {
  const last = items[items.length - 1];
  if (last) items[items.length - 1] = { ...last, text: `${last.text} ` };
}
