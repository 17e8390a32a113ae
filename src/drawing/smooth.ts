import { curveThrough } from "./curve.ts";
import { type Point, point } from "./items.ts";

/** Of a curve's samples so many are passed over for each that is drawn: four pieces a part are smooth to the eye. */
const apart = 4;

/** Places along a smooth curve through points, or along a ring of them. */
export function smooth(points: readonly Point[], closed = false): Point[] {
  const places = points.map(({ xMm, yMm }) => ({ x: xMm, y: yMm, height: 0 }));
  const { samples } = curveThrough(places, closed);
  return samples.filter((_, i) => i % apart === 0).map(({ x, y }) => point(x, y));
}
