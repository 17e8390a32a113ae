import { boldMm, type Point, point, polygon, polyline, thin, thinMm, thinSoft } from "../items.ts";
import type { Item, PathStep, Stroke } from "../model.ts";
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
  return [strokeOf(limb, "ink", 2 * thinMm), strokeOf(limb, "paper", 0)];
}

function strokeOf({ from, through: [a, b], to, widthMm }: Limb, ink: "ink" | "paper", moreMm: number): Item {
  const steps: readonly PathStep[] = [
    ["M", from.xMm, from.yMm],
    ["C", a.xMm, a.yMm, b.xMm, b.yMm, to.xMm, to.yMm],
  ];
  return { kind: "path", steps, stroke: { ink, widthMm: widthMm + moreMm, cap: "round" } };
}

/** What grows out of one palm: all their outlines first, then all that they enclose, so that no line parts them. */
function grown(limbs: readonly Limb[], palm: readonly Point[]): Item[] {
  const edge: Stroke = { ink: "ink", widthMm: 2 * boldMm, cap: "round" };
  return [
    polygon(palm, "paper", edge),
    ...limbs.map((limb) => strokeOf(limb, "ink", 2 * boldMm)),
    polygon(palm, "paper"),
    ...limbs.map((limb) => strokeOf(limb, "paper", 0)),
  ];
}

/** How far the sleeve of such a hand reaches from what it holds, in its units. */
const handReach = 17;

/**
 * A hand from the right that holds something between the tips of forefinger, above, and thumb, below; the other fingers
 * are folded in its palm.
 *
 * @param at between the two tips
 * @param unitMm half the width of a finger
 * @param openMm between the tips
 */
export function pinchingHand(at: Point, unitMm: number, openMm: number): Item[] {
  const o = openMm / 2 / unitMm;
  const on = (x: number, y: number) => point(at.xMm + x * unitMm, at.yMm + y * unitMm);
  const limb = (from: Point, through: readonly [Point, Point], to: Point, wide: number): Limb => ({
    from,
    through,
    to,
    widthMm: wide * unitMm,
  });
  const forefinger = limb(on(8, -3.2), [on(5, -5.4 - 0.8 * o), on(0.9, -4.6 - o)], on(0.3, -1.15 - o), 2.3);
  const thumb = limb(on(8.6, 2.6), [on(6, 4.4 + 0.7 * o), on(2.6, 3.4 + o)], on(0.4, 1.2 + o), 2.5);
  // Little finger, ring finger, middle finger, each over the one before.
  const folded = [2.6, 0.9, -0.9].map((y) =>
    limb(on(10, y - 0.2), [on(8.6, y - 0.5), on(7.4, y - 0.4)], on(6.1, y + 0.1), 1.8),
  );
  const palm = smooth(
    [
      on(6.9, -4),
      on(9, -4.9),
      on(11.4, -4),
      on(13.4, -2.8),
      on(15.4, -2.6),
      on(15.4, 3),
      on(13, 3.4),
      on(10.6, 4.4),
      on(8.2, 3.6),
      on(9, 1.4),
      on(9, -1.4),
      on(7.6, -2.6),
    ],
    true,
  );
  const crease = (points: readonly Point[]) => polyline(smooth(points), thinSoft);
  return [
    ...folded.flatMap((one) => limbOf(one)),
    ...grown([forefinger, thumb], palm),
    // Nail of the thumb; the finger's joints.
    polygon(
      smooth([on(-0.1, 1.7 + o), on(0.7, 1.2 + o), on(1.7, 2 + o), on(1.1, 2.6 + o)], true),
      "paper",
      thin,
    ),
    crease([on(3.1, -5.1 - 0.9 * o), on(3.5, -4.4 - 0.9 * o), on(3.5, -3.6 - 0.9 * o)]),
    crease([on(9.8, 0.9), on(10.6, 1.6), on(10.8, 2.8)]),
    polygon([on(14.6, -3.7), on(handReach, -3.9), on(handReach, 4.2), on(14.6, 3.9)], "ink"),
  ];
}
