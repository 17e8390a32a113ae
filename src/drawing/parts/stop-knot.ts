import { type Point, point, polyline, thin } from "../items.ts";
import { rotated } from "../transform.ts";
import type { Part } from "./part.ts";

interface StopKnot {
  readonly at: Point;
  /** How far the line's way to the rod is turned, clockwise from the left [degrees]. */
  readonly turnedDegrees: number;
}

/** The stop knot of a sliding float: a short barrel of turns across the line, its two ends left long. */
export const stopKnot: Part<StopKnot> = {
  draw: ({ at, turnedDegrees }) => {
    const { xMm, yMm } = at;
    const items = [
      polyline([point(xMm - 2, yMm - 1.2), point(xMm, yMm), point(xMm - 2, yMm + 1.2)], thin),
      polyline([point(xMm, yMm - 1), point(xMm, yMm + 1)], { ink: "ink", widthMm: 1.4 }),
    ];
    return rotated(items, turnedDegrees, at);
  },
  sample: { at: point(15, 10), turnedDegrees: 0 },
};
