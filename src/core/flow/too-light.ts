import { type Answer, answer } from "../finding.ts";
import type { Mm, Ms, Share } from "../units.ts";
import { freeLineFrom } from "./free-pace.ts";
import { hangInCurrent } from "./hang.ts";
import type { FlowRig } from "./line-balance.ts";
import { streamOf } from "./settle.ts";

/** Fastest pace looked at [m/s]; nobody fishes a float in more. */
const fastestPaceMs = 3;
/** Heaviest load looked at, as a multiple of the rig's own. */
const heaviestLoadShare = 30;

/** Depth of the hook in still water [mm]. */
const stillMm = (rig: FlowRig): Mm => Math.min(rig.draughtMm + rig.floatToHookMm, rig.depthMm);

/** Height by which the current lifts the hook above where it hangs in still water [mm]. */
function liftMm(rig: FlowRig, paceMs: Ms, heldBackShare: Share): Answer<number> {
  const hang = hangInCurrent(rig, paceMs, heldBackShare);
  if (!hang.ok) return hang;
  return answer(stillMm(rig) - hang.value.hookDepthMm);
}

/**
 * Whether the current lifts the hook of a float that runs free by more than it may, as all but always: a line that is held
 * by its hook at the height where it just may be would end below the float, so that the hook must come up further. With
 * the hook's height given, the pace of the float is all that must be looked for, not the height for each pace.
 */
function seemsBeyond(rig: FlowRig, paceMs: Ms, mayLiftMm: Mm): boolean {
  const line = freeLineFrom(streamOf(rig, paceMs), stillMm(rig) - mayLiftMm);
  return line.end.depthMm > rig.draughtMm;
}

/**
 * Slowest surface pace [m/s] in which the current lifts the bait by more than it may, to 0.01 m/s; null where no pace
 * up to 3 m/s does.
 */
export function tooLightPaceMs(rig: FlowRig, heldBackShare: Share, mayLiftMm: Mm): Answer<number | null> {
  const lifts = (paceMs: Ms) => liftMm(rig, paceMs, heldBackShare);
  const still = lifts(0);
  if (!still.ok) return still;
  return answer(
    firstBeyond(
      [0, fastestPaceMs],
      (paceMs) => beyond(lifts(paceMs), mayLiftMm),
      (paceMs) => seemsBeyond(rig, paceMs, mayLiftMm),
    ),
  );
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
  const loaded = (share: Share) => ({
    ...rig,
    shot: rig.shot.map((one) => ({ ...one, massG: one.massG * share })),
  });
  const lifts = (share: Share) => liftMm(loaded(share), paceMs, heldBackShare);
  const own = lifts(1);
  if (!own.ok) return own;
  if (own.value <= mayLiftMm) return answer(1);
  return answer(
    firstBeyond(
      [1, heaviestLoadShare],
      (share) => !beyond(lifts(share), mayLiftMm),
      (share) => !seemsBeyond(loaded(share), paceMs, mayLiftMm),
    ),
  );
}

const beyond = (lift: Answer<number>, mayLiftMm: Mm) => lift.ok && lift.value > mayLiftMm;

/** How near to its turn a question is answered. */
const within = 0.01;

/**
 * Where a question that is answered no at the first place turns to yes, by halving; null where it is answered no at the
 * second one, too. It is asked only next to where one that is sooner answered turns, unless the two answers differ there.
 */
function firstBeyond(
  [low, high]: readonly [number, number],
  isBeyond: (x: number) => boolean,
  seemsBeyond: (x: number) => boolean,
): number | null {
  const [no, yes] = halved(low, high, seemsBeyond);
  const isTurned = isBeyond(yes);
  if (isTurned && (no === low || !isBeyond(no))) return yes;
  if (!(yes === high ? isTurned : isBeyond(high))) return null;
  return halved(low, high, isBeyond)[1];
}

function halved(low: number, high: number, isBeyond: (x: number) => boolean): readonly [number, number] {
  let no = low;
  let yes = high;
  while (yes - no > within) {
    const middle = (no + yes) / 2;
    if (isBeyond(middle)) yes = middle;
    else no = middle;
  }
  return [no, yes];
}
