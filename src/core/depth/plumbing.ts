import { type Answer, answer, noAnswer, warning } from "../finding.ts";
import type { Float } from "../float/float.ts";
import { pullToSinkG } from "../float/tip.ts";
import type { PlacedShot } from "../patterns/pattern.ts";
import { type Metal, metalDensityKgM3, pullG, pullShare } from "../tackle/shot.ts";
import type { Water } from "../water/water.ts";

/** First guess at a depth, and how near is near enough [mm]. Common practice, no source. */
export const firstGuessMm = 1000;
export const plumbedWithinMm = 20;

/** Tries after which a first guess or a step was too small to search with. */
const triesMax = 100;

/** What the float says with a plummet on the hook. */
export const plumbingSigns = ["goes under", "shows its mark", "lies flat"] as const;
export type PlumbingSign = (typeof plumbingSigns)[number];

/** One try: the hook set for this depth, what the float says, and the move to the next try (deeper > 0). */
export interface PlumbingStep {
  readonly settingMm: number;
  readonly sign: PlumbingSign;
  readonly moveMm: number;
}

/**
 * The moves of a search that halves: half the guess, a quarter and so on, down to the first that is near enough [mm];
 * none for a guess or a nearness that cannot be.
 */
export function plumbingMovesMm(guessMm = firstGuessMm, withinMm = plumbedWithinMm): readonly number[] {
  const moves: number[] = [];
  if (!(withinMm > 0 && guessMm > 0 && guessMm < Infinity)) return moves;
  for (let moveMm = guessMm / 2; moves.length === 0 || moves.at(-1)! > withinMm; moveMm /= 2)
    moves.push(moveMm);
  return moves;
}

/**
 * The tries that find a depth with a plummet. Under water means too shallow, flat means too deep. Until the float
 * first lies flat the hook goes deeper by the whole guess; from then on each move is half the last.
 *
 * @param depthMm the depth there is [mm]
 * @param guessMm first setting [mm]
 * @param withinMm how near the last setting must be [mm]
 */
export function plumbingSteps(
  depthMm: number,
  guessMm = firstGuessMm,
  withinMm = plumbedWithinMm,
): Answer<readonly PlumbingStep[]> {
  if (!(depthMm > 0 && depthMm < Infinity)) return noAnswer("depth-not-positive");
  if (!(guessMm < Infinity && depthMm <= triesMax * guessMm && withinMm >= 1)) {
    return noAnswer("plumbing-guess");
  }
  const steps: PlumbingStep[] = [];
  let settingMm = guessMm;
  let sizeMm = guessMm;
  let beenTooDeep = false;
  for (;;) {
    const offMm = settingMm - depthMm;
    if (Math.abs(offMm) <= withinMm) {
      return answer([...steps, { settingMm, sign: "shows its mark", moveMm: 0 }]);
    }
    beenTooDeep ||= offMm > 0;
    if (beenTooDeep) sizeMm /= 2;
    const moveMm = offMm > 0 ? -sizeMm : sizeMm;
    steps.push({ settingMm, sign: offMm > 0 ? "lies flat" : "goes under", moveMm });
    settingMm += moveMm;
  }
}

/**
 * Pull that stays on the float for plumbing: the two smallest of its lock shot, all else taken off.
 *
 * @returns pull [g]; 0 for a float that rubbers or a stop knot hold
 */
export function plumbingLockPullG(shot: readonly PlacedShot[], water: Water): number {
  return shot
    .filter(({ role }) => role === "lock")
    .map(({ massG, metal }) => pullG(massG, metal, water))
    .sort((a, b) => a - b)
    .slice(0, 2)
    .reduce((sum, pull) => sum + pull, 0);
}

/**
 * The lightest plummet that takes the float under.
 *
 * @param keptPullG pull left on the float while plumbing [g], see `plumbingLockPullG`
 * @returns mass in air [g]
 */
