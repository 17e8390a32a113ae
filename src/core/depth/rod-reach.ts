import { type Answer, answer, type Finding, noAnswer, warning } from "../finding.ts";
import type { Float } from "../float/float.ts";
import type { G, Mm } from "../units.ts";
import { mmPerFoot } from "../units.ts";

/** Line that must stay between float and rod tip to cast and to land a fish [mm]. Common practice, no source. */
const reachSpareMm = 300;

/**
 * The most line between a fixed float and the hook with which a rod can still cast and bring a fish to the net.
 *
 * @returns length [mm]: the rod less about 30 cm, never below 0
 */
export function fixedFloatLimitMm(rodLengthMm: Mm): number {
  return Math.max(0, rodLengthMm - reachSpareMm);
}

/**
 * Least load that pulls a sliding float's line through its eye: 1½ SSG (2.4 g) to 14 ft of water, 2 SSG (3.2 g)
 * beyond. Common practice, no source.
 *
 * @returns mass of shot [g]
 */
export function slidingLoadMinG(depthMm: Mm): number {
  return depthMm <= 14 * mmPerFoot ? 2.4 : 3.2;
}

/** What a sliding float needs beside a rod's reach. */
interface SlidingSetup {
  /** The stop knot that the float's eye slides up to, where a fixed float's eye would be [mm]. */
  readonly stopKnotFromHookMm: Mm;
  /** Two knots a few millimetres apart hold better than one. Common practice, no source. */
  readonly stopKnots: 2;
  readonly loadMinG: G;
}

/**
 * Stop knot and least load of a sliding float.
 *
 * @param floatToHookMm float's lower eye at rest to hook [mm]
 */
export function slidingSetup(depthMm: Mm, floatToHookMm: Mm): SlidingSetup {
  return { stopKnotFromHookMm: floatToHookMm, stopKnots: 2, loadMinG: slidingLoadMinG(depthMm) };
}

/**
 * Whether the rod can fish a float so far from the hook: a fixed float needs rod enough, a sliding float load
 * enough.
 *
 * @param floatToHookMm float's lower eye to hook [mm]
 * @param loadG shot on the rig, weighed in air [g]
 */
export function checkReach(
  float: Float,
  depthMm: Mm,
  floatToHookMm: Mm,
  rodLengthMm: Mm,
  loadG: G,
): readonly Finding[] {
  const limitMm = fixedFloatLimitMm(rodLengthMm);
  if (float.attachment !== "sliding") {
    return floatToHookMm <= limitMm
      ? []
      : [warning("sliding-float-needed", { floatToHookMm, limitMm, rodLengthMm })];
  }
  const neededG = slidingLoadMinG(depthMm);
  return loadG < neededG ? [warning("sliding-float-too-light", { loadG, neededG })] : [];
}

/** A depth kept for another day. */
interface DepthRecord {
  /** Rod lengths that the line goes up and down before the last stretch; 0 for a fixed float. */
  readonly rodLengths: number;
  /** Place of the float's lower eye on the rod, from the keeper ring [mm]; the mark goes here. */
  readonly markMm: Mm;
  /** The line in the user's own hand-spans, and what is left over [mm]. */
  readonly handSpans: number;
  readonly restMm: Mm;
}

/**
 * A depth as it is kept on the bank: hook in the keeper ring, line along the rod, the float's eye marked on the rod
 * or counted in hand-spans.
 *
 * @param floatToHookMm float's lower eye (or stop knot) to hook [mm]
 * @param ringToTipMm keeper ring to rod tip [mm]
 * @param handSpanMm the user's own hand-span, thumb to little finger [mm], as measured
 */
export function recordDepth(floatToHookMm: Mm, ringToTipMm: Mm, handSpanMm: Mm): Answer<DepthRecord> {
  for (const [code, mm] of [
    ["record-float-to-hook", floatToHookMm],
    ["record-rod", ringToTipMm],
    ["record-hand-span", handSpanMm],
  ] as const) {
    if (!(mm > 0 && mm < Infinity)) return noAnswer(code);
  }
  const rodLengths = Math.ceil(floatToHookMm / ringToTipMm) - 1;
  const handSpans = Math.floor(floatToHookMm / handSpanMm);
  const lastMm = floatToHookMm - rodLengths * ringToTipMm;
  return answer({
    rodLengths,
    markMm: rodLengths % 2 === 0 ? lastMm : ringToTipMm - lastMm,
    handSpans,
    restMm: floatToHookMm - handSpans * handSpanMm,
  });
}
