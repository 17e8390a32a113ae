import { type Point, point } from "../items.ts";
import type { PathStep } from "../model.ts";
import type { Part } from "./part.ts";

interface HookMark {
  /** Lowest point of the bend. */
  readonly bend: Point;
  readonly heightMm: number;
}

/** Where the line meets the hook, above the bend. */
export function hookEye({ bend, heightMm }: HookMark): Point {
  return point(bend.xMm, bend.yMm - heightMm);
}

/** A barbless hook with its shank up the line and its point to the right. */
export const hook: Part<HookMark> = {
  draw: ({ bend, heightMm: h }) => {
    const { xMm: x, yMm } = bend;
    const width = 0.55 * h;
    const y = yMm - 0.2;
    const steps: PathStep[] = [
      ["M", x, yMm - h],
      ["L", x, y - 0.3 * h],
      ["C", x, y + 0.1 * h, x + width, y + 0.1 * h, x + width, y - 0.3 * h],
      ["L", x + 0.92 * width, y - 0.6 * h],
    ];
    return [{ kind: "path", steps, stroke: { ink: "accent", widthMm: 0.5, cap: "round" } }];
  },
  sample: { bend: point(14, 15), heightMm: 10 },
};
