import { curveTo, type Point, partWay, pathFrom, point } from "../items.ts";
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

/** From shank to point: where the bend begins, the two places it is drawn towards, and where it ends. */
function bendOf(mark: HookMark): readonly [Point, Point, Point, Point] {
  const { bend, heightMm: h } = mark;
  const [from] = pointEnds(mark);
  const y = bend.yMm - 0.2;
  return [point(bend.xMm, y - 0.3 * h), point(bend.xMm, y + 0.1 * h), point(from.xMm, y + 0.1 * h), from];
}

/** Places along a hook from its eye to its tip, close to each other. */
export function hookWay(mark: HookMark): Point[] {
  const [shank, a, b, from] = bendOf(mark);
  const [, tip] = pointEnds(mark);
  const along = (start: Point, end: Point) => shares.map((share) => partWay(start, end, share));
  const round = shares.map((share) =>
    partWay(
      partWay(partWay(shank, a, share), partWay(a, b, share), share),
      partWay(partWay(a, b, share), partWay(b, from, share), share),
      share,
    ),
  );
  return [...along(hookEye(mark), shank), ...round.slice(1), ...along(from, tip).slice(1)];
}

const shares = Array.from({ length: 33 }, (_, i) => i / 32);

/** A barbless hook with its shank up the line and its point to the right. */
export const hook: Part<HookMark> = {
  draw: (mark) => {
    const [shank, a, b, from] = bendOf(mark);
    const [, tip] = pointEnds(mark);
    const steps: PathStep[] = [["L", shank.xMm, shank.yMm], curveTo(a, b, from), ["L", tip.xMm, tip.yMm]];
    return [pathFrom(hookEye(mark), steps, wire)];
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
