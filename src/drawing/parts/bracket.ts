import { point, polyline, thinSoft } from "../items.ts";
import type { Part } from "./part.ts";

interface Bracket {
  readonly xMm: number;
  readonly fromMm: number;
  readonly toMm: number;
}

/** How far it stands out. */
export const bracketDepthMm = 1;

/** Takes in a stretch of line: open to the left, its label to the right. */
export const bracket: Part<Bracket> = {
  draw: ({ xMm, fromMm, toMm }) => {
    const right = xMm + bracketDepthMm;
    return [
      polyline([point(xMm, fromMm), point(right, fromMm), point(right, toMm), point(xMm, toMm)], thinSoft),
    ];
  },
  sample: { xMm: 14, fromMm: 4, toMm: 16 },
};
