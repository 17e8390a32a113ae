import { type Answer, answer, noAnswer } from "./finding.ts";
import { isZeroOrMore } from "./hanging-rig.ts";

/** A shot on the line as a fish feels it. */
export interface FeltShot {
  /** Weight in water. */
  readonly pullG: number;
  readonly fromHookMm: number;
}

/** The float as its tip answers. */
export interface BiteFloat {
  readonly tipDiameterMm: number;
  /** Length of even tip below the water line that can still come up. */
  readonly tipBelowMm: number;
}

/** One centimetre of lift. */
export interface BiteStep {
  readonly liftMm: number;
  /** When the fish is there, from the moment it moves. */
  readonly timeS: number;
  /** What the fish carries of the rig, bait and hook included [g]. */
  readonly feltG: number;
  /** How far the tip has come up. */
  readonly tipRiseMm: number;
}

/**
 * What a fish feels, and what the tip shows, when it takes the bait straight up beside the line.
 *
 * Bait and hook are off the float at once. A shot hangs on where it was until the fish is as far above it as the line
 * from hook to shot is long, that is at twice the shot's distance from the hook; from there on the fish carries it.
 * So a group of shot comes onto the fish all at once, and the same weight opened out comes on bit by bit. The tip
 * comes up by `weight taken off ÷ (water × area of the tip)`, as far as there is tip to come. Slow lift: drag and
 * inertia of the shot are left out.
 *
 * @param baitAndHookG weight in water of bait and hook
 * @param liftMm how far the fish rises, followed centimetre by centimetre
 * @param riseMs how fast it rises [m/s], above 0
 * @returns an error `bite-measure` for a lift, rise or tip that cannot be
 */
export function bitePull(
  shot: readonly FeltShot[],
  baitAndHookG: number,
  float: BiteFloat,
  liftMm: number,
  riseMs: number,
  waterDensityKgM3: number,
): Answer<readonly BiteStep[]> {
  const sound =
    isZeroOrMore(liftMm) && riseMs > 0 && float.tipDiameterMm > 0 && isZeroOrMore(float.tipBelowMm);
  if (!sound) return noAnswer("bite-measure");
  const tipGPerMm = waterDensityKgM3 * 1e-6 * (Math.PI / 4) * float.tipDiameterMm ** 2;
  const steps = Array.from({ length: Math.floor(liftMm / 10) + 1 }, (_, i) => {
    const lift = 10 * i;
    const carried = shot.filter((one) => 2 * one.fromHookMm <= lift);
    const feltG = baitAndHookG + carried.reduce((sum, one) => sum + one.pullG, 0);
    return {
      liftMm: lift,
      timeS: lift / 1000 / riseMs,
      feltG,
      tipRiseMm: Math.min(float.tipBelowMm, Math.max(0, feltG) / tipGPerMm),
    };
  });
  return answer(steps);
}

/** Greatest jump in what the fish feels between one centimetre and the next [g]: how hard a bite comes. */
export function hardestStepG(steps: readonly BiteStep[]): number {
  return steps.reduce(
    (most, step, i) => (i > 0 ? Math.max(most, step.feltG - steps[i - 1]!.feltG) : most),
    0,
  );
}
