import { type Point, point } from "../items.ts";
import type { Item, PathStep } from "../model.ts";
import { fish } from "../scenes/fish.ts";
import { rotated } from "../transform.ts";
import { movable } from "./moving.ts";

/** How far a slack line bows aside [mm of the picture]; 0 where it is tight. */
export type Bow = number;

/** A line from one place to another that is slack by as much as it bows aside. */
export function bowed(from: Point, to: Point, asideMm: Bow): readonly PathStep[] {
  const along = (share: number) =>
    point(
      from.xMm + (to.xMm - from.xMm) * share - asideMm * 1.33,
      from.yMm + (to.yMm - from.yMm) * share + Math.abs(asideMm) * 0.4,
    );
  const [a, b] = [along(1 / 3), along(2 / 3)];
  return [
    ["M", from.xMm, from.yMm],
    ["C", a.xMm, a.yMm, b.xMm, b.yMm, to.xMm, to.yMm],
  ];
}

/** A fish that looks to the left, its nose at a place, turned about it clockwise; films can move and turn it. */
export function movingFish(nose: Point, lengthMm: number, degrees: number): Item[] {
  return movable(rotated(fish(nose, lengthMm), degrees, nose));
}
