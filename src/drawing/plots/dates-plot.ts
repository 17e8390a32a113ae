import { entry, first, last, neighbours, paired } from "../../core/lists.ts";
import { boldMm, circle, type Point, point, polyline, rectangle, text, thin, thinSoft } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { placeInOrder } from "../labels/label-placement.ts";
import { type LabelText, layLabel, paintLabel } from "../labels/label-text.ts";
import type { Drawing, Item, MeasureText, Stroke } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { parts } from "../parts/parts.ts";
import { ticks } from "./axis.ts";
import { dayLabels, daysMm, paintDays } from "./day-labels.ts";
import { placesAlong, valueLabels } from "./value-labels.ts";

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
  /** What is measured, over the picture. */
  readonly head: string;
  readonly series: readonly DateSeries[];
  /** How much of the unit of `value` makes one of its axis. */
  readonly unit: number;
  /** A value as it stands at the axis. */
  readonly told: (value: number) => string;
  /** Whether more is drawn lower, as depths are. */
  readonly isDown: boolean;
}

const leastPlotMm = 18;
/** Of the picture's width for the names of its lines, at the most. */
const namesShare = 0.27;
/** From the last dot to the names, for what leads to them, and between that and a name. */
const leaderMm = 3.5;
const besideNameMm = 0.8;
/** From names to the picture's edge. */
const edgeMm = 0.8;
/** Between one name and the next. */
const betweenEms = 0.4;
const dotMm = 0.8;

/** Dashes of its own for each series, so that a print without colour tells them apart. */
const dashes: readonly (readonly number[] | undefined)[] = [
  undefined,
  [2.2, 1.2],
  [0.6, 0.9],
  [3, 0.9, 0.6, 0.9],
];

/** A dot of its own for each series, too. */
const dotsOf: readonly ((at: Point) => Item)[] = [
  (at) => circle(at, dotMm, { fill: "paper", stroke: thin }),
  (at) => circle(at, dotMm, { fill: "ink", stroke: thin }),
  ({ xMm, yMm }) =>
    rectangle(xMm - dotMm, yMm - dotMm, 2 * dotMm, 2 * dotMm, { fill: "paper", stroke: thin }),
  ({ xMm, yMm }) => rectangle(xMm - dotMm, yMm - dotMm, 2 * dotMm, 2 * dotMm, { fill: "ink", stroke: thin }),
];

const dotsOver = (series: readonly DateSeries[]) => series.map((_, i) => entry(dotsOf, i % dotsOf.length));

const strokeOf = (at: number): Stroke => {
  const dashMm = dashes[at % dashes.length];
  return { ink: "ink", widthMm: boldMm, ...(dashMm && { dashMm }) };
};

const dayOf = (date: string) => Date.parse(`${date}T00:00:00Z`) / 86_400_000;

/**
 * Values over days, each a dot, those of one series joined and named at their beginning; where not all begin on the first day, at
 * their end. Of one series each dot says its own; of several the highest and the lowest of a day do. Depths hang below the surface of the water.
 *
 * @throws NoRoomError where the box is too small
 */
export function drawDatesPlot(plot: DatesPlot, box: Box, kit: DrawingKit, textMm: number): Drawing {
  const { measure } = kit;
  const { series, told, unit, isDown, title, head, swim } = plot;
  const all = series.flatMap(({ points }) => points);
  const days = [...new Set(all.map(({ date }) => date))].sort();
  const most = Math.max(...all.map(({ value }) => value));
  const values = ticks(most / unit, box.heightMm / 2, 1.6 * textMm).map((one) => one * unit);
  const axisMm = Math.max(...values.map((value) => measure(told(value), textMm, "regular"))) + 2.5;
  // One series alone is what the picture's head says.
  const names = series.length > 1 ? series.map(({ label }) => nameOf(label, box, textMm, measure)) : [];
  const namesMm = names.length > 0 ? Math.max(...names.map(({ widthMm }) => widthMm)) + leaderMm + edgeMm : 2;
  const isNamedFirst = isNamedAtStart(series, days);
  const left = isNamedFirst ? namesMm : axisMm;
  const right = box.widthMm - (isNamedFirst ? axisMm : namesMm);
  const top = 2 * textMm;
  const [from, to] = [dayOf(first(days)), dayOf(last(days))];
  // What the first and the last day say keeps within the plot.
  const insetMm = Math.max(...all.map(({ value }) => measure(told(value), textMm, "regular"))) / 2 + 1;
  const acrossMm = right - left - 2 * insetMm;
  const xOf = (date: string) =>
    from === to ? (left + right) / 2 : left + insetMm + (acrossMm * (dayOf(date) - from)) / (to - from);
  const dated = dayLabels(days, { rightMm: box.widthMm, xOf, textMm }, kit);
  const foot = box.heightMm - daysMm(dated, textMm);
  if (foot - top < leastPlotMm || right - left < leastPlotMm)
    throw new NoRoomError("a plot over days", box, { folder: "swims", id: swim });
  // What is most leaves room for what it says.
  const span = foot - top - 1.6 * textMm;
  const yOf = (value: number) => (isDown ? top + (span * value) / most : foot - (span * value) / most);
  const lines = series.map(({ points }) => points.map(({ date, value }) => point(xOf(date), yOf(value))));
  const ends = lines.map(isNamedFirst ? first : last);
  const leaders = namesAt(names, ends, { box, isNamedFirst, top, foot, textMm }, measure);
  const dots = lines.flatMap((line, i) =>
    line.map((at, j) => ({
      at,
      said: told(entry(entry(series, i).points, j).value),
      draw: entry(dotsOver(series), i),
    })),
  );
  const room = { leftMm: left, rightMm: right, topMm: isDown ? top + 1 : 0, footMm: foot, textMm };
  const taken = placesAlong([...lines, ...leaders.lines, ...dots.map(({ at }) => acrossDot(at))]);
  const frame = { left, right, top, foot, scaleMm: isNamedFirst ? right : left };
  const scale = values.map((value) => ({ said: told(value), yMm: yOf(value) }));
  return {
    ...box,
    title,
    description: describe(plot, kit),
    items: [
      ...(isDown ? waterIn(frame) : []),
      text(point(0, 0.9 * textMm), head, textMm, { face: "bold" }),
      ...scaleOf(scale, frame, textMm),
      ...days.map((date) => polyline([point(xOf(date), foot), point(xOf(date), foot + 1)], thinSoft)),
      ...paintDays(dated, foot, textMm),
      ...lines.flatMap((line, i) => neighbours(line).map((ends) => polyline(ends, strokeOf(i)))),
      ...leaders.items,
      ...dots.map(({ at, draw }) => draw(at)),
      ...valueLabels(series.length > 1 ? outermost(dots) : dots, taken, room, measure),
    ],
  };
}

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
  /** The side that has the scale. */
  readonly scaleMm: number;
}

