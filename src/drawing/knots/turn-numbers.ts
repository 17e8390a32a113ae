import type { Place } from "../curve.ts";
import { point, text } from "../items.ts";
import type { Item } from "../model.ts";
import type { Fit } from "./objects.ts";
import type { Strand } from "./strand-paint.ts";
import type { Round } from "./strand-path.ts";

/** Labels grow with the picture; the smallest are the 8 pt that is read in a hand-out (common practice, no source). */
const labelMm = { least: 2.83, units: 6.1, most: 3.6 };
/** A figure as wide and as high as it is set, in type sizes. */
const figure = { width: 0.6, height: 0.7 };
/** White between two numbers, and between a number and its strand, in type sizes. */
const white = { between: 0.2, below: 0.4 };
/** How far apart turns lie that are still to be pulled tight, at least, in strands. */
const openStrands = 2.5;

export function labelSizeMm({ scale }: Fit): number {
  return Math.min(labelMm.most, Math.max(labelMm.least, labelMm.units * scale));
}

/** Tells open turns that have room for a number each; those of a tight knot are not counted any more. */
export const isCounted =
  (fit: Fit, widthMm: number) =>
  ({ pitch }: Round): boolean =>
    pitch * fit.scale >= Math.max(openStrands * widthMm, (figure.width + white.between) * labelSizeMm(fit));

/** The number of a turn, outside its coil where the turn is made whole. */
export function turnNumber({ count, out }: Round, at: Place, widthMm: number, fit: Fit): Item {
  const sizeMm = labelSizeMm(fit);
  const awayMm = widthMm / 2 + (white.below + figure.height / 2) * sizeMm;
  const middle = point(at.x + out.x * awayMm, at.y + out.y * awayMm + (figure.height / 2) * sizeMm);
  return text(middle, String(count), sizeMm, { face: "bold", ink: "soft", anchor: "middle" });
}

/** The numbers of those turns of a strand that are made by now. */
export function numbersOf({ curve, turns = [] }: Strand): readonly Item[] {
  return turns.filter(({ atMm }) => atMm <= curve.length).map(({ number }) => number);
}
