import { type Answer, answer, noAnswer, warning } from "../finding.ts";
import { cocks } from "../float/cocking.ts";
import type { Float } from "../float/float.ts";
import { loadForTipG, pullToSinkG, tipShowingMm } from "../float/tip.ts";
import type { LockGroups } from "../loading/loading.ts";
import { type Metal, metalDensityKgM3, pullShare, type Shot } from "../tackle/shot.ts";
import type { G, Mm } from "../units.ts";
import type { Water } from "../water/water.ts";

/** First guess at a depth [mm]. Common practice, no source. */
export const firstGuessMm = 1000;

/** Nobody reads a tip on the water closer than this [mm]. Common practice, no source. */
const plumbedWithinMm = 5;

/** Moves are made in whole steps of this [mm], as hands make them, until they are smaller than it. */
const handStepMm = 10;

/**
 * How far a float is moved at a time by who comes from shallow water [mm]: by larger moves it is taken past the depth, where
 * the tip looks nearly right for long. Common practice, no source.
 */
export const plumbStepMm = 50;

/** Tries after which a first guess or a step was too small to search with. */
const triesMax = 100;

/** What the float says with a plummet on the hook. */
const plumbingSigns = [
  "goes under",
  "stands too low",
  "shows its mark",
  "stands too high",
  "lies flat",
] as const;
type PlumbingSign = (typeof plumbingSigns)[number];

/** A float as it is plumbed with. */
export interface PlumbedFloat {
  readonly float: Float;
  readonly water: Water;
  /** Tip that the rig shows when it is fished [mm]. */
  readonly markMm: Mm;
  /** Pull of the shot that stay on the float [g]. */
  readonly keptPullG: G;
}

/** One try: the hook set for this depth, what the float says, and the move to the next try (deeper > 0). */
export interface PlumbingStep {
  readonly settingMm: Mm;
  readonly sign: PlumbingSign;
  readonly moveMm: Mm;
}

/**
 * What the float says with the hook set so much too deep. With the plummet on the bed and the line tight the tip shows
 * its mark and what is set too deep, until the line goes slack and only the shot kept on the float pull at it: they
 * stand it up, or they do not and it falls over.
 *
 * @param offMm how much too deep the hook is set, below 0 too shallow [mm]
 * @param withinMm how near to the mark counts as right [mm]
 */
export function plumbingSign(plumbed: PlumbedFloat, offMm: Mm, withinMm = plumbedWithinMm): PlumbingSign {
  const { float, water, markMm } = plumbed;
  if (markMm + offMm <= 0) return "goes under";
  const tipMm = Math.min(markMm + offMm, slackTipMm(plumbed));
  if (!cocks(float, loadForTipG(float, tipMm, water), water)) return "lies flat";
  if (Math.abs(offMm) <= withinMm) return "shows its mark";
  return offMm > 0 ? "stands too high" : "stands too low";
}

/** The tip that shows once the line is slack and nothing but the shot that stay on the float pull at it [mm]. */
export const slackTipMm = ({ float, keptPullG, water }: Omit<PlumbedFloat, "markMm">): Mm =>
  tipShowingMm(float, keptPullG, water) ?? 0;

/** By how much the tip says that the hook is set too deep [mm]; missing where it does not say how much. */
function offByTipMm(plumbed: PlumbedFloat, sign: PlumbingSign, offMm: Mm): Mm | undefined {
  const isTight = plumbed.markMm + offMm < slackTipMm(plumbed);
  return sign === "stands too low" || (sign === "stands too high" && isTight) ? offMm : undefined;
}

const tooShallow: readonly PlumbingSign[] = ["goes under", "stands too low"];

/**
 * The tries that find a depth with a plummet. Until the float first stands too high or lies flat the hook goes deeper by
 * the whole guess; from then on each move is half the last. Once the tip stands too low or too high on a tight line, it says itself
 * how far the float is to be moved.
 *
 * @param depthMm the depth there is [mm]
 * @param guessMm first setting [mm]
 * @param withinMm how near the last setting must be [mm]
 */
export function plumbingSteps(
  plumbed: PlumbedFloat,
  depthMm: Mm,
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
  while (steps.length < 2 * triesMax) {
    const offMm = settingMm - depthMm;
    const sign = plumbingSign(plumbed, offMm, withinMm);
    if (sign === "shows its mark") return answer([...steps, { settingMm, sign, moveMm: 0 }]);
    const deeper = tooShallow.includes(sign);
    beenTooDeep ||= !deeper;
    if (beenTooDeep) sizeMm = half(sizeMm);
    const readMm = offByTipMm(plumbed, sign, offMm);
    const moveMm = readMm === undefined ? (deeper ? sizeMm : -sizeMm) : -readMm;
    steps.push({ settingMm, sign, moveMm });
    settingMm += moveMm;
  }
  return noAnswer("plumbing-guess");
}

function half(sizeMm: Mm): Mm {
  const halfMm = sizeMm / 2;
  return halfMm < handStepMm ? halfMm : handStepMm * Math.floor(halfMm / handStepMm);
}

/**
 * Lock shot that stay on the float for plumbing, one on either side of its eye, so that it keeps its place on the line:
 * the lightest of each group, as the less stays on the plainer a float shows that it is set too deep, and none has to
 * go to the other side when the rest of the lock is put on.
 *
 * @returns none for a float that rubbers or a stop knot hold
 */
export function keptForPlumbing<S extends Shot>({ below, above }: LockGroups<S>): LockGroups<S> {
  const lightest = (group: readonly S[]) => group.toSorted((a, b) => a.massG - b.massG).slice(0, 1);
  return { below: lightest(below), above: lightest(above) };
}

/**
 * The lightest plummet that takes the float under.
 *
 * @param keptPullG pull left on the float while plumbing [g], see `keptForPlumbing`
 * @returns mass in air [g]
 */
export function lightestPlummetG(float: Float, keptPullG: G, metal: Metal, water: Water): number {
  return Math.max(0, pullToSinkG(float, keptPullG, water)) / pullShare(metalDensityKgM3[metal], water);
}

/** A weight clipped to the hook to find the depth. */
export interface Plummet {
  readonly massG: G;
  readonly metal: Metal;
}

/** The plummet to use for a float. */
interface PlummetChoice {
  /** Lightest in the box that takes the float under; none where none does. */
  readonly plummet: Plummet | undefined;
  /** Lightest of the metal asked for that would do [g]. */
  readonly neededG: G;
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
  keptPullG: G,
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
