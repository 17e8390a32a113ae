import { type Point, point, polyline, thin } from "../items.ts";
import { rotated } from "../transform.ts";
import type { Part } from "./part.ts";

interface StopKnot {
  readonly at: Point;
  /** How far the line's way to the rod is turned, clockwise from the left [degrees]. */
  readonly turnedDegrees: number;
}

/** Turns of the knot, along the line from its middle, and how far they reach beside it. */
const turnsMm = [-1.05, -0.35, 0.35, 1.05];
const reachMm = 1.1;

/** The stop knot of a sliding float: a barrel of turns round the line, its two ends left long, one at either end of it. */
export const stopKnot: Part<StopKnot> = {
  draw: ({ at, turnedDegrees }) => {
    const on = (x: number, y: number) => point(at.xMm + x, at.yMm + y);
    const items = [
      polyline([on(-1.05, 0), on(-1.9, 2.4)], thin),
      polyline([on(1.05, 0), on(1.9, 2.4)], thin),
      ...turnsMm.map((x) =>
        polyline([on(x - 0.15, -reachMm), on(x + 0.15, reachMm)], { ink: "ink", widthMm: 0.5 }),
      ),
    ];
    return rotated(items, turnedDegrees, at);
  },
  sample: { at: point(15, 10), turnedDegrees: 0 },
};
