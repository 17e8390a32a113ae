import { type Point, point, rectangle } from "../items.ts";
import type { Part } from "./part.ts";

interface Rubber {
  /** Its middle. */
  readonly at: Point;
  readonly widthMm: number;
}

const heightMm = 1.4;

/** A float rubber: a short dark sleeve that holds the line to the float. */
export const rubber: Part<Rubber> = {
  draw: ({ at, widthMm }) => [
    rectangle(at.xMm - widthMm / 2, at.yMm - heightMm / 2, widthMm, heightMm, { fill: "ink" }),
  ],
  sample: { at: point(15, 10), widthMm: 4 },
};
