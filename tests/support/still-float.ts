import type { Float } from "../../src/core/float/float.ts";
import { metalDensityKgM3 } from "../../src/core/tackle/shot.ts";
import { type Water, waterDensityKgM3 } from "../../src/core/water/water.ts";

/**
 * A float on still water by statics alone, independent of how the core solves it: the float is cut into slices a tenth of
 * a millimetre thick, and its eye is let down until what it displaces bears what hangs. Whatever is nearer to the hook
 * than the line is slack lies on the bed and hangs no more.
 */
export interface Hung {
  readonly fromHookMm: number;
  readonly pullG: number;
}

/** What the float does. */
export interface Stands {
  /** Above the water; null where it is under or lies flat. */
  readonly tipMm: number | null;
  readonly flat: boolean;
  /** Below the surface. */
  readonly hookMm: number;
  /** Line that lies slack on the bed [mm]. */
  readonly slackMm: number;
}

const sliceMm = 0.1;

/** Water displaced below each slice [g] and its moment about the eye [g·mm]; the float's own mass and moment. */
interface Slices {
  readonly displacedG: readonly number[];
  readonly buoyantGMm: readonly number[];
  readonly lengthMm: number;
  readonly ownG: number;
  readonly ownGMm: number;
}

const sliced = new WeakMap<Float, Map<string, Slices>>();

function slicesOf(float: Float, water: Water): Slices {
  const known = sliced.get(float) ?? new Map<string, Slices>();
  sliced.set(float, known);
  const key = `${water.tempC} ${water.salinity}`;
  const made = known.get(key) ?? cut(float, water);
  known.set(key, made);
  return made;
}

function cut(float: Float, water: Water): Slices {
  const { profile, selfLoadG, tipShowingMm, capacityG, capacityMetal } = float;
  const densityGMm3 = waterDensityKgM3(water) * 1e-6;
  const lengthMm = profile.at(-1)!.atMm;
  const displacedG = [0];
  const buoyantGMm = [0];
  let volumeMm4 = 0;
  let volumeMm3 = 0;
  for (let i = 0; i < Math.round(lengthMm / sliceMm); i++) {
    const atMm = (i + 0.5) * sliceMm;
    const above = profile.findIndex((point) => point.atMm > atMm);
    const [low, high] = [profile[above - 1]!, profile[above]!];
    const share = (atMm - low.atMm) / (high.atMm - low.atMm);
    const diameterMm = low.diameterMm + share * (high.diameterMm - low.diameterMm);
    const sliceMm3 = (Math.PI / 4) * diameterMm ** 2 * sliceMm;
    volumeMm3 += sliceMm3;
    volumeMm4 += sliceMm3 * atMm;
    displacedG.push(volumeMm3 * densityGMm3);
    buoyantGMm.push(volumeMm4 * densityGMm3);
  }
  const freshKgM3 = waterDensityKgM3({ ...water, salinity: 0 });
  const atMarkG = between(displacedG, lengthMm - tipShowingMm);
  // Marked in fresh water: what it displaces there less what it carries is its own mass.
  const freshAtMarkG = (atMarkG * freshKgM3) / waterDensityKgM3(water);
  const carriedG = capacityG * (1 - freshKgM3 / metalDensityKgM3[capacityMetal]);
  const ownG = float.weighedMassG ?? freshAtMarkG - carriedG;
  const ownGMm = ((float.weighedMassG ?? freshAtMarkG - carriedG) - selfLoadG) * (volumeMm4 / volumeMm3);
  return { displacedG, buoyantGMm, lengthMm, ownG, ownGMm };
}

function between(values: readonly number[], atMm: number): number {
  const at = Math.min(Math.max(atMm / sliceMm, 0), values.length - 1);
  const below = Math.min(Math.floor(at), values.length - 2);
  return values[below]! + (at - below) * (values[below + 1]! - values[below]!);
}

/**
 * Where a float comes to rest.
 *
 * @param lockPullG what hangs at its eye [g]
 * @param line what hangs on the line
 * @param floatToHookMm eye to hook
 */
export function floatAtRest(
  float: Float,
  water: Water,
  lockPullG: number,
  line: readonly Hung[],
  floatToHookMm: number,
  depthMm: number,
): Stands {
  const { displacedG, buoyantGMm, lengthMm, ownG, ownGMm } = slicesOf(float, water);
  const slackAt = (eyeMm: number) => eyeMm + floatToHookMm - depthMm;
  const hangingG = (eyeMm: number) =>
    line.reduce((sum, one) => (one.fromHookMm >= slackAt(eyeMm) ? sum + one.pullG : sum), lockPullG);
  const spareG = (eyeMm: number) => between(displacedG, eyeMm) - ownG - hangingG(eyeMm);
  const hookAt = (eyeMm: number) => Math.min(depthMm, eyeMm + floatToHookMm);
  const slackMm = (eyeMm: number) => Math.max(0, slackAt(eyeMm));
  const under = { tipMm: null, flat: false, hookMm: hookAt(lengthMm), slackMm: slackMm(lengthMm) };
  if (spareG(lengthMm) < 0) return under;
  let [lowMm, highMm] = [0, lengthMm];
  while (highMm - lowMm > 1e-6) {
    const middleMm = (lowMm + highMm) / 2;
    if (spareG(middleMm) < 0) lowMm = middleMm;
    else highMm = middleMm;
  }
  const stands = between(buoyantGMm, highMm) > ownGMm;
  if (!stands) return { tipMm: null, flat: true, hookMm: depthMm, slackMm: slackMm(0) };
  return { tipMm: lengthMm - highMm, flat: false, hookMm: hookAt(highMm), slackMm: slackMm(highMm) };
}
