import { last } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { DrawingKit } from "../kit.ts";

/** A figure of a scale beside a tip, and how far over the water it stands. */
interface TipFigure {
  readonly tipMm: Mm;
  readonly told: string;
}

/** A scale that stands on the water beside a tip. */
interface TipRuler {
  /** Paper for each millimetre of the tip. */
  readonly scale: number;
  /** From 0 as high as there is room. */
  readonly figures: readonly TipFigure[];
}

interface RulerRoom {
  /** The highest tip that is read off it. */
  readonly mostMm: Mm;
  /** Paper for each millimetre of the tip, at the most. */
  readonly mostScale: number;
  /** The ruler's height on paper. */
  readonly highMm: number;
  /** The least from one figure to the next on paper. */
  readonly apartMm: number;
}

/** Ticks of the ruler from one figure to the next, the first that leaves room between them. */
const steps = [5, 10, 20, 50, 100, 200];
/** Less than this is nothing: a figure at the very top stands there. */
const nothing = 1e-6;

/**
 * A scale that stands on the water, in what a tip is told in, as large as there is room for; its last figure stands at the highest tip or
 * over it, since between two of which one is missing none can be read.
 */
export function tipRuler(
  { mostMm, mostScale, highMm, apartMm }: RulerRoom,
  { figures }: Pick<DrawingKit, "figures">,
): TipRuler {
  const { tickMm, ticksAUnit } = figures.ruler.tip;
  const rulers = steps.map((ticks) => {
    const stepMm = ticks * tickMm;
    const topMm = Math.ceil(mostMm / stepMm - nothing) * stepMm;
    return { ticks, stepMm, scale: Math.min(mostScale, highMm / topMm) };
  });
  const { ticks, stepMm, scale } = rulers.find((one) => one.stepMm * one.scale >= apartMm) ?? last(rulers);
  const count = Math.floor(highMm / (stepMm * scale) + nothing) + 1;
  return {
    scale,
    figures: Array.from({ length: count }, (_, i) => ({
      tipMm: i * stepMm,
      told: figures.number((i * ticks) / ticksAUnit, 1),
    })),
  };
}
