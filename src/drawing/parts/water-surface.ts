import { thinMm } from "../items.ts";
import type { PathStep } from "../model.ts";
import type { Part } from "./part.ts";

interface WaterSurface {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly yMm: number;
}

const waveMm = 5;
const heightMm = 0.45;

/** The surface: a line of small waves from edge to edge. */
export const waterSurface: Part<WaterSurface> = {
  draw: ({ leftMm, rightMm, yMm }) => {
    const waves = Math.max(1, Math.round((rightMm - leftMm) / waveMm));
    const length = (rightMm - leftMm) / waves;
    const steps: PathStep[] = [["M", leftMm, yMm]];
    for (let i = 0; i < waves; i += 1) {
      const x = leftMm + i * length;
      const crest = yMm - heightMm;
      const trough = yMm + heightMm;
      steps.push(["C", x + length / 3, crest, x + (2 * length) / 3, trough, x + length, yMm]);
    }
    return [{ kind: "path", steps, stroke: { ink: "soft", widthMm: thinMm } }];
  },
  sample: { leftMm: 2, rightMm: 28, yMm: 10 },
};
