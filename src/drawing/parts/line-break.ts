import { type Point, point, polygon, polyline, thin } from "../items.ts";
import { rotated } from "../transform.ts";
import type { Part } from "./part.ts";

interface LineBreak {
  readonly at: Point;
  /** Half its width, where what it breaks is wider than a line. */
  readonly halfWidthMm?: number;
  /** How the line runs that it breaks, clockwise from upright [degrees]. */
  readonly turnedDegrees?: number;
}

/** Half the height of the mark. */
export const lineBreakHalfMm = 1.3;

/** Two slanted strokes across a line with nothing between: here a stretch is left out. */
export const lineBreak: Part<LineBreak> = {
  draw: ({ at, halfWidthMm = 1.6, turnedDegrees = 0 }) => {
    const { xMm, yMm } = at;
    const slant = (y: number): [Point, Point] => [
      point(xMm - halfWidthMm, y + 0.5),
      point(xMm + halfWidthMm, y - 0.5),
    ];
    const [a, b] = slant(yMm - 0.6);
    const [c, d] = slant(yMm + 0.6);
    const mark = [polygon([a, b, d, c], "paper"), polyline([a, b], thin), polyline([c, d], thin)];
    return turnedDegrees === 0 ? mark : rotated(mark, turnedDegrees, at);
  },
  sample: { at: point(15, 10) },
};
