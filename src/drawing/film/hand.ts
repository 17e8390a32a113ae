import { type Point, point, thinMm } from "../items.ts";
import type { Item, PathStep } from "../model.ts";

/** A finger or a palm: a rounded stroke along a curve, from where it begins to its tip. */
interface Limb {
  readonly from: Point;
  readonly through: readonly [Point, Point];
  readonly to: Point;
  readonly widthMm: number;
}

/** A hand of several limbs: one outline round them all, so that where they join no line is seen. Films can move each. */
export function hand(limbs: readonly Limb[]): Item[] {
  const stroke = (ink: "ink" | "paper", moreMm: number) =>
    limbs.map((limb): Item => {
      const widthMm = limb.widthMm + moreMm;
      return { kind: "path", steps: along(limb), stroke: { ink, widthMm, cap: "round" } };
    });
  return [...stroke("ink", 2 * thinMm), ...stroke("paper", 0)];
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
  const on = (x: number, y: number) => point(at.xMm + x * unitMm, at.yMm + y * unitMm);
  const tip = (side: 1 | -1) => point(at.xMm + 0.9 * unitMm, at.yMm + side * (openMm / 2 + 0.7 * unitMm));
  const finger = 1.7 * unitMm;
  return hand([
    { from: on(8, -1.5), through: [on(7.5, -5), on(3.5, -4.6)], to: tip(-1), widthMm: finger },
    { from: on(8, 0.5), through: [on(7, -2.4), on(5.4, -1.6)], to: on(5, -0.2), widthMm: finger },
    { from: on(8, 2), through: [on(6.5, 4.4), on(3.5, 3.6)], to: tip(1), widthMm: 1.1 * finger },
    { from: on(8.2, 0), through: [on(9, 0.1), on(9.6, 0.2)], to: on(10.4, 0.4), widthMm: 4.2 * unitMm },
  ]);
}
