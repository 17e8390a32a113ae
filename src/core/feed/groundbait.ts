import { type Answer, answer, noAnswer, warning } from "../finding.ts";
import { cube } from "../power.ts";
import type { G, Ml, Share } from "../units.ts";

/** A ball about as big as a tennis ball [mm]. Common practice, no source. */
export const groundbaitBallMm = 65;
/** Density of the wet mix [g/ml] and water to the kilogram dry [l/kg]. From memory. */
const wetGPerMlLow = 1.1;
const wetGPerMlHigh = 1.4;
const waterShareLow = 0.4;
const waterShareHigh = 0.6;
/** Share of the dry mix held back, to mend one that is too wet; dry mix for an ordinary trip. Common practice. */
const heldBackShare = 0.25;
const ordinaryTripDryG = 1000;

/** What to mix for a session's balls. */
export interface Groundbait {
  readonly balls: number;
  readonly wetMl: Ml;
  readonly dryLowG: G;
  readonly dryHighG: G;
  readonly waterLowMl: Ml;
  readonly waterHighMl: Ml;
  /** Dry mix to keep back, of the upper figure. */
  readonly heldBackG: G;
}

/**
 * Dry mix and water for so many balls: `dry = volume · density / (1 + water share)`, with the rest water.
 *
 * @param balls how many [1 and more]
 * @param ballDiameterMm size of a ball [mm]
 * @returns ranges, as both density and water share vary; a warning beyond a kilogram of dry mix
 */
export function groundbait(balls: number, ballDiameterMm = groundbaitBallMm): Answer<Groundbait> {
  if (!(balls >= 1 && balls < Infinity && ballDiameterMm > 0 && ballDiameterMm < Infinity)) {
    return noAnswer("groundbait-balls");
  }
  const wetMl = (balls * (Math.PI / 6) * cube(ballDiameterMm)) / 1000;
  const dryG = (gPerMl: Ml, waterShare: Share) => (wetMl * gPerMl) / (1 + waterShare);
  const dryLowG = dryG(wetGPerMlLow, waterShareHigh);
  const dryHighG = dryG(wetGPerMlHigh, waterShareLow);
  const mix: Groundbait = {
    balls,
    wetMl,
    dryLowG,
    dryHighG,
    waterLowMl: dryLowG * waterShareLow,
    waterHighMl: dryHighG * waterShareHigh,
    heldBackG: dryHighG * heldBackShare,
  };
  return answer(mix, dryLowG > ordinaryTripDryG ? [warning("groundbait-too-much", { dryG: dryLowG })] : []);
}
