import { type Point, point } from "../items.ts";

const apart = (a: Point, b: Point) => Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);

/** Length of a line through points [mm]. */
export function pathLengthMm(path: readonly Point[]): number {
  return path.slice(1).reduce((sum, p, i) => sum + apart(path[i]!, p), 0);
}

/** The part of a line through points between two distances from its start. */
export function cutPath(path: readonly Point[], fromMm: number, toMm: number): Point[] {
  const cut: Point[] = [pointAlong(path, fromMm)];
  let reached = 0;
  for (let i = 1; i < path.length; i++) {
    reached += apart(path[i - 1]!, path[i]!);
    if (reached > fromMm && reached < toMm) cut.push(path[i]!);
  }
  return [...cut, pointAlong(path, toMm)];
}

/** The place a distance along a line through points; beyond its ends, the end. */
export function pointAlong(path: readonly Point[], distanceMm: number): Point {
  let left = Math.max(0, distanceMm);
  for (let i = 1; i < path.length; i++) {
    const [a, b] = [path[i - 1]!, path[i]!];
    const length = apart(a, b);
    if (left <= length && length > 0) {
      const share = left / length;
      return point(a.xMm + (b.xMm - a.xMm) * share, a.yMm + (b.yMm - a.yMm) * share);
    }
    left -= length;
  }
  return path[path.length - 1]!;
}