const waterIn = ({ left, right, top, foot }: Frame): Item[] => [
  rectangle(left, top, right - left, foot - top, { fill: "water" }),
  ...parts.waterSurface.draw({ leftMm: left, rightMm: right, yMm: top }),
];

/** The scale at its side, its figures outside, and the axis of days. */
function scaleOf(
  scale: readonly { readonly said: string; readonly yMm: number }[],
  { left, right, top, foot, scaleMm }: Frame,
  textMm: number,
): Item[] {
  const way = scaleMm === right ? 1 : -1;
  return [
    polyline([point(scaleMm, top), point(scaleMm, foot)], thinSoft),
    polyline([point(left, foot), point(right, foot)], thinSoft),
    ...scale.flatMap(({ said, yMm }) => [
      polyline([point(scaleMm, yMm), point(scaleMm + way, yMm)], thinSoft),
      text(point(scaleMm + 1.5 * way, yMm + 0.35 * textMm), said, textMm, {
        anchor: way > 0 ? "start" : "end",
      }),
    ]),
  ];
}

/** Of some dots one below the other the highest, said over it, and the lowest, said under it: between lines nobody would know whose a figure is. */
function outermost<T extends { readonly at: Point }>(dots: readonly T[]) {
  return dots.flatMap((dot) => {
    const day = dots.filter(({ at }) => at.xMm === dot.at.xMm).map(({ at }) => at.yMm);
    const isHighest = day.every((yMm) => yMm >= dot.at.yMm);
    const isLowest = day.every((yMm) => yMm <= dot.at.yMm);
    if (!isHighest && !isLowest) return [];
    return [{ ...dot, side: isHighest ? ("over" as const) : ("under" as const) }];
  });
}

/** The edge of a dot, to hold words against. */
const acrossDot = ({ xMm, yMm }: Point): Point[] =>
  [-1, 0, 1, 0, -1].map((way, i) => point(xMm + way * dotMm, yMm + (i % 2 === 0 ? 0 : (i - 2) * dotMm)));

/**
 * Whether lines are named where they begin, so that the scale stands at the right as beside cuts through a swim: unless not all
 * begin on the first day, but all are there on the last.
 */
function isNamedAtStart(series: readonly DateSeries[], days: readonly string[]): boolean {
  const isAll = (end: typeof first<DateSeries["points"][number]>, day: string) =>
    series.every(({ points }) => end(points).date === day);
  return series.length === 1 || isAll(first, first(days)) || !isAll(last, last(days));
}

const nameOf = (label: string, { widthMm }: Box, textMm: number, measure: MeasureText): LabelText =>
  layLabel([{ text: label, face: "bold" }], namesShare * widthMm, textMm, measure);

interface NamesPlace {
  readonly box: Box;
  readonly isNamedFirst: boolean;
  readonly top: number;
  readonly foot: number;
  readonly textMm: number;
}

/** Names beside the ends of their lines, what is higher above what is lower, each with what leads to it. */
function namesAt(
  names: readonly LabelText[],
  ends: readonly Point[],
  { box, isNamedFirst, top, foot, textMm }: NamesPlace,
  measure: MeasureText,
): { readonly items: readonly Item[]; readonly lines: readonly (readonly Point[])[] } {
  const inOrder = names
    .map((name, i) => ({ name, end: entry(ends, i) }))
    .sort((a, b) => a.end.yMm - b.end.yMm);
  const wanted = inOrder.map(({ name, end }) => ({ atMm: end.yMm, sizeMm: name.heightMm }));
  const places =
    placeInOrder(wanted, top - textMm, foot + textMm, betweenEms * textMm) ?? wanted.map(({ atMm }) => atMm);
  const widestMm = Math.max(0, ...names.map(({ widthMm }) => widthMm));
  const startMm = isNamedFirst ? edgeMm : box.widthMm - edgeMm - widestMm;
  const way = isNamedFirst ? -1 : 1;
  const beside = paired(inOrder, places).map(([{ name }, yMm]) =>
    point((isNamedFirst ? startMm + name.widthMm : startMm) - way * besideNameMm, yMm),
  );
  const lines = paired(inOrder, beside).map(([{ end }, { xMm, yMm }]) => [
    point(end.xMm + way * dotMm, end.yMm),
    point(xMm, yMm),
  ]);
  return {
    lines,
    items: [
      ...lines.map((line) => polyline(line, thinSoft)),
      ...paired(inOrder, beside).flatMap(([{ name }, { yMm }]) => paintLabel(name, startMm, yMm, measure)),
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
