import { first, last } from "../../core/lists.ts";
import { bold, type Point, point, polygon, polyline, rectangle, thinSoft } from "../items.ts";
import type { Box } from "../kit.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";

const hatchMm = 3;
const hatchDepthMm = 1.6;

/** How far below its line the ground's hatching reaches. */
export const groundDepthMm = hatchDepthMm + 0.3;

/** Ground along a line of points from left to right: a firm line, hatched below. */
export function ground(points: readonly Point[]): Item[] {
  const left = first(points).xMm;
  const right = last(points).xMm;
  const hatch: Item[] = [];
  for (let x = left + hatchMm; x <= right; x += hatchMm) {
    const top = point(x, heightAt(points, x) + 0.3);
    const foot = point(x - hatchDepthMm, top.yMm + hatchDepthMm);
    // On a slope the stroke must stay in the ground.
    if (foot.yMm > heightAt(points, foot.xMm)) hatch.push(polyline([top, foot], thinSoft));
  }
  return [...hatch, polyline(points, bold)];
}

/** How high the bank stands above the water, in hundredths of the picture's width. */
export const bankAbove = 3.4;

/** A bank on the left, level and then falling steeply to the bottom of the picture. */
export function bank({ widthMm, heightMm }: Box, surfaceMm: number, endMm: number): Item[] {
  const top = surfaceMm - (bankAbove * widthMm) / 100;
  const shore = [point(0, top), point(0.8 * endMm, top), point(endMm, surfaceMm), point(endMm, heightMm)];
  return [polygon([...shore, point(0, heightMm)], "paper"), ...ground(shore)];
}

/** Water that is cut through, out from the bank. */
export function bankAndWater(box: Box, surfaceMm: number, bankEndsMm: number): Item[] {
  return [
    rectangle(bankEndsMm, surfaceMm, box.widthMm - bankEndsMm, box.heightMm - surfaceMm, { fill: "water" }),
    ...bank(box, surfaceMm, bankEndsMm),
    ...parts.waterSurface.draw({ leftMm: bankEndsMm, rightMm: box.widthMm, yMm: surfaceMm }),
  ];
}

/** Height of a line of points at a place across; its ends go on level. */
export function heightAt(points: readonly Point[], xMm: number): number {
  const after = points.findIndex((p) => p.xMm >= xMm);
  if (after === -1) return last(points).yMm;
  const b = points[after]!;
  const a = points[after - 1];
  if (!a) return b.yMm;
  const span = b.xMm - a.xMm;
  return span > 0 ? a.yMm + ((b.yMm - a.yMm) * (xMm - a.xMm)) / span : b.yMm;
}

/** The part of a line of points between two places across. */
export function between(points: readonly Point[], fromMm: number, toMm: number): Point[] {
  const end = (xMm: number) => point(xMm, heightAt(points, xMm));
  return [end(fromMm), ...points.filter((p) => p.xMm > fromMm && p.xMm < toMm), end(toMm)];
}
