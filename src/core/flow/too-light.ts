import { type Answer, answer } from "../finding.ts";
import type { Mm, Ms, Share } from "../units.ts";
import { hangInCurrent } from "./hang.ts";
import type { FlowRig } from "./line-balance.ts";

/** Fastest pace looked at [m/s]; nobody fishes a float in more. */
const fastestPaceMs = 3;
/** Heaviest load looked at, as a multiple of the rig's own. */
const heaviestLoadShare = 30;

/** Height by which the current lifts the hook above where it hangs in still water [mm]. */
function liftMm(rig: FlowRig, paceMs: Ms, heldBackShare: Share): Answer<number> {
  const hang = hangInCurrent(rig, paceMs, heldBackShare);
  if (!hang.ok) return hang;
  return answer(Math.min(rig.draughtMm + rig.floatToHookMm, rig.depthMm) - hang.value.hookDepthMm);
}

/**
 * Slowest surface pace [m/s] in which the current lifts the bait by more than it may, to 0.01 m/s; null where no pace
 * up to 3 m/s does.
 */
export function tooLightPaceMs(rig: FlowRig, heldBackShare: Share, mayLiftMm: Mm): Answer<number | null> {
  const lifts = (paceMs: Ms) => liftMm(rig, paceMs, heldBackShare);
  const fastest = lifts(fastestPaceMs);
  if (!fastest.ok) return fastest;
  if (fastest.value <= mayLiftMm) return answer(null);
  return answer(firstBeyond(0, fastestPaceMs, 0.01, (paceMs) => beyond(lifts(paceMs), mayLiftMm)));
}

/**
 * Least load, as a multiple of every shot's weight, that keeps the bait within a lift in this pace; 1 where the rig does
 * so as it is, null where thirty times its shot would not.
 */
export function neededLoadShare(
  rig: FlowRig,
  paceMs: Ms,
  heldBackShare: Share,
  mayLiftMm: Mm,
): Answer<number | null> {
  const lifts = (share: Share) => {
    const shot = rig.shot.map((one) => ({ ...one, massG: one.massG * share }));
    return liftMm({ ...rig, shot }, paceMs, heldBackShare);
  };
  const own = lifts(1);
  if (!own.ok) return own;
  if (own.value <= mayLiftMm) return answer(1);
  if (beyond(lifts(heaviestLoadShare), mayLiftMm)) return answer(null);
  return answer(firstBeyond(1, heaviestLoadShare, 0.01, (share) => !beyond(lifts(share), mayLiftMm)));
}

const beyond = (lift: Answer<number>, mayLiftMm: Mm) => lift.ok && lift.value > mayLiftMm;

/** Where a question that is answered no at `low` and yes at `high` turns, by halving. */
function firstBeyond(low: number, high: number, within: number, isBeyond: (x: number) => boolean): number {
  let no = low;
  let yes = high;
  while (yes - no > within) {
    const middle = (no + yes) / 2;
    if (isBeyond(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}
