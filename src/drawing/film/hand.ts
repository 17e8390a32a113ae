import { type Point, point, polygon, thin, thinMm, thinSoft } from "../items.ts";
import type { Item, PathStep } from "../model.ts";
import { smooth } from "../smooth.ts";

/** A finger: a rounded stroke along a curve, from where it begins to its tip. */
export interface Limb {
  readonly from: Point;
  readonly through: readonly [Point, Point];
  readonly to: Point;
  readonly widthMm: number;
}

/** A finger with an outline. Films can bend it. */
export function limbOf(limb: Limb): Item[] {
  const stroke = (ink: "ink" | "paper", moreMm: number): Item => {
    const widthMm = limb.widthMm + moreMm;
    return { kind: "path", steps: along(limb), stroke: { ink, widthMm, cap: "round" } };
  };
  return [stroke("ink", 2 * thinMm), stroke("paper", 0)];
}

function along({ from, through: [a, b], to }: Limb): readonly PathStep[] {
  return [
    ["M", from.xMm, from.yMm],
    ["C", a.xMm, a.yMm, b.xMm, b.yMm, to.xMm, to.yMm],
  ];
}

/**
 * A hand from the right that holds something between forefinger and thumb.
 *
 * @param at between the two tips
 * @param unitMm a tenth of the way from there to the wrist
 * @param openMm between the tips
 */
export function pinchingHand(at: Point, unitMm: number, openMm: number): Item[] {
  const o = openMm / 2 / unitMm;
  const on = (x: number, y: number) => point(at.xMm + x * unitMm, at.yMm + y * unitMm);
  const outline = [
    // Forefinger, from its tip over the joint and the knuckle to the wrist.
    on(-0.6, -0.5 - o),
    on(0, -1.3 - o),
    on(1.8, -2.2 - o),
    on(4, -3.2),
    on(6.2, -3.3),
    on(8.4, -2.5),
    on(10.6, -2.2),
    on(10.6, 2.4),
    // Ball of the thumb, and the thumb to its tip.
    on(8.4, 3),
    on(6, 3),
    on(3.8, 2.4 + o / 2),
    on(1.6, 1.7 + o),
    on(0, 1.4 + o),
    on(-0.7, 0.6 + o),
    on(0.2, 0.1 + o),
    on(1.8, 0.3 + o),
    on(3.4, 0.9 + o / 2),
    on(4.4, 0.5),
    on(4.2, -0.7),
    on(3.2, -1.2 - o / 2),
    on(1.8, -0.8 - o),
    on(0.3, 0 - o),
  ];
  const bent = (x: number, y: number) =>
    smooth([on(x + 2.6, y - 1), on(x, y - 0.6), on(x - 0.2, y + 0.6), on(x + 1.8, y + 0.9)]);
  return [
    polygon(smooth(outline, true), "paper", thin),
    { kind: "path", steps: polygon(bent(4.9, -0.6), "paper").steps.slice(0, -1), stroke: thinSoft },
    polygon([on(10.2, -2.9), on(12.4, -2.9), on(12.4, 3.1), on(10.2, 3.1)], "ink"),
  ];
}
