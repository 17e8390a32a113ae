import { neighbours } from "../../core/lists.ts";
import { type Point, partWay, point, text } from "../items.ts";
import type { Item, MeasureText } from "../model.ts";

/** A dot and what it says. */
interface ValueDot {
  readonly at: Point;
  readonly said: string;
  /** Where alone it may be said; anywhere without. */
  readonly side?: "over" | "under";
}

interface LabelRoom {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly topMm: number;
  readonly footMm: number;
  readonly textMm: number;
}

/** Kept free round words, and how far apart the places of a line are that are looked at. */
const freeMm = 0.4;
const stepMm = 0.4;
/** From a dot's middle to the words over or under it, at the least. */
const offMm = 1.3;

/** Places along lines, to hold words against. */
export function placesAlong(lines: readonly (readonly Point[])[]): Point[] {
  return lines.flatMap((line) =>
    neighbours(line).flatMap(([a, b]) => {
      const steps = Math.ceil(Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm) / stepMm) || 1;
      return Array.from({ length: steps + 1 }, (_, i) => partWay(a, b, i / steps));
    }),
  );
}

/**
 * What each dot says, over or under it, clear of lines, dots and each other; a dot that leaves no room has the axis alone.
 * Dots have their choice in an order that leaves room for the most of them.
 *
 * @param taken places that words must not cover, such as those of the lines
 */
export function valueLabels(
  dots: readonly ValueDot[],
  taken: readonly Point[],
  room: LabelRoom,
  measure: MeasureText,
): Item[] {
  const orders = dots.map((_, i) => [...dots.slice(i), ...dots.slice(0, i)]);
  const placed = orders.map((order) => labelsOf(order, taken, room, measure));
  const most = Math.max(0, ...placed.map(({ length }) => length));
  return placed.find(({ length }) => length === most) ?? [];
}

function labelsOf(
  dots: readonly ValueDot[],
  taken: readonly Point[],
  room: LabelRoom,
  measure: MeasureText,
): Item[] {
  const { textMm } = room;
  const marks = [...taken];
  return dots.flatMap(({ at, said, side }) => {
    const widthMm = measure(said, textMm, "regular");
    const start = startsAt(at, widthMm, textMm, side).find((one) => isFree(one, widthMm, marks, room));
    if (!start) return [];
    const { xMm, yMm } = start;
    const rows = [0.2, -0.25, -0.7].map((ems) => yMm + ems * textMm);
    marks.push(...placesAlong(rows.map((y) => [point(xMm, y), point(xMm + widthMm, y)])));
    return [text(start, said, textMm)];
  });
}

/** Where words of a dot may begin, the best place first: close to it, and with their middle over or under it. */
const startsAt = ({ xMm, yMm }: Point, widthMm: number, textMm: number, side: ValueDot["side"]): Point[] =>
  [0, 0.9, 1.8, 2.7].flatMap((moreMm) => {
    const over = yMm - offMm - moreMm - 0.22 * textMm;
    const under = yMm + offMm + moreMm + 0.75 * textMm;
    return [-0.5, -0.65, -0.35, -0.8, -0.2, -0.95, -0.05].flatMap((share) =>
      [...(side === "under" ? [] : [over]), ...(side === "over" ? [] : [under])].map((y) =>
        point(xMm + share * widthMm, y),
      ),
    );
  });

/** Whether words that begin there are in their room and clear of marks. */
const isFree = (
  { xMm, yMm }: Point,
  widthMm: number,
  marks: readonly Point[],
  { leftMm, rightMm, topMm, footMm, textMm }: LabelRoom,
): boolean =>
  xMm >= leftMm &&
  xMm + widthMm <= rightMm &&
  yMm - 0.75 * textMm >= topMm &&
  yMm + 0.22 * textMm <= footMm &&
  marks.every(
    (mark) =>
      mark.xMm < xMm - freeMm ||
      mark.xMm > xMm + widthMm + freeMm ||
      mark.yMm < yMm - 0.75 * textMm - freeMm ||
      mark.yMm > yMm + 0.22 * textMm + freeMm,
  );
