import { arrow, point, polyline, thinSoft } from "../items.ts";
import type { Part } from "./part.ts";

interface Dimension {
  readonly xMm: number;
  readonly fromMm: number;
  readonly toMm: number;
}

/** An upright measure: an arrow to both ends between two short strokes. */
export const dimension: Part<Dimension> = {
  draw: ({ xMm, fromMm, toMm }) => {
    const middle = point(xMm, (fromMm + toMm) / 2);
    const end = (yMm: number) => polyline([point(xMm - 1.2, yMm), point(xMm + 1.2, yMm)], thinSoft);
    return [
      ...arrow(middle, point(xMm, fromMm), thinSoft, 1.8),
      ...arrow(middle, point(xMm, toMm), thinSoft, 1.8),
      end(fromMm),
      end(toMm),
    ];
  },
  sample: { xMm: 15, fromMm: 3, toMm: 17 },
};
