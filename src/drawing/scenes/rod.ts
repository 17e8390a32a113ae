import { entry } from "../../core/lists.ts";
import { cube } from "../../core/power.ts";
import { type Point, point, polygon } from "../items.ts";
import type { Item } from "../model.ts";

const rodPieces = 16;
const buttHalfMm = 0.7;
const tipHalfMm = 0.25;

/** A point of the cubic curve from `a` to `d`, at a share of the way. */
function along([a, b, c, d]: readonly [Point, Point, Point, Point], t: number): Point {
  const u = 1 - t;
  const mix = (of: (p: Point) => number) =>
    cube(u) * of(a) + 3 * u * u * t * of(b) + 3 * u * t * t * of(c) + cube(t) * of(d);
  return point(
    mix(({ xMm }) => xMm),
    mix(({ yMm }) => yMm),
  );
}

/** A rod that gets thinner to its tip. `bend` is a place that the upper half is pulled towards; none means straight. */
export function rod(butt: Point, tip: Point, bend?: Point): Item[] {
  const third = (share: number) =>
    point(butt.xMm + (tip.xMm - butt.xMm) * share, butt.yMm + (tip.yMm - butt.yMm) * share);
  const curve = [butt, bend ?? third(1 / 3), bend ?? third(2 / 3), tip] as const;
  const middle = Array.from({ length: rodPieces + 1 }, (_, i) => along(curve, i / rodPieces));
  const side = (sign: 1 | -1) =>
    middle.map((at, i) => {
      const [from, to] = [entry(middle, Math.max(0, i - 1)), entry(middle, Math.min(rodPieces, i + 1))];
      const length = Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm) || 1;
      const half = (sign * (buttHalfMm + ((tipHalfMm - buttHalfMm) * i) / rodPieces)) / length;
      return point(at.xMm - (to.yMm - from.yMm) * half, at.yMm + (to.xMm - from.xMm) * half);
    });
  return [polygon([...side(1), ...side(-1).reverse()], "ink")];
}
