import { last } from "../../core/lists.ts";
import { point, text } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item } from "../model.ts";

/** From one row of a day to the next. */
const dayRowEms = 1.15;

interface DayAxis {
  readonly rightMm: number;
  readonly xOf: (date: string) => number;
  readonly textMm: number;
}

interface DayLabel {
  readonly lines: readonly string[];
  readonly half: number;
  readonly xMm: number;
}

/**
 * Days below their axis, the last of a year with it below: in a row each where all find room so, else word below word, and
 * where that is not enough, first and last, and of those between what finds room.
 */
export function dayLabels(
  days: readonly string[],
  axis: DayAxis,
  { figures, measure }: DrawingKit,
): readonly DayLabel[] {
  const { rightMm, xOf, textMm } = axis;
  const yearOf = (date: string) => date.slice(0, 4);
  const laid = (isSplit: boolean) =>
    days.map((date, i): DayLabel => {
      const said = figures.day(date);
      const year = yearOf(date) === yearOf(days[i + 1] ?? "") ? [] : [yearOf(date)];
      const lines = [...(isSplit ? said.split(" ") : [said]), ...year];
      const half = Math.max(...lines.map((line) => measure(line, textMm, "regular"))) / 2;
      return { lines, half, xMm: Math.min(rightMm - half, Math.max(half, xOf(date))) };
    });
  const whole = shownOf(laid(false), textMm);
  return whole.length === days.length ? whole : shownOf(laid(true), textMm);
}

/** Those that are clear of each other, the first and the last among them. */
function shownOf(labels: readonly DayLabel[], textMm: number): readonly DayLabel[] {
  const end = last(labels);
  const isClear = (a: DayLabel, b: DayLabel) => b.xMm - b.half - a.xMm - a.half > 0.6 * textMm;
  const shown: DayLabel[] = [];
  for (const one of labels) {
    const before = shown.at(-1);
    if ((!before || isClear(before, one)) && (one === end || isClear(one, end))) shown.push(one);
  }
  return shown;
}

/** Days below their axis. */
export const paintDays = (dated: readonly DayLabel[], foot: number, textMm: number): Item[] =>
  dated.flatMap(({ lines, xMm }) =>
    lines.map((said, row) =>
      text(point(xMm, foot + (1.2 + dayRowEms * row) * textMm), said, textMm, { anchor: "middle" }),
    ),
  );

/** Room that they take below it. */
export const daysMm = (dated: readonly DayLabel[], textMm: number): number =>
  (0.3 + dayRowEms * Math.max(...dated.map(({ lines }) => lines.length))) * textMm;
