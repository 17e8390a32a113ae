import type { Body } from "../sink/body-fall.ts";
import type { Metal } from "../tackle/shot.ts";
import type { G, Mm } from "../units.ts";
import type { Water } from "../water/water.ts";

/** Density of nylon line [kg/m³]: 1120–1150 in the usual tables. */
export const lineDensityKgM3 = 1140;

/** A shot on the line as the sums of water and line need it. */
export interface HangingShot {
  readonly massG: G;
  readonly metal: Metal;
  /** Along the line from the bend of the hook; at or beyond the float's eye it locks the float. */
  readonly fromHookMm: Mm;
}

/** All of a rig that hangs below its float, and the water it hangs in. */
export interface HangingRig {
  readonly shot: readonly HangingShot[];
  /** Line from the float's lower eye (or stop knot) to the hook. */
  readonly floatToHookMm: Mm;
  /** Surface to the float's lower eye. */
  readonly draughtMm: Mm;
  /** Depth of the water. */
  readonly depthMm: Mm;
  readonly mainLineDiameterMm: Mm;
  readonly hookLineDiameterMm: Mm;
  readonly hookLengthMm: Mm;
  readonly bait: Body;
  readonly hookMassG: G;
  readonly water: Water;
}

/** A kilometre, a tonne or their like: beyond, the sums of a rig have no end. */
const measureMost = 1_000_000;

export const isPositive = (value: number | undefined): boolean =>
  value === undefined || (value > 0 && value <= measureMost);

export const isZeroOrMore = (value: number): boolean => value >= 0 && value <= measureMost;

/** Name of the first measure of a rig that no rig can have; undefined where all are sound. */
export function wrongMeasure(rig: HangingRig): string | undefined {
  const sound: Readonly<Record<string, boolean>> = {
    floatToHookMm: isPositive(rig.floatToHookMm),
    depthMm: isPositive(rig.depthMm),
    draughtMm: isZeroOrMore(rig.draughtMm),
    hookLengthMm: isZeroOrMore(rig.hookLengthMm),
    mainLineDiameterMm: isPositive(rig.mainLineDiameterMm),
    hookLineDiameterMm: isPositive(rig.hookLineDiameterMm),
    hookMassG: isZeroOrMore(rig.hookMassG),
    baitMassG: isPositive(rig.bait.massG),
    baitDensityKgM3: isPositive(rig.bait.densityKgM3),
    baitFallMs: isPositive(rig.bait.fallMs),
    shotMassG: rig.shot.every((shot) => isPositive(shot.massG)),
    shotFromHookMm: rig.shot.every((shot) => isZeroOrMore(shot.fromHookMm)),
    tempC: Number.isFinite(rig.water.tempC),
    salinity: isZeroOrMore(rig.water.salinity),
  };
  return Object.keys(sound).find((measure) => !sound[measure]);
}
