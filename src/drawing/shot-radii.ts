import { rising } from "../core/lists.ts";
import { leastShotRadiusMm } from "./parts/shot.ts";

/** How much larger one size is drawn than the next smaller one, at the least: what an eye tells apart. */
const leastRatio = 1.25;

/**
 * How large shot of a picture are drawn, each size at a scale, but the least large enough to be seen and no size like the
 * one below it.
 *
 * @param diametersMm of all that are in the picture
 * @returns a shot's radius on paper by its diameter
 */
export function shotRadii(diametersMm: readonly number[], scale: number): (diameterMm: number) => number {
  const radii = new Map<number, number>();
  let least = leastShotRadiusMm;
  for (const diameterMm of rising(diametersMm)) {
    const radiusMm = Math.max(least, (diameterMm / 2) * scale);
    radii.set(diameterMm, radiusMm);
    least = leastRatio * radiusMm;
  }
  return (diameterMm) => radii.get(diameterMm) ?? Math.max(leastShotRadiusMm, (diameterMm / 2) * scale);
}
