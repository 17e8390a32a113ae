import { circle, type Point, point, polyline, thinMm } from "../items.ts";
import type { Part } from "./part.ts";

interface ShotMark {
  readonly at: Point;
  readonly radiusMm: number;
}

/** A shot smaller than this on the drawing shows no slit. */
const slitFromMm = 1.3;
export const leastShotRadiusMm = 0.5;

/** A split shot pinched on the line: a black disc, large ones with the slit that the line lies in. */
export const shot: Part<ShotMark> = {
  draw: ({ at, radiusMm }) => {
    const disc = circle(at, radiusMm, { fill: "ink" });
    if (radiusMm < slitFromMm) return [disc];
    const top = point(at.xMm, at.yMm - radiusMm);
    const bottom = point(at.xMm, at.yMm + radiusMm);
    return [disc, polyline([top, bottom], { ink: "paper", widthMm: thinMm })];
  },
  sample: { at: point(15, 10), radiusMm: 3 },
};
