import type { MeasureText, TextItem } from "../drawing/model.ts";
import type { TextPiece } from "./measure-boxes.ts";
import type { TextRun } from "./nodes.ts";

/**
 * How far a word may move when its line is set as one piece [mm]. satori kerns within its pieces only, and makes
 * punctuation a piece of its own; a whole line is kerned through, which draws its words a little together.
 */
const shiftMaxMm = 0.5;

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
      let rest = run.text;
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
        const joined = item && this.join(item, spaceBefore, piece);
        if (joined) {
          items[items.length - 1] = joined;
          item = joined;
        } else {
          if (spaceBefore) endWithSpace(items);
          item = { kind: "text", ...run, xMm: piece.xMm, yMm: piece.yMm, text: piece.text, anchor: "start" };
          items.push(item);
        }
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
    while (this.pieces[this.at]?.text.trim() === "") this.at += 1;
    const piece = this.pieces[this.at];
    if (piece === undefined) throw new Error("satori left words out");
    this.at += 1;
    return { ...piece, text: piece.text.trim() };
  }

  private join(item: TextItem, space: boolean, piece: TextPiece): TextItem | undefined {
    if (piece.yMm !== item.yMm) return undefined;
    const text = item.text + (space ? " " : "") + piece.text;
    const x =
      item.xMm +
      this.measure(text, item.sizeMm, item.face) -
      this.measure(piece.text, item.sizeMm, item.face);
    return Math.abs(x - piece.xMm) <= shiftMaxMm ? { ...item, text } : undefined;
  }
}

function endWithSpace(items: TextItem[]): void {
  const last = items[items.length - 1];
  if (last) items[items.length - 1] = { ...last, text: `${last.text} ` };
}
