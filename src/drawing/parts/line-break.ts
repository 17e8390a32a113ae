import { type Point, point, polygon, polyline, thin } from "../items.ts";
import type { Part } from "./part.ts";

interface LineBreak {
  readonly at: Point;
  /** Half its width, where what it breaks is wider than a line. */
  readonly halfWidthMm?: number;
}

/** Half the height of the mark. */
export const lineBreakHalfMm = 1.3;

/** Two slanted strokes with nothing between: here a stretch is left out. */
export const lineBreak: Part<LineBreak> = {
  draw: ({ at: { xMm, yMm }, halfWidthMm = 1.6 }) => {
    const slant = (y: number): [Point, Point] => [
      point(xMm - halfWidthMm, y + 0.5),
      point(xMm + halfWidthMm, y - 0.5),
    ];
    const [a, b] = slant(yMm - 0.6);
    const [c, d] = slant(yMm + 0.6);
    return [polygon([a, b, d, c], "paper"), polyline([a, b], thin), polyline([c, d], thin)];
  },
  sample: { at: point(15, 10) },
};
