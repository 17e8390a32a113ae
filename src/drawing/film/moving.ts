import type { Float } from "../../core/float/float.ts";
import { floatLook } from "../float/float-parts.ts";
import { type Point, point } from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { rotated } from "../transform.ts";

/** Marks at a place, which films move as one. */
export function placed({ xMm, yMm }: Point, items: readonly Item[]): Item {
  return { kind: "group", xMm, yMm, items };
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
  const items = lean ? rotated(upright, lean.degrees, lean.about) : upright;
  return items.map((item) =>
    item.kind === "circle" ? placed(point(item.cxMm, item.cyMm), [{ ...item, cxMm: 0, cyMm: 0 }]) : item,
  );
}

/** Radius of a shot on a film: sizes are told apart, the smallest is still seen. */
export function shotRadiusMm(diameterMm: number): number {
  return Math.min(1.3, Math.max(0.55, 0.25 * diameterMm));
}
