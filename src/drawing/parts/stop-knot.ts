import { type Point, point, polyline, thin } from "../items.ts";
import type { Part } from "./part.ts";

interface StopKnot {
  readonly at: Point;
}

/** The stop knot of a sliding float: a short barrel of turns with its two ends left long. */
export const stopKnot: Part<StopKnot> = {
  draw: ({ at: { xMm, yMm } }) => [
    polyline([point(xMm - 2, yMm - 1.2), point(xMm, yMm), point(xMm - 2, yMm + 1.2)], thin),
    polyline([point(xMm, yMm - 1), point(xMm, yMm + 1)], { ink: "ink", widthMm: 1.4 }),
  ],
  sample: { at: point(15, 10) },
};
