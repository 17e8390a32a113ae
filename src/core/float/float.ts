import { type Metal, pullG } from "../tackle/shot.ts";
import type { G, Mm } from "../units.ts";
import { freshWaterDensityKgM3, type Water, waterDensityKgM3 } from "../water/water.ts";
import { type Profile, topMm, volumeBelowMm3 } from "./profile.ts";

export type { ProfilePoint } from "./profile.ts";

/** How the line is held to the float. */
export const attachments = ["bottom", "top and bottom", "sliding"] as const;
export type Attachment = (typeof attachments)[number];

/** A float as the sums see it. `checkFloat` says whether its figures agree; the sums expect one that passes. */
export interface Float {
  readonly id: string;
  readonly title: string;
  /** The trade's word for its shape, such as `stick`. */
  readonly kind: string;
  readonly attachment: Attachment;
  /** Whether shot pinched either side of the eye hold it on the line (else rubbers or a stop knot do). */
  readonly heldByShot: boolean;
  /** From the lower eye (0) to the top of the tip, rising; two points at one height are a shoulder. */
  readonly profile: Profile;
  /** Shot it takes, weighed in air and of `capacityMetal`, when `tipShowingMm` of tip shows. */
  readonly capacityG: G;
  readonly capacityMetal: Metal;
  readonly capacityBasis: "marked" | "measured";
  /** Load built into the foot of the float [g]; part of its own mass, not of its capacity. */
  readonly selfLoadG: G;
  /** Tip above the water at capacity. */
  readonly tipShowingMm: Mm;
  /** The float's own mass where it was weighed; else it follows from the profile. */
  readonly weighedMassG?: G;
}

/** Length from the lower eye to the top of the tip. */
export function lengthMm(float: Float): number {
  return topMm(float.profile);
}

/** Diameter of the top of the tip. */
export function tipDiameterMm(float: Float): number {
  return float.profile.at(-1)?.diameterMm ?? 0;
}

/** Mass of water in a volume [g]. */
export function waterInG(volumeMm3: number, water: Water): number {
  return volumeMm3 * waterDensityKgM3(water) * 1e-6;
}

/** Volume of the float below its mark, the water line at capacity [mm³]. */
export function volumeAtMarkMm3(float: Float): number {
  return volumeBelowMm3(float.profile, lengthMm(float) - float.tipShowingMm);
}

/** Pull at capacity in fresh water of the same temperature, where markings and measurements are made. */
function freshPullG(float: Float, water: Water): number {
  return pullG(float.capacityG, float.capacityMetal, { tempC: water.tempC, salinity: 0 });
}

/**
 * Pull that brings the float to its mark.
 *
 * A capacity is taken to hold in fresh water: there it is `capacityG · (1 − ρwater/ρmetal)`. Salt water carries the
 * float better, by the extra mass of the water that it displaces.
 *
 * @returns pull [g]
 */
export function floatPullG(float: Float, water: Water): number {
  const denserKgM3 = waterDensityKgM3(water) - freshWaterDensityKgM3(water.tempC);
  return freshPullG(float, water) + denserKgM3 * 1e-6 * volumeAtMarkMm3(float);
}

/**
 * The float's own mass by Archimedes' principle: the water displaced at the mark less the pull that takes it there.
 *
 * @returns mass [g]; 0 or less where profile and capacity contradict each other
 */
export function impliedMassG(float: Float, water: Water): number {
  return waterInG(volumeAtMarkMm3(float), water) - floatPullG(float, water);
}

/** The float's own mass [g]: as weighed, else as implied by profile and capacity. */
export function floatMassG(float: Float, water: Water): number {
  return float.weighedMassG ?? impliedMassG(float, water);
}