export function lightestPlummetG(float: Float, keptPullG: number, metal: Metal, water: Water): number {
  return Math.max(0, pullToSinkG(float, keptPullG, water)) / pullShare(metalDensityKgM3[metal], water);
}

/** A weight clipped to the hook to find the depth. */
export interface Plummet {
  readonly massG: number;
  readonly metal: Metal;
}

/** The plummet to use for a float. */
export interface PlummetChoice {
  /** Lightest in the box that takes the float under; none where none does. */
  readonly plummet: Plummet | undefined;
  /** Lightest of the metal asked for that would do [g]. */
  readonly neededG: number;
}

/**
 * The lightest plummet in the box that will do, as a heavy one sinks into a soft bed.
 *
 * @param keptPullG pull left on the float while plumbing [g]
 * @param metal what a new plummet would be made of
 * @returns the choice, with a warning where no plummet in the box takes the float under
 */
export function choosePlummet(
  float: Float,
  keptPullG: number,
  box: readonly Plummet[],
  metal: Metal,
  water: Water,
): Answer<PlummetChoice> {
  const bad = box.find(({ massG }) => !(massG > 0 && massG < Infinity));
  if (bad) return noAnswer("plummet-weight");
  const neededG = lightestPlummetG(float, keptPullG, metal, water);
  const byWeight = [...box].sort((a, b) => a.massG - b.massG);
  const plummet = byWeight.find(
    ({ massG, metal }) => massG > lightestPlummetG(float, keptPullG, metal, water),
  );
  if (plummet) return answer({ plummet, neededG });
  const heaviestG = byWeight.at(-1)?.massG ?? 0;
  return answer({ plummet, neededG }, [warning("plummet-too-light", { heaviestG, neededG })]);
}

/** How far the hook goes deeper at a time without a plummet, and comes up again off the bed [mm]. */
export const feelStepMm = 100;
export const bedRaiseLowMm = 20;
export const bedRaiseHighMm = 50;

/** One run down the swim: the hook set for this depth, and whether the float was pulled down. */
export interface FeelingStep {
  readonly settingMm: number;
  readonly pulledDown: boolean;
}

/** The bed found without a plummet in running water. */
export interface FeltBed {
  readonly runs: readonly FeelingStep[];
  /** Raised 2–5 cm off the first setting that was pulled down [mm]. */
  readonly fishFromMm: number;
  readonly fishToMm: number;
}

/**
 * Runs that find the bed of running water with the rig itself: deeper by one step a run until the float is pulled
 * down, or shallower while it is, which is when the lowest shot touches; then raised 2–5 cm.
 *
 * @param depthMm the depth there is [mm]
 * @param lowestShotMm distance of the lowest shot from the hook [mm]; 0 where there is none below the float
 */
export function feelForBed(
  depthMm: number,
  lowestShotMm: number,
  guessMm = firstGuessMm,
  stepMm = feelStepMm,
): Answer<FeltBed> {
  if (!(depthMm > 0 && depthMm < Infinity)) return noAnswer("depth-not-positive");
  const wayMm = Math.abs(depthMm + lowestShotMm - guessMm);
  if (!(guessMm > 0 && lowestShotMm >= 0 && stepMm > 0 && wayMm <= triesMax * stepMm)) {
    return noAnswer("plumbing-guess");
  }
  const run = (settingMm: number): FeelingStep => ({
    settingMm,
    pulledDown: settingMm >= depthMm + lowestShotMm,
  });
  const runs = [run(guessMm)];
  const direction = runs[0]!.pulledDown ? -stepMm : stepMm;
  while (runs.at(-1)!.pulledDown === runs[0]!.pulledDown) runs.push(run(guessMm + runs.length * direction));
  const foundMm = Math.min(...runs.filter(({ pulledDown }) => pulledDown).map(({ settingMm }) => settingMm));
  return answer({ runs, fishFromMm: foundMm - bedRaiseHighMm, fishToMm: foundMm - bedRaiseLowMm });
}
