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

/** Breaks runs of text into lines no wider than the room; a word wider than the room has a line of its own. */
export function layLabel(
  runs: readonly Run[],
  roomMm: number,
  sizeMm: number,
  measure: MeasureText,
): LabelText {
  const width = (run: Run) => measure(run.text.replaceAll(glue, " "), sizeMm, run.face ?? "regular");
  const space = measure(" ", sizeMm, "regular");
  const lines: Run[][] = [];
  let used = 0;
  let widest = 0;
  for (const run of runs) {
    for (const word of run.text.split(" ").filter(Boolean)) {
      const piece = { ...run, text: word };
      const needed = width(piece);
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
