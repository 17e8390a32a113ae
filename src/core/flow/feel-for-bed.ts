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
