import { last, neighbours } from "../../core/lists.ts";
import { type Point, partWay } from "../items.ts";

const apart = (a: Point, b: Point) => Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);

/** Length of a line through points [mm]. */
export function pathLengthMm(path: readonly Point[]): number {
  return neighbours(path).reduce((sum, [a, b]) => sum + apart(a, b), 0);
}

/** The part of a line through points between two distances from its start. */
export function cutPath(path: readonly Point[], fromMm: number, toMm: number): Point[] {
  const cut: Point[] = [pointAlong(path, fromMm)];
  let reached = 0;
  for (const [a, b] of neighbours(path)) {
    reached += apart(a, b);
    if (reached > fromMm && reached < toMm) cut.push(b);
  }
  return [...cut, pointAlong(path, toMm)];
}

/** The place a distance along a line through points; beyond its ends, the end. */
export function pointAlong(path: readonly Point[], distanceMm: number): Point {
  let left = Math.max(0, distanceMm);
  for (const [a, b] of neighbours(path)) {
    const length = apart(a, b);
    if (left <= length && length > 0) {
      return partWay(a, b, left / length);
    }
    left -= length;
  }
  return last(path);
}
