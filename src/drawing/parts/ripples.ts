import { type Point, point, thinMm } from "../items.ts";
import type { Item } from "../model.ts";
import type { Part } from "./part.ts";

interface Ripples {
  /** Where the float went under. */
  readonly at: Point;
}

/** Rings on the surface where a float has gone under. */
export const ripples: Part<Ripples> = {
  draw: ({ at: { xMm, yMm } }) =>
    [2.2, 4.2].map((half): Item => {
      const lift = 0.32 * half;
      return {
        kind: "path",
        steps: [
          ["M", xMm - half, yMm],
          ["C", xMm - half, yMm - lift, xMm + half, yMm - lift, xMm + half, yMm],
          ["C", xMm + half, yMm + lift, xMm - half, yMm + lift, xMm - half, yMm],
          ["Z"],
        ],
        stroke: { ink: "ink", widthMm: thinMm },
      };
    }),
  sample: { at: point(15, 10) },
};
