import { type Point, point, polyline, text, thin } from "../items.ts";
import type { Part } from "./part.ts";

interface CheckBar {
  /** Left end of the bar. */
  readonly at: Point;
  readonly words: string;
  readonly textMm: number;
}

export const checkBarMm = 100;

/** A bar of exactly 100 mm with a stroke every 10 mm, to hold a ruler against after printing. */
export const checkBar: Part<CheckBar> = {
  draw: ({ at: { xMm, yMm }, words, textMm }) => {
    const strokes = Array.from({ length: 11 }, (_, i) => {
      const x = xMm + (i * checkBarMm) / 10;
      return polyline([point(x, yMm - (i % 10 === 0 ? 2 : 1)), point(x, yMm)], thin);
    });
    return [
      ...strokes,
      polyline([point(xMm, yMm), point(xMm + checkBarMm, yMm)], thin),
      text(point(xMm, yMm + 0.6 + textMm), words, textMm),
    ];
  },
  sample: { at: point(2, 10), words: "", textMm: 3 },
  sampleWidthMm: checkBarMm + 4,
};
