import { type Point, point, polyline } from "../items.ts";
import type { Item, PathStep, Stroke } from "../model.ts";
import { rotated, rotatedPoint, turnFromUpright } from "../transform.ts";
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

const wire: Stroke = { ink: "accent", widthMm: 0.5, cap: "round" };

/** From the end of the bend to the tip. */
function pointEnds({ bend, heightMm: h }: HookMark): readonly [Point, Point] {
  const width = 0.55 * h;
  const y = bend.yMm - 0.2;
  return [point(bend.xMm + width, y - 0.3 * h), point(bend.xMm + 0.92 * width, y - 0.6 * h)];
}

/** The hook's point alone, to be drawn over a bait that hides the rest. */
export function hookPoint(mark: HookMark): Item {
  return polyline(pointEnds(mark), wire);
}

/** A barbless hook with its shank up the line and its point to the right. */
export const hook: Part<HookMark> = {
  draw: (mark) => {
    const { bend, heightMm: h } = mark;
    const [from, tip] = pointEnds(mark);
    const y = bend.yMm - 0.2;
    const steps: PathStep[] = [
      ["M", bend.xMm, bend.yMm - h],
      ["L", bend.xMm, y - 0.3 * h],
      ["C", bend.xMm, y + 0.1 * h, from.xMm, y + 0.1 * h, from.xMm, from.yMm],
      ["L", tip.xMm, tip.yMm],
    ];
    return [{ kind: "path", steps, stroke: wire }];
  },
  sample: { bend: point(14, 15), heightMm: 10 },
};

/** A hook whose shank lies along its line, which leads on to the next place up. */
export function hookAlong(mark: HookMark, next: Point): Item[] {
  return rotated(hook.draw(mark), turnFromUpright(mark.bend, next), mark.bend);
}

/** Where the line meets a hook that lies along it. */
export function eyeAlong(mark: HookMark, next: Point): Point {
  return rotatedPoint(hookEye(mark), turnFromUpright(mark.bend, next), mark.bend);
}
