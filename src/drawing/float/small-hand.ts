import { type Point, point, polygon, polyline, rectangle, thin } from "../items.ts";
import type { Item } from "../model.ts";
import { smooth } from "../smooth.ts";

/** How far such a hand reaches from what it pinches. */
export const smallHandMm = 7.7;

/** A small hand from the right that pinches something between finger, above, and thumb, below: what a reader moves. */
export function smallHand({ xMm, yMm }: Point): Item[] {
  const on = (places: readonly (readonly [number, number])[]) =>
    places.map(([x, y]) => point(xMm + x, yMm + y));
  const hand = on([
    [0.1, -0.3],
    [0.5, -1.6],
    [1.6, -2.7],
    [3.2, -2.7],
    [4.8, -1.9],
    [6.4, -1.4],
    [6.4, 1.6],
    [4.8, 1.8],
    [3.2, 2.4],
    [1.6, 2],
    [0.1, 0.8],
    [0.3, 0.2],
    [1.6, 0.9],
    [2.7, 1],
    [2.4, 0.2],
    [2.6, -0.7],
    [2.2, -1.3],
    [1.2, -1],
    [0.8, 0],
  ]);
  // The other fingers, folded.
  const folded = [-0.4, 0.4].map((y) =>
    polyline(
      smooth(
        on([
          [2.5, y],
          [3.6, y - 0.25],
          [4.4, y],
        ]),
      ),
      thin,
    ),
  );
  return [
    polygon(smooth(hand, true), "paper", thin),
    ...folded,
    rectangle(xMm + 6.4, yMm - 2, smallHandMm - 6.4, 4.2, { fill: "ink" }),
  ];
}
