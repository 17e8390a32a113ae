import { circle, type Point, point } from "../items.ts";
import type { Stroke } from "../model.ts";
import type { Part } from "./part.ts";

interface BaitMark {
  readonly at: Point;
  /** How far it reaches from its middle. */
  readonly radiusMm: number;
}

const ring: Stroke = { ink: "accent", widthMm: 0.45 };
const dotShare = 0.4;

/**
 * A bait where the picture is too small to draw it: a ring with a dot in it. A shot is a disc, so that the two are told apart where
 * neither has a colour.
 */
export const baitMark: Part<BaitMark> = {
  draw: ({ at, radiusMm }) => [
    circle(at, radiusMm - ring.widthMm / 2, { fill: "paper", stroke: ring }),
    circle(at, dotShare * radiusMm, { fill: "accent" }),
  ],
  sample: { at: point(15, 10), radiusMm: 3 },
};
