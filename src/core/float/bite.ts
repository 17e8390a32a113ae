import { type Answer, answer, noAnswer } from "../finding.ts";
import { isZeroOrMore } from "../flow/hanging-rig.ts";
import { entry } from "../lists.ts";
import type { G, Mm, Ms, S } from "../units.ts";
import type { Water } from "../water/water.ts";
import type { Float } from "./float.ts";
import { liftMm as tipRiseMm } from "./tip.ts";

/** A shot on the line as a fish feels it. */
export interface FeltShot {
  /** Weight in water. */
  readonly pullG: G;
  readonly fromHookMm: Mm;
}

/** The float as its tip answers. */
interface BiteFloat {
  readonly float: Float;
  /** All that hangs from it, weighed in water. */
  readonly loadG: G;
  readonly water: Water;
}

/** One centimetre of lift. */
export interface BiteStep {
  readonly liftMm: Mm;
  /** When the fish is there, from the moment it moves. */
  readonly timeS: S;
  /** What the fish carries of the rig, bait and hook included [g]. */
  readonly feltG: G;
  /** How far the tip has come up. */
  readonly tipRiseMm: Mm;
}

/**
 * What a fish feels, and what the tip shows, when it takes the bait straight up beside the line.
 *
 * Bait and hook are off the float at once. A shot hangs on where it was until the fish is as far above it as the line
 * from hook to shot is long, that is at twice the shot's distance from the hook; from there on the fish carries it.
 * So a group of shot comes onto the fish all at once, and the same weight opened out comes on bit by bit. The tip
 * comes up by as much float as displaces the weight taken off. Slow lift: drag and inertia of the shot are left out.
 *
 * @param baitAndHookG weight in water of bait and hook
 * @param liftMm how far the fish rises, followed centimetre by centimetre
 * @param riseMs how fast it rises [m/s], above 0
 * @returns an error `bite-measure` for a lift, rise or load that cannot be
 */
export function bitePull(
  shot: readonly FeltShot[],
  baitAndHookG: G,
  { float, loadG, water }: BiteFloat,
  liftMm: Mm,
  riseMs: Ms,
): Answer<readonly BiteStep[]> {
  if (!(isZeroOrMore(liftMm) && riseMs > 0 && loadG > 0)) return noAnswer("bite-measure");
  const steps = Array.from({ length: Math.floor(liftMm / 10) + 1 }, (_, i) => {
    const lift = 10 * i;
    const carried = shot.filter((one) => 2 * one.fromHookMm <= lift);
    const feltG = baitAndHookG + carried.reduce((sum, one) => sum + one.pullG, 0);
    return {
      liftMm: lift,
      timeS: lift / 1000 / riseMs,
      feltG,
      tipRiseMm: tipRiseMm(float, loadG, Math.min(loadG, Math.max(0, feltG)), water),
    };
  });
  return answer(steps);
}

/**
 * How hard a bite comes: the most that what the fish feels grows by while it rises by so much [g].
 *
 * @param withinMm whole centimetres [mm]
 */
export function hardestStepG(steps: readonly BiteStep[], withinMm: Mm): number {
  const back = Math.round(withinMm / 10);
  return steps.reduce(
    (most, { feltG }, i) => Math.max(most, feltG - entry(steps, Math.max(0, i - back)).feltG),
    0,
  );
}
