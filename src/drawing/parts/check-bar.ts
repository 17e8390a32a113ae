import { type CheckedBar, centimetreRuler } from "../../words/unit-systems.ts";
import { type Point, point, text, thin } from "../items.ts";
import type { PathStep } from "../model.ts";
import type { Part } from "./part.ts";

interface CheckBar {
  /** Left end of the bar. */
  readonly at: Point;
  readonly bar: CheckedBar;
  readonly words: string;
  readonly textMm: number;
}

/** How high the ticks of a bar stand [mm]: at its ends, in its middle, at its other parts. */
interface BarTicks {
  readonly end: number;
  readonly middle: number;
  readonly part: number;
}

/** A bar of exactly 100 mm or 4 in from its left end, with a tick upwards at each of its parts. */
export function barSteps(
  { xMm, yMm }: Point,
  { lengthMm, parts }: CheckedBar,
  ticksMm: BarTicks,
): PathStep[] {
  const ticks = Array.from({ length: parts + 1 }, (_, part): PathStep[] => {
    const x = xMm + (part * lengthMm) / parts;
    const tick = part % parts === 0 ? "end" : part === parts / 2 ? "middle" : "part";
    return [
      ["M", x, yMm],
      ["L", x, yMm - ticksMm[tick]],
    ];
  });
  return [["M", xMm, yMm], ["L", xMm + lengthMm, yMm], ...ticks.flat()];
}

/** A bar with words below it, to hold a ruler against after printing. */
export const checkBar: Part<CheckBar> = {
  draw: ({ at, bar, words, textMm }) => [
    { kind: "path", steps: barSteps(at, bar, { end: 2, middle: 1, part: 1 }), stroke: thin },
    text(point(at.xMm, at.yMm + 0.6 + textMm), words, textMm),
  ],
  sample: { at: point(2, 10), bar: centimetreRuler.check, words: "", textMm: 3 },
  sampleWidthMm: centimetreRuler.check.lengthMm + 4,
};
