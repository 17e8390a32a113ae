import { ellipse, type Point, point, thin } from "../items.ts";
import type { PathItem } from "../model.ts";
import type { Part } from "./part.ts";

interface LoopJoin {
  /** Where the two loops hold each other. */
  readonly at: Point;
  readonly heightMm: number;
}

const loop = (at: Point, heightMm: number): PathItem => ({
  kind: "path",
  steps: ellipse(at, 0.2 * heightMm, 0.31 * heightMm),
  fill: "paper",
  stroke: thin,
});

/** Hook length joined to the main line, loop in loop. */
export const loopJoin: Part<LoopJoin> = {
  draw: ({ at: { xMm, yMm }, heightMm }) =>
    [-0.19, 0.19].map((share) => loop(point(xMm, yMm + share * heightMm), heightMm)),
  sample: { at: point(15, 10), heightMm: 8 },
};
