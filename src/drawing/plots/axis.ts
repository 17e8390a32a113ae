import type { Mm } from "../../core/units.ts";
import type { DrawingKit } from "../kit.ts";

/**
 * Steps of 1, 2 and 5 times a power of ten from 0 up, the smallest that keep figures apart.
 *
 * @param longest end of the axis, in its own unit
 * @param lengthMm its length in the drawing
 * @param roomMm what a figure on it needs
 */
export function ticks(longest: number, lengthMm: number, roomMm: number): readonly number[] {
  const least = (longest * roomMm) / lengthMm;
  const power = Number(`1e${Math.floor(Math.log10(least))}`);
  const step = [1, 2, 5, 10].map((times) => times * power).find((size) => size >= least)!;
  return Array.from({ length: Math.floor(longest / step + 1e-9) + 1 }, (_, i) => i * step);
}

/** Even depths that an axis names from the surface down, and the bed's own at its end. */
export function depthTicks(depthMm: Mm): readonly Mm[] {
  const even = ticks(depthMm / 1000, 1, 0.2).map((metres) => metres * 1000);
  return [...even.filter((one) => one < 0.88 * depthMm), depthMm];
}

/** Room at the left of a plot for its depths [mm of paper]. */
export function depthAxisMm(depthMm: Mm, textMm: number, { figures, measure }: DrawingKit): number {
  return (
    Math.max(...depthTicks(depthMm).map((one) => measure(figures.shortDepth(one), textMm, "regular"))) + 2
  );
}
