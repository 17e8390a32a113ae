import { arrow, type Point, point } from "../items.ts";
import type { Part } from "./part.ts";

interface FlowArrow {
  /** Its tail. */
  readonly from: Point;
  readonly lengthMm: number;
}

/** Which way the water runs: always to the right. */
export const flowArrow: Part<FlowArrow> = {
  draw: ({ from, lengthMm }) =>
    arrow(from, point(from.xMm + lengthMm, from.yMm), { ink: "ink", widthMm: 0.6 }, 2.6),
  sample: { from: point(6, 10), lengthMm: 18 },
};
