import { type Point, point, thinMm } from "../items.ts";
import type { PathItem } from "../model.ts";
import type { Part } from "./part.ts";

interface LoopJoin {
  /** Where the two loops hold each other. */
  readonly at: Point;
  readonly heightMm: number;
}

function ellipse(cx: number, cy: number, rx: number, ry: number): PathItem {
  const k = 0.5523;
  return {
    kind: "path",
    steps: [
      ["M", cx, cy - ry],
      ["C", cx + k * rx, cy - ry, cx + rx, cy - k * ry, cx + rx, cy],
      ["C", cx + rx, cy + k * ry, cx + k * rx, cy + ry, cx, cy + ry],
      ["C", cx - k * rx, cy + ry, cx - rx, cy + k * ry, cx - rx, cy],
      ["C", cx - rx, cy - k * ry, cx - k * rx, cy - ry, cx, cy - ry],
      ["Z"],
    ],
    fill: "paper",
    stroke: { ink: "ink", widthMm: thinMm },
  };
}

/** Hook length joined to the main line, loop in loop. */
export const loopJoin: Part<LoopJoin> = {
  draw: ({ at, heightMm: h }) => {
    const { xMm, yMm } = at;
    const half = 0.31 * h;
    return [ellipse(xMm, yMm - 0.19 * h, 0.2 * h, half), ellipse(xMm, yMm + 0.19 * h, 0.2 * h, half)];
  },
  sample: { at: point(15, 10), heightMm: 8 },
};
