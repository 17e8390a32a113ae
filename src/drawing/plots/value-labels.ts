import { neighbours } from "../../core/lists.ts";
import { type Point, partWay, point, text } from "../items.ts";
import type { Item, MeasureText } from "../model.ts";

/** A dot and what it says. */
interface ValueDot {
  readonly at: Point;
  readonly said: string;
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
 *
 * @param taken places that words must not cover, such as those of the lines
 */
export function valueLabels(
  dots: readonly ValueDot[],
  taken: readonly Point[],
  { leftMm, rightMm, topMm, footMm, textMm }: LabelRoom,
  measure: MeasureText,
): Item[] {
  const marks = [...taken];
  return dots.flatMap(({ at, said }) => {
    const widthMm = measure(said, textMm, "regular");
    const starts = [0, 0.9, 1.8, 2.7].flatMap((moreMm) => {
      const over = at.yMm - offMm - moreMm - 0.22 * textMm;
      const under = at.yMm + offMm + moreMm + 0.75 * textMm;
      return [-0.5, -0.8, -0.2].flatMap((share) =>
        [over, under].map((y) => point(at.xMm + share * widthMm, y)),
      );
    });
    const isFree = ({ xMm, yMm }: Point) =>
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
    const start = starts.find(isFree);
    if (!start) return [];
    const { xMm, yMm } = start;
    const rows = [0.2, -0.25, -0.7].map((ems) => yMm + ems * textMm);
    marks.push(...placesAlong(rows.map((y) => [point(xMm, y), point(xMm + widthMm, y)])));
    return [text(start, said, textMm)];
  });
}
