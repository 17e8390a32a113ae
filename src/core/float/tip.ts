import type { G, Mm } from "../units.ts";
import { type Water, waterDensityKgM3 } from "../water/water.ts";
import { type Float, floatPullG, lengthMm, volumeAtMarkMm3, waterInG } from "./float.ts";
import { heightOfVolumeMm, volumeBelowMm3 } from "./profile.ts";

/** A tip is told to so much [mm]: differences below it do not count. */
export const tipStepMm: Mm = 5;

/** The tip above the water as it is told, and so as it is drawn wherever it is read off [mm]: to the nearest 5 mm. */
export function toldTipMm(showingMm: Mm): Mm {
  return Math.round(showingMm / tipStepMm) * tipStepMm;
}

/** Whether two tips are told, and so drawn, alike: nobody could tell one from the other. In whichever unit, as all steps are told apart. */
export function isToldAlike(oneMm: Mm, otherMm: Mm): boolean {
  return toldTipMm(oneMm) === toldTipMm(otherMm);
}

/** Half a band about a tip as it is told [mm]: to the same step, and never none. */
export function toldBandMm(bandMm: Mm): Mm {
  return Math.max(toldTipMm(bandMm), tipStepMm);
}

/**
 * Tip above the water at a load.
 *
 * The water line is where the volume below it displaces what is carried: at the mark the pull at capacity, and
 * `1/ρ` more volume for each gram more. Surface tension is left out; `tipUncertaintyMm` gives its band.
 *
 * @param loadPullG pull of everything that hangs from the float [g]
 * @returns tip showing [mm], from 0 to the float's length; null where the load takes the float under
 */
export function tipShowingMm(float: Float, loadPullG: G, water: Water): number | null {
  const moreG = loadPullG - floatPullG(float, water);
  const volumeMm3 = volumeAtMarkMm3(float) + moreG / (waterDensityKgM3(water) * 1e-6);
  // Written so that a figure that is no number counts as gone under.
  if (!(volumeMm3 <= volumeBelowMm3(float.profile, lengthMm(float)))) return null;
  return lengthMm(float) - heightOfVolumeMm(float.profile, volumeMm3);
}

/**
 * Load that leaves so much tip above the water: the inverse of `tipShowingMm`.
 *
 * @param showingMm tip showing [mm], 0 to the float's length
 * @returns pull [g]
 */
export function loadForTipG(float: Float, showingMm: Mm, water: Water): number {
  const volumeMm3 = volumeBelowMm3(float.profile, lengthMm(float) - showingMm);
  return floatPullG(float, water) + waterInG(volumeMm3 - volumeAtMarkMm3(float), water);
}

/**
 * Surface to the float's lower eye while it stands.
 *
 * @param loadPullG pull of everything that hangs from the float [g]
 * @returns draught [mm]: length less tip showing; the whole length where the load takes the float under
 */
export function draughtMm(float: Float, loadPullG: G, water: Water): number {
  return lengthMm(float) - (tipShowingMm(float, loadPullG, water) ?? 0);
}

/**
 * Pull, beyond the load, that takes the tip just under: what a fish must do.
 *
 * @returns pull [g]; below 0 where the load has taken the float under already
 */
export function pullToSinkG(float: Float, loadPullG: G, water: Water): number {
  return loadForTipG(float, 0, water) - loadPullG;
}

/**
 * How far the float lifts when part of the load is taken off it, such as a telltale by a fish: on a straight tip
 * `pull / (ρ · tip area)`, else through the profile.
 *
 * @param takenPullG pull taken off [g]
 * @returns lift [mm], from just under where the load had taken the float under
 */
export function liftMm(float: Float, loadPullG: G, takenPullG: G, water: Water): number {
  const before = tipShowingMm(float, loadPullG, water) ?? 0;
  return (tipShowingMm(float, loadPullG - takenPullG, water) ?? 0) - before;
}
