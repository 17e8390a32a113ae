import { last } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { DrawingKit } from "../kit.ts";

/** A figure of a scale beside a tip, and how far over the water it stands. */
interface TipFigure {
  readonly tipMm: Mm;
  readonly told: string;
}

/** Ticks of the ruler from one figure to the next, the first that leaves room between them. */
const steps = [5, 10, 20, 50, 100, 200];

/**
 * Figures of a scale that stands on the water, in what a tip is told in, from 0 as high as there is room.
 *
 * @param scale paper for each millimetre of the tip
 * @param highMm the scale's height on paper
 * @param apartMm the least from one figure to the next on paper
 */
export function tipFigures(
  { figures }: DrawingKit,
  scale: number,
  highMm: number,
  apartMm: number,
): readonly TipFigure[] {
  const { tickMm, ticksAUnit } = figures.ruler.tip;
  const step = steps.find((ticks) => ticks * tickMm * scale >= apartMm) ?? last(steps);
  const count = Math.floor(highMm / (step * tickMm * scale)) + 1;
  return Array.from({ length: count }, (_, i) => ({
    tipMm: i * step * tickMm,
    told: figures.number((i * step) / ticksAUnit, 1),
  }));
}
