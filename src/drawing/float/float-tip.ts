import { type Float, lengthMm } from "../../core/float/float.ts";
import { diameterAtMm } from "../../core/float/profile.ts";
import type { Mm } from "../../core/units.ts";
import { type Point, point, thin } from "../items.ts";
import type { Stroke } from "../model.ts";

/** Places down each side of the tip. */
const places = 20;
/** The thinnest half of a tip that is still seen [mm of paper]. */
const leastHalfMm = 0.55;
/** A thin tip would be lost in a dark edge. */
export const markedEdge: Stroke = { ...thin, ink: "accent" };

/** Round a float's uppermost part, down its left side and up its right. */
export function tipSides(float: Float, partMm: Mm, scale: number, top: Point): Point[] {
  const lengthwise = lengthMm(float);
  const side = (sign: 1 | -1) =>
    Array.from({ length: places + 1 }, (_, i) => {
      const downMm = (partMm * i) / places;
      const half = Math.max(leastHalfMm, (diameterAtMm(float.profile, lengthwise - downMm) * scale) / 2);
      return point(top.xMm + sign * half, top.yMm + downMm * scale);
    });
  return [...side(-1), ...side(1).reverse()];
}
