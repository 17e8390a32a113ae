import { type Finding, warning } from "../finding.ts";
import type { G, Mm } from "../units.ts";
import type { Water } from "../water/water.ts";
import { type Float, floatMassG, lengthMm, waterInG } from "./float.ts";
import { momentBelowMm4, topMm, volumeBelowMm3 } from "./profile.ts";
import { loadForTipG, tipShowingMm } from "./tip.ts";

/**
 * Moment of the float's own mass about the lower eye [g·mm]: its body is of one density throughout, the load built
 * into it sits at its foot.
 */
function ownMomentGMm(float: Float, water: Water): number {
  const centreMm =
    momentBelowMm4(float.profile, topMm(float.profile)) / volumeBelowMm3(float.profile, topMm(float.profile));
  return (floatMassG(float, water) - float.selfLoadG) * centreMm;
}

/** Moment of the water displaced by the float standing with so much tip above it [g·mm]. */
function buoyantMomentGMm(float: Float, showingMm: Mm, water: Water): number {
  return waterInG(momentBelowMm4(float.profile, lengthMm(float) - showingMm), water);
}

/**
 * Whether the float stands: its centre of buoyancy must lie above the centre of mass of float and load. The load
 * hangs from the lower eye, so about that eye only buoyancy and the float's own weight have a moment.
 *
 * @param loadPullG pull of everything that hangs from the float [g]
 * @returns true where it stands, also where the load takes it under
 */
export function cocks(float: Float, loadPullG: G, water: Water): boolean {
  const showingMm = tipShowingMm(float, loadPullG, water) ?? 0;
  return buoyantMomentGMm(float, showingMm, water) > ownMomentGMm(float, water);
}

/**
 * Least pull at the lower eye that makes the float stand. More load only steadies it, so halving finds it.
 *
 * @returns pull [g], to a thousandth of a millimetre of water line, 0 where it stands by itself; null where it never
 *   stands
 */
export function cockingPullG(float: Float, water: Water): number | null {
  const ownMoment = ownMomentGMm(float, water);
  const stands = (showingMm: Mm) => buoyantMomentGMm(float, showingMm, water) > ownMoment;
  if (!stands(0)) return null;
  let standsAtMm = 0;
  let fallsAtMm = lengthMm(float);
  while (fallsAtMm - standsAtMm > 1e-3) {
    const halfMm = (standsAtMm + fallsAtMm) / 2;
    if (stands(halfMm)) standsAtMm = halfMm;
    else fallsAtMm = halfMm;
  }
  return Math.max(0, loadForTipG(float, standsAtMm, water));
}

/**
 * Whether the lock alone makes the float stand, as it must from the moment it lands until the rest has sunk.
 *
 * @param lockPullG pull of the lock shot [g]; for a float that shot do not hold, of everything that hangs from it
 * @returns a warning where it does not
 */
export function checkCocking(float: Float, lockPullG: G, water: Water): readonly Finding[] {
  if (cocks(float, lockPullG, water)) return [];
  const neededG = cockingPullG(float, water);
  return neededG === null ? [] : [warning("lock-does-not-cock", { lockPullG, neededG })];
}
