import { point, text } from "../items.ts";
import type { Face, Ink, Item, MeasureText } from "../model.ts";

/** A stretch of label text in one face. */
export interface Run {
  readonly text: string;
  readonly face?: Face;
  readonly ink?: Ink;
}

/** A label broken into lines, with the room it takes. */
export interface LabelText {
  readonly lines: readonly (readonly Run[])[];
  readonly widthMm: number;
  readonly heightMm: number;
  readonly sizeMm: number;
}

/** Baseline to baseline, in ems. */
export const leading = 1.2;
/** Middle of the line above its baseline, in ems: half the height of a capital. */
const middleRise = 0.35;

const glue = "\u00a0";

/** Keeps words together when a label is broken into lines: a figure with its unit, a shot with its size. */
export function together(words: string): string {
  return words.replaceAll(" ", glue);
}

/** What becomes of a word wider than the room: it is broken by a hyphen, or has a line of its own, too wide. */
type WideWord = "broken" | "whole";

/** Breaks runs of text into lines no wider than the room. */
export function layLabel(
  runs: readonly Run[],
  roomMm: number,
  sizeMm: number,
  measure: MeasureText,
  wideWord: WideWord = "broken",
): LabelText {
  const space = measure(" ", sizeMm, "regular");
  const lines: Run[][] = [];
  let used = 0;
  let widest = 0;
  for (const run of runs) {
    const width = (text: string) => measure(text.replaceAll(glue, " "), sizeMm, run.face ?? "regular");
    const words = run.text.split(" ").filter(Boolean);
    for (const word of wideWord === "whole" ? words : words.flatMap((one) => piecesOf(one, roomMm, width))) {
      const piece = { ...run, text: word };
      const needed = width(word);
      if (lines.length === 0 || used + space + needed > roomMm) {
        lines.push([piece]);
        used = needed;
      } else {
        lines.at(-1)!.push(piece);
        used += space + needed;
      }
      widest = Math.max(widest, used);
    }
  }
  const joined = lines.map((line) => joinLikeRuns(line));
  return { lines: joined, widthMm: widest, heightMm: lines.length * sizeMm * leading, sizeMm };
}

/** A word in pieces that each fit the room with their hyphen; a sign alone is never broken. */
function piecesOf(word: string, roomMm: number, width: (text: string) => number): string[] {
  if (width(word) <= roomMm) return [word];
  if (word.includes(glue)) return word.split(glue).flatMap((part) => piecesOf(part, roomMm, width));
  const pieces: string[] = [];
  let piece = "";
  for (const [sign] of word.matchAll(/\P{M}\p{M}*/gu)) {
    if (piece !== "" && width(`${piece}${sign}-`) > roomMm) {
      pieces.push(`${piece}-`);
      piece = "";
    }
    piece += sign;
  }
  return [...pieces, piece];
}

/** Words of one look, side by side, become one run again. */
function joinLikeRuns(line: readonly Run[]): Run[] {
  const joined: Run[] = [];
  for (const run of line) {
    const plain = { ...run, text: run.text.replaceAll(glue, " ") };
    const last = joined.at(-1);
    if (last && last.face === run.face && last.ink === run.ink)
      joined[joined.length - 1] = { ...last, text: `${last.text} ${plain.text}` };
    else joined.push(plain);
  }
  return joined;
}

/** Paints a label with its left edge, or the middle of each line, and its vertical middle at a point. */
export function paintLabel(
  label: LabelText,
  xMm: number,
  middleMm: number,
  measure: MeasureText,
  align: "start" | "middle" = "start",
): Item[] {
  const { sizeMm, lines } = label;
  const space = measure(" ", sizeMm, "regular");
  const widthOf = (run: Run) => measure(run.text, sizeMm, run.face ?? "regular");
  const top = middleMm - label.heightMm / 2;
  return lines.flatMap((line, i) => {
    const baseline = top + sizeMm * (leading * (i + 0.5) + middleRise);
    const lineMm = line.reduce((sum, run) => sum + widthOf(run) + space, -space);
    let x = align === "start" ? xMm : xMm - lineMm / 2;
    return line.map((run) => {
      const item = text(point(x, baseline), run.text, sizeMm, run);
      x += widthOf(run) + space;
      return item;
    });
  });
}
