import { bold, point, polyline, thinSoft } from "../items.ts";
import type { Part } from "./part.ts";

interface Bed {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly yMm: number;
}

const hatchMm = 3;

/** How far the hatching reaches below the bed. */
export const bedThicknessMm = 1.6;

/** The bed: a firm line, hatched below as solid ground is. */
export const bed: Part<Bed> = {
  draw: ({ leftMm, rightMm, yMm }) => {
    const top = yMm + 0.3;
    const strokes = [];
    for (let x = leftMm + hatchMm; x <= rightMm; x += hatchMm)
      strokes.push(polyline([point(x, top), point(x - bedThicknessMm, top + bedThicknessMm)], thinSoft));
    return [...strokes, polyline([point(leftMm, yMm), point(rightMm, yMm)], bold)];
  },
  sample: { leftMm: 2, rightMm: 28, yMm: 10 },
};
