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
/** From the dot of what is most to the axis of days. */
const offAxisMm = 2;

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
  const { measure } = kit;
  const { series, told, unit, isDown, title, swim } = plot;
  const all = series.flatMap(({ points }) => points);
  const days = [...new Set(all.map(({ date }) => date))].sort();
  const most = Math.max(...all.map(({ value }) => value));
  const values = ticks(most / unit, box.heightMm / 2, 1.6 * textMm).map((one) => one * unit);
  const left = Math.max(...values.map((value) => measure(told(value), textMm, "regular"))) + 2.5;
  const right = box.widthMm - 1.5;
  const entries = series.map(({ label }, i) => ({ stroke: strokeOf(i), label }));
  // One series alone is what the picture's title says.
  const keyAt = (topMm: number) =>
    drawKey(
      entries.length > 1 ? entries : [],
      { leftMm: left, topMm, widthMm: box.widthMm - left },
      textMm,
      kit,
    );
  const top = textMm;
  const foot = box.heightMm - keyAt(0).heightMm - 2.2 * textMm;
  if (foot - top < leastPlotMm || right - left < leastPlotMm)
    throw new NoRoomError("a plot over days", box, { folder: "swims", id: swim });
  const [from, to] = [dayOf(first(days)), dayOf(last(days))];
  const xOf = (date: string) =>
    from === to ? (left + right) / 2 : left + 2 + ((right - left - 4) * (dayOf(date) - from)) / (to - from);
  // Dots of what is most keep off the axis of days, or within the picture.
  const span = foot - top - offAxisMm;
  const yOf = (value: number) => (isDown ? top + (span * value) / most : foot - (span * value) / most);
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
      ...dayLabels(days, { leftMm: left, rightMm: right, xOf, textMm }, kit).map(({ said, xMm }) =>
        text(point(xMm, foot + 1.3 * textMm), said, textMm, { anchor: "middle" }),
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

interface DayAxis {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly xOf: (date: string) => number;
  readonly textMm: number;
}

/** Days below their axis, the last of a year with it: first and last, and of those between what finds room. */
function dayLabels(
  days: readonly string[],
  { leftMm, rightMm, xOf, textMm }: DayAxis,
  { figures, measure }: DrawingKit,
): readonly { readonly said: string; readonly xMm: number }[] {
  const yearOf = (date: string) => date.slice(0, 4);
  const laid = days.map((date, i) => {
    const said = yearOf(date) === yearOf(days[i + 1] ?? "") ? figures.day(date) : figures.date(date);
    const half = measure(said, textMm, "regular") / 2;
    return { said, half, xMm: Math.min(rightMm - half, Math.max(leftMm + half, xOf(date))) };
  });
  const end = last(laid);
  const isClear = (a: typeof end, b: typeof end) => b.xMm - b.half - a.xMm - a.half > 0.6 * textMm;
  const shown: (typeof end)[] = [];
  for (const one of laid) {
    const before = shown.at(-1);
    if ((!before || isClear(before, one)) && (one === end || isClear(one, end))) shown.push(one);
  }
  return shown;
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
