import type { GuideStep } from "../depth/guide-step.ts";
import { type Answer, answer, noAnswer } from "../finding.ts";
import { last } from "../lists.ts";
import type { Mm } from "../units.ts";

/** How far the hook goes deeper from run to run without a plummet [mm]. Common practice, no source. */
export const feelStepMm = 150;
/** How far it comes up again at a time, once the bait is on the bed [mm]. Common practice, no source. */
export const raiseStepMm = 50;
/** Nobody fishes deeper, or starts deeper, with a float [mm]. */
const deepestMm = 20_000;

/** One run down the swim: the hook set for this depth, and whether the float dipped. */
interface FeelingRun {
  readonly settingMm: Mm;
  readonly dips: boolean;
}

/** The bed found without a plummet in running water. */
export interface FeltBed {
  readonly runs: readonly FeelingRun[];
  /** The shallowest setting that dipped on the way down, or the first of all [mm]. */
  readonly foundMm: Mm;
  /** The first that then ran clean [mm]. */
  readonly cleanMm: Mm;
}

/**
 * Runs that find the bed of running water with the rig itself: the hook lower by one step a run until the bait is on the
 * bed and the float dips, then higher by a smaller one until it runs clean.
 *
 * @param dipsFromMm depth for which the rig is set when its bait just comes to the bed [mm]: the depth there is, and what
 * the current takes off it; a line of `flowGuide` tells it
 * @param guessMm depth that the first run is set for [mm]
 * @returns an error `plumbing-guess` for a guess out of all reason
 */
export function feelForBed(dipsFromMm: Mm, guessMm: Mm): Answer<FeltBed> {
  const canBe = (mm: number) => mm > 0 && mm <= deepestMm;
  if (!canBe(dipsFromMm) || !canBe(guessMm)) return noAnswer("plumbing-guess");
  const run = (settingMm: Mm): FeelingRun => ({ settingMm, dips: settingMm >= dipsFromMm });
  const runs = [run(guessMm)];
  while (!last(runs).dips) runs.push(run(last(runs).settingMm + feelStepMm));
  const foundMm = last(runs).settingMm;
  while (last(runs).dips) runs.push(run(last(runs).settingMm - raiseStepMm));
  return answer({ runs, foundMm, cleanMm: last(runs).settingMm });
}

/** The line of a running water's guide from which on the float dips; none where the guide does not go so deep. */
export function firstDip<S extends Pick<GuideStep, "state">>(guide: readonly S[]): S | undefined {
  return guide.find(({ state }) => state !== "hangs");
}

/**
 * How much farther to raise a hook that was felt for and now runs clean, in steps of the same size [mm]: as the last raise may
 * have been longer than it had to be, the least with which it comes up from where it dips as far as it is to.
 *
 * @param tooDeepMm how much too deep a hook is set where it just dips [mm]
 */
export function raiseFurtherMm(tooDeepMm: Mm): Mm {
  return raiseStepMm * Math.max(0, Math.ceil(tooDeepMm / raiseStepMm) - 1);
}
