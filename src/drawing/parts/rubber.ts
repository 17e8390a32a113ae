import { type Point, point, rectangle } from "../items.ts";
import type { Ink, Item } from "../model.ts";
import type { Part } from "./part.ts";

interface Rubber {
  /** Its middle. */
  readonly at: Point;
  readonly widthMm: number;
}

const heightMm = 1.3;
/** Kept free round it, so that it parts from a tip or a stem as dark as itself, and from the line that it holds. */
const clearMm = 0.4;

const sleeve = ({ xMm, yMm }: Point, widthMm: number, highMm: number, fill: Ink): Item =>
  rectangle(xMm - widthMm / 2, yMm - highMm / 2, widthMm, highMm, { fill });

/** A float rubber: a short dark sleeve that holds the line to the float. */
export const rubber: Part<Rubber> = {
  draw: ({ at, widthMm }) => [
    sleeve(at, widthMm + 2 * clearMm, heightMm + 2 * clearMm, "paper"),
    sleeve(at, widthMm, heightMm, "ink"),
  ],
  sample: { at: point(15, 10), widthMm: 4 },
};
