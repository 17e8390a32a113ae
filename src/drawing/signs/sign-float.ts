import { circle, type Point, point, polygon, polyline, rectangle } from "../items.ts";
import type { Item } from "../model.ts";
import { rotated, rotatedPoint } from "../transform.ts";
import { dashed, fine, surfaceMm } from "./sign-parts.ts";

interface Float {
  readonly xMm: number;
  /** Tip above the water, as a share of the float; below 0 it is under. */
  readonly tip: number;
  /** To the right from upright [degrees]. */
  readonly lean?: number;
  readonly lengthMm?: number;
  readonly waterMm?: number;
}

/** Half the width of a float at shares of its length: an even tip, a body, a foot [mm]. */
const halfMm = [
  [0, 0.6],
  [0.36, 0.6],
  [0.52, 0.95],
  [0.68, 1.3],
  [0.82, 1.15],
  [0.95, 0.5],
  [1, 0.35],
] as const;
const tipShare = 0.3;

const topOf = ({ tip, lengthMm = 11, waterMm = surfaceMm }: Float) => waterMm - tip * lengthMm;

function outline(drawn: Float): Point[] {
  const { xMm, lengthMm = 11 } = drawn;
  const side = (way: 1 | -1) =>
    halfMm.map(([share, half]) => point(xMm + way * half, topOf(drawn) + share * lengthMm));
  return [...side(1), ...side(-1).reverse()];
}

const leant = (items: readonly Item[], { xMm, lean = 0, waterMm = surfaceMm }: Float) =>
  rotated(items, lean, point(xMm, waterMm));

/** The end of a float that is under water. */
export function footOf(drawn: Float): Point {
  const { xMm, lean = 0, lengthMm = 11, waterMm = surfaceMm } = drawn;
  return rotatedPoint(point(xMm, topOf(drawn) + lengthMm), lean, point(xMm, waterMm));
}

/** A float, its tip bright, with so much of the line below it. */
export function float(drawn: Float, hangMm = 5): Item[] {
  const { xMm, lengthMm = 11 } = drawn;
  const foot = footOf(drawn);
  return [
    polyline([foot, point(foot.xMm, foot.yMm + hangMm)], fine),
    ...leant(
      [
        polygon(outline(drawn), "paper", fine),
        rectangle(xMm - 0.6, topOf(drawn), 1.2, tipShare * lengthMm, { fill: "accent", stroke: fine }),
      ],
      drawn,
    ),
  ];
}

/** Where a float was before. */
export const floatBefore = (drawn: Float): Item[] => leant([polygon(outline(drawn), "paper", dashed)], drawn);

/** The end of a rod, from the left to its tip, with the line from there to a place. */
export function rodTo(place: Point): Item[] {
  const tip = point(9, 3.4);
  return [
    polyline([tip, place], fine),
    polygon([point(0, 0.2), tip, point(0, 1.8)], "ink"),
    circle(tip, 0.45, { fill: "ink" }),
  ];
}
