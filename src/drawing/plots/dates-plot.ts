import { first, last, neighbours } from "../../core/lists.ts";
import { boldMm, circle, point, polyline, text, thin, thinSoft } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, Stroke } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { ticks } from "./axis.ts";
import { drawKey } from "./curve-key.ts";

/** What was measured on some days. */
interface DateSeries {
  readonly label: string;
  /** By day, the earliest first. */
  readonly points: readonly { readonly date: string; readonly value: number }[];
}

interface DatesPlot {
  /** Of what, for a message where there is no room. */
  readonly swim: string;
  readonly title: string;
  readonly series: readonly DateSeries[];
  /** How much of the unit of `value` makes one of its axis. */
  readonly unit: number;
  /** A value as it stands at the axis. */
  readonly told: (value: number) => string;
  /** Whether more is drawn lower, as depths are. */
  readonly isDown: boolean;
}

const leastPlotMm = 18;

/** Dashes of its own for each series, so that a print without colour tells them apart. */
const dashes: readonly (readonly number[] | undefined)[] = [
  undefined,
  [2.2, 1.2],
  [0.6, 0.9],
  [3, 0.9, 0.6, 0.9],
];

const strokeOf = (at: number): Stroke => {
  const dashMm = dashes[at % dashes.length];
  return { ink: "ink", widthMm: boldMm, ...(dashMm && { dashMm }) };
};

const dayOf = (date: string) => Date.parse(`${date}T00:00:00Z`) / 86_400_000;

/**
 * Values over days, each a dot, those of one series joined.
 *
 * @throws NoRoomError where the box is too small
 */
export function drawDatesPlot(plot: DatesPlot, box: Box, kit: DrawingKit, textMm: number): Drawing {
  const { figures, measure } = kit;
  const { series, told, unit, isDown, title, swim } = plot;
  const all = series.flatMap(({ points }) => points);
  const days = [...new Set(all.map(({ date }) => date))].sort();
  const most = Math.max(...all.map(({ value }) => value));
  const values = ticks(most / unit, box.heightMm / 2, 1.6 * textMm).map((one) => one * unit);
  const left = Math.max(...values.map((value) => measure(told(value), textMm, "regular"))) + 2.5;
  const right = box.widthMm - 1.5;
  const entries = series.map(({ label }, i) => ({ stroke: strokeOf(i), label }));
  const keyAt = (topMm: number) =>
    drawKey(entries, { leftMm: left, topMm, widthMm: box.widthMm - left }, textMm, kit);
  const top = textMm;
  const foot = box.heightMm - keyAt(0).heightMm - 2.2 * textMm;
  if (foot - top < leastPlotMm || right - left < leastPlotMm)
    throw new NoRoomError("a plot over days", box, { folder: "swims", id: swim });
  const [from, to] = [dayOf(first(days)), dayOf(last(days))];
  const xOf = (date: string) =>
    from === to ? (left + right) / 2 : left + 2 + ((right - left - 4) * (dayOf(date) - from)) / (to - from);
  const yOf = (value: number) =>
    isDown ? top + ((foot - top) * value) / most : foot - ((foot - top) * value) / most;
  const ends = [...new Set([first(days), last(days)])];
  return {
    ...box,
    title,
    description: describe(plot, kit),
    items: [
      polyline([point(left, top), point(left, foot), point(right, foot)], thinSoft),
      ...values.flatMap((value): Item[] => [
        polyline([point(left - 1, yOf(value)), point(left, yOf(value))], thinSoft),
        text(point(left - 1.5, yOf(value) + 0.35 * textMm), told(value), textMm, { anchor: "end" }),
      ]),
      ...days.map((date) => polyline([point(xOf(date), foot), point(xOf(date), foot - 1.5)], thinSoft)),
      ...ends.map((date, i) =>
        text(point(i === 0 ? left : right, foot + 1.3 * textMm), figures.date(date), textMm, {
          anchor: i === 0 ? "start" : "end",
        }),
      ),
      ...series.flatMap(({ points }, i) =>
        neighbours(points).map(([a, b]) =>
          polyline([point(xOf(a.date), yOf(a.value)), point(xOf(b.date), yOf(b.value))], strokeOf(i)),
        ),
      ),
      ...all.map(({ date, value }) =>
        circle(point(xOf(date), yOf(value)), 0.8, { fill: "paper", stroke: thin }),
      ),
      ...keyAt(foot + 1.8 * textMm).items,
    ],
  };
}

function describe({ series, told }: DatesPlot, { words, figures }: DrawingKit): string {
  return series
    .map(({ label, points }) => {
      const values = points.map(({ date, value }) =>
        words("drawing.dates.value", { value: told(value), date: figures.date(date) }),
      );
      return words("drawing.dates.description", { label, values: values.join("; ") });
    })
    .join(" ");
}
