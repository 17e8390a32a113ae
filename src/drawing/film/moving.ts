import type { Float } from "../../core/float/float.ts";
import { floatLook } from "../float/float-parts.ts";
import { circle, type Point, point, polygon, rectangle } from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { rotated } from "../transform.ts";

/** Marks at a place, which films move as one. */
export function placed({ xMm, yMm }: Point, items: readonly Item[]): Item {
  return { kind: "group", xMm, yMm, items };
}

/** Marks as films can move them: a circle by its place. */
export function movable(items: readonly Item[]): Item[] {
  return items.map((item) =>
    item.kind === "circle" ? placed(point(item.cxMm, item.cyMm), [{ ...item, cxMm: 0, cyMm: 0 }]) : item,
  );
}

interface FloatPlace {
  /** Where the top of the upright float is. */
  readonly top: Point;
  /** Drawn length per length; it is drawn at least `leastWideMm` wide. */
  readonly scale: number;
  readonly lengthMm: number;
  /** Lean from upright, about a point. */
  readonly lean?: { readonly degrees: number; readonly about: Point };
}

/** Where the water of a picture begins and ends, across and down [mm]. */
interface WaterBox {
  readonly leftMm?: number;
  readonly rightMm: number;
  readonly surfaceMm: number;
  readonly footMm: number;
}

/** Water that is cut through, with its surface. */
export function waterCut({ leftMm = 0, rightMm, surfaceMm, footMm }: WaterBox): Item[] {
  return [
    rectangle(leftMm, surfaceMm, rightMm - leftMm, footMm - surfaceMm, { fill: "water" }),
    ...parts.waterSurface.draw({ leftMm, rightMm, yMm: surfaceMm }),
  ];
}

/** The same, down to the bed. */
export function waterOverBed(box: WaterBox): Item[] {
  const { leftMm = 0, rightMm, footMm } = box;
  return [...waterCut(box), ...parts.bed.draw({ leftMm, rightMm, yMm: footMm })];
}

const leastWideMm = 2;

/** A float in parts that films can move: its outlines have as many places in every pose. */
export function movingFloat(float: Float, { top, scale, lengthMm, lean }: FloatPlace): Item[] {
  const widest = Math.max(...float.profile.map(({ diameterMm }) => diameterMm));
  const upright = parts.floatBody.draw({
    ...floatLook(float),
    at: point(top.xMm, top.yMm + scale * lengthMm),
    lengthScale: scale,
    widthScale: Math.max(scale, leastWideMm / widest),
  });
  return movable(lean ? rotated(upright, lean.degrees, lean.about) : upright);
}

/** A shot at a place. */
export function shotAt(at: Point, diameterMm: number): Item {
  return placed(at, [circle(point(0, 0), shotRadiusMm(diameterMm), { fill: "ink" })]);
}

/** How far a bait reaches from its middle. */
export const baitRadiusMm = 1.3;

/** A bait at a place. */
export function baitAt(at: Point): Item {
  return placed(at, parts.baitMark.draw({ at: point(0, 0), radiusMm: baitRadiusMm }));
}

/** How thick a rod is where it comes into the picture. */
const rodMm = 1.4;

/** The end of a rod that comes into a picture from its left edge. */
export function rodEnd({ xMm, yMm }: Point): Item {
  return polygon([point(0, yMm - rodMm), point(xMm, yMm - 0.2), point(xMm, yMm + 0.2), point(0, yMm)], "ink");
}

/** Radius of a shot on a film: sizes are told apart, the smallest is still seen. */
export function shotRadiusMm(diameterMm: number): number {
  return Math.min(1.3, Math.max(0.55, 0.25 * diameterMm));
}
