import { type Float, lengthMm } from "../../core/float/float.ts";
import { diameterAtMm } from "../../core/float/profile.ts";
import type { Mm } from "../../core/units.ts";

/**
 * A float whose uppermost part is drawn longer where it would not be seen to the scale of the water; what is below stays
 * as it is.
 *
 * @param leastMm the least length of that part [mm of the float]
 * @param upperMm the part that is stretched: the marked tip, or what stands above the water [mm of the float]
 */
export function seenTip(float: Float, leastMm: Mm, upperMm: Mm = float.tipShowingMm): Float {
  const { profile, tipShowingMm } = float;
  const ratio = Math.max(1, leastMm / Math.max(1, upperMm));
  const fromMm = lengthMm(float) - upperMm;
  const raised = (atMm: Mm) => fromMm + ratio * (atMm - fromMm);
  const markMm = lengthMm(float) - tipShowingMm;
  return {
    ...float,
    tipShowingMm: raised(lengthMm(float)) - (markMm > fromMm ? raised(markMm) : markMm),
    profile: [
      ...profile.filter(({ atMm }) => atMm < fromMm),
      { atMm: fromMm, diameterMm: diameterAtMm(profile, fromMm) },
      ...profile.flatMap(({ atMm, diameterMm }) => (atMm > fromMm ? { atMm: raised(atMm), diameterMm } : [])),
    ],
  };
}

/** What is drawn above the water of a float whose marked tip is drawn longer; what is under is as far down as it is. */
export function seenMm(shownMm: Mm, { tipShowingMm }: Float, drawn: Float): Mm {
  const ofTipMm = Math.min(Math.max(0, shownMm), tipShowingMm);
  return shownMm + ofTipMm * (drawn.tipShowingMm / tipShowingMm - 1);
}
