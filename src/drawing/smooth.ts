import { entry, first, last } from "../core/lists.ts";
import { type Point, point } from "./items.ts";

const stepsPerPiece = 5;

/** A closed smooth curve through points. */
export function smoothRing(points: readonly Point[]): Point[] {
  return through([last(points), ...points, ...points.slice(0, 2)]);
}

/** A smooth curve through points: centripetal Catmull-Rom, which has no loops (Yuksel, Schaefer and Keyser 2011). */
export function smooth(points: readonly Point[]): Point[] {
  const mirroredEnd = (end: Point, next: Point) => point(2 * end.xMm - next.xMm, 2 * end.yMm - next.yMm);
  return through([
    mirroredEnd(first(points), points[1] ?? first(points)),
    ...points,
    mirroredEnd(last(points), points.at(-2) ?? last(points)),
  ]);
}

/** The curve from the second point to the last but one. */
function through(padded: readonly Point[]): Point[] {
  const curve: Point[] = [entry(padded, 1)];
  for (let i = 1; i + 2 < padded.length; i += 1) {
    const [a, b, c, d] = padded.slice(i - 1, i + 3) as [Point, Point, Point, Point];
    for (let step = 1; step <= stepsPerPiece; step += 1)
      curve.push(between(a, b, c, d, step / stepsPerPiece));
  }
  return curve;
}

/** The place between b and c by the pyramid of Barry and Goldman (1988), with knots by the root of the distance. */
function between(a: Point, b: Point, c: Point, d: Point, share: number): Point {
  const knot = (from: number, p: Point, q: Point) =>
    from + Math.max(1e-9, Math.hypot(q.xMm - p.xMm, q.yMm - p.yMm) ** 0.5);
  const t0 = 0;
  const t1 = knot(t0, a, b);
  const t2 = knot(t1, b, c);
  const t3 = knot(t2, c, d);
  const t = t1 + (t2 - t1) * share;
  const mix = (p: Point, q: Point, from: number, to: number) => {
    const w = (t - from) / (to - from);
    return point(p.xMm + (q.xMm - p.xMm) * w, p.yMm + (q.yMm - p.yMm) * w);
  };
  const ab = mix(a, b, t0, t1);
  const bc = mix(b, c, t1, t2);
  const cd = mix(c, d, t2, t3);
  return mix(mix(ab, bc, t0, t2), mix(bc, cd, t1, t3), t1, t2);
}
