import { type Point, point, polygon, thinSoft } from "../items.ts";
import type { Part } from "./part.ts";

interface Plummet {
  /** Middle of its foot. */
  readonly at: Point;
  readonly heightMm: number;
}

/** A plummet for finding the depth: a bell with the hook in its cork foot. */
export const plummet: Part<Plummet> = {
  draw: ({ at: { xMm, yMm }, heightMm: h }) => {
    const half = 0.42 * h;
    const cork = 0.22 * h;
    const bell = [
      point(xMm - 0.3 * half, yMm - h),
      point(xMm + 0.3 * half, yMm - h),
      point(xMm + half, yMm - cork),
      point(xMm - half, yMm - cork),
    ];
    const foot = [
      point(xMm - half, yMm - cork),
      point(xMm + half, yMm - cork),
      point(xMm + half, yMm),
      point(xMm - half, yMm),
    ];
    return [polygon(bell, "ink"), polygon(foot, "paper", thinSoft)];
  },
  sample: { at: point(15, 16), heightMm: 10 },
};
