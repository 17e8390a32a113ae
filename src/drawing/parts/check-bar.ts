import { type CheckedBar, centimetreRuler } from "../../words/unit-systems.ts";
import { type Point, point, polyline, text, thin } from "../items.ts";
import type { Part } from "./part.ts";

interface CheckBar {
  /** Left end of the bar. */
  readonly at: Point;
  readonly bar: CheckedBar;
  readonly words: string;
  readonly textMm: number;
}

/** A bar of exactly 100 mm or 4 in, in its parts, to hold a ruler against after printing. */
export const checkBar: Part<CheckBar> = {
  draw: ({ at: { xMm, yMm }, bar: { lengthMm, parts }, words, textMm }) => {
    const strokes = Array.from({ length: parts + 1 }, (_, i) => {
      const x = xMm + (i * lengthMm) / parts;
      return polyline([point(x, yMm - (i % parts === 0 ? 2 : 1)), point(x, yMm)], thin);
    });
    return [
      ...strokes,
      polyline([point(xMm, yMm), point(xMm + lengthMm, yMm)], thin),
      text(point(xMm, yMm + 0.6 + textMm), words, textMm),
    ];
  },
  sample: { at: point(2, 10), bar: centimetreRuler.check, words: "", textMm: 3 },
  sampleWidthMm: centimetreRuler.check.lengthMm + 4,
};
