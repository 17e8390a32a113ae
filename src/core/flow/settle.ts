import { entry } from "../lists.ts";
import { power } from "../power.ts";
import type { Mm, Ms, Share } from "../units.ts";
import {
  type Balance,
  balanceOf,
  type FlowRig,
  type HangingLine,
  hangingFrom,
  type LineStart,
} from "./line-balance.ts";
import { paceAtMmS, profileExponent } from "./profile.ts";
import { root } from "./root.ts";

/** A rig in one pace of the surface, made ready for many hangs. */
export interface Stream {
  readonly rig: FlowRig;
  readonly balance: Balance;
  readonly surfaceMmS: number;
}

export function streamOf(rig: FlowRig, paceMs: Ms): Stream {
  return { rig, balance: balanceOf(rig), surfaceMmS: paceMs * 1000 };
}

/**
 * Height of the hook at or below which its bait is on the bed [mm]. A maggot is some 5 mm thick and gravel is no
 * smoother. Our own assumption, no source.
 */
export const bedTouchMm = 10;

/** Height of a hook over the bed as it is told: 0 where its bait is on it. */
export const offBedMm = (heightMm: Mm): number => (heightMm <= bedTouchMm ? 0 : heightMm);

/** Water past the float's frame at a depth [mm/s]. */
export function towOf({ rig, surfaceMmS }: Stream, floatMmS: number) {
  const bedMm = rig.depthMm;
  return (depthMm: Mm) => paceAtMmS(depthMm, bedMm, surfaceMmS) - floatMmS;
}

/**
 * Heights are looked for by the pace of the water there, as a share of the surface's: all that the stream does to a
 * line changes evenly with it, while by height it changes without bound at the bed.
 */
const heightMm = ({ rig }: Stream, paceShare: Share) => rig.depthMm * power(paceShare, 1 / profileExponent);

const searchStep = 0.08;
const paceShareWithin = 1e-6;
const restWithin = 1e-6;

/**
 * The line of a float that moves at a given pace, in balance. Near the bed two or three balances can fit one length: the
 * slow water there lets the bait trail, the quicker water above takes it ahead. A rig that sinks in below its float
 * comes to the highest of them first and stays there, so that is the one given. Where no height of the hook fits, line
 * is left over and lies on the bed.
 *
 * @param floatMmS pace of the float over the bed
 * @param lengthMm line from the float's eye to the hook
 */
export function settle(stream: Stream, floatMmS: number, lengthMm: Mm): HangingLine {
  const { rig, balance } = stream;
  const tow = towOf(stream, floatMmS);
  const whole = { kind: "length", lengthMm } as const;
  const from = (paceShare: Share) => hangingFrom(rig.depthMm - heightMm(stream, paceShare));
  const lineAt = (paceShare: Share) => balance.lineUp(from(paceShare), tow, whole);
  const eyeOff = (paceShare: Share) => balance.topOf(from(paceShare), tow, whole).end.depthMm - rig.draughtMm;
  // No hook hangs lower than straight below its float.
  const lowest = power(Math.max(0, 1 - (rig.draughtMm + lengthMm) / rig.depthMm), profileExponent);
  let offAbove: number | undefined;
  for (let upper = 1; upper > lowest; ) {
    const lower = Math.max(lowest, upper - searchStep);
    const off = eyeOff(lower);
    if (off >= 0) return lineAt(root(eyeOff, lower, upper, paceShareWithin, off, offAbove));
    upper = lower;
    offAbove = off;
  }
  return lowest > 0 ? lineAt(lowest) : layDown(stream, tow, lengthMm);
}

/** Lays so much of the line on the bed, the hook first, that what still hangs reaches from there to the eye. */
function layDown({ rig, balance }: Stream, towMmS: (depthMm: Mm) => number, lengthMm: Mm): HangingLine {
  const whole = { kind: "length", lengthMm } as const;
  const from = (resting: number) => restingStart(balance.placesMm, lengthMm, rig.depthMm, resting);
  const eyeOff = (resting: number) => balance.topOf(from(resting), towMmS, whole).end.depthMm - rig.draughtMm;
  const most = 2 * balance.placesMm.length;
  let on = 1;
  while (on < most && eyeOff(on) < 0) on++;
  return balance.lineUp(from(root(eyeOff, on - 1, on, restWithin)), towMmS, whole);
}

/**
 * Where a line starts of which more and more rests on the bed: up to 1 the bed takes over the weight of hook and bait,
 * up to 2 it takes the line to the first shot, up to 3 that shot's weight, and so on.
 */
function restingStart(placesMm: readonly Mm[], lengthMm: Mm, depthMm: Mm, resting: number): LineStart {
  const highest = Math.min(Math.floor(resting / 2), placesMm.length - 1);
  const place = entry(placesMm, highest);
  const further = resting - 2 * highest;
  if (further <= 1) return { depthMm, lyingMm: place, carriedShare: further };
  const next = placesMm[highest + 1] ?? lengthMm;
  return { depthMm, lyingMm: place + (further - 1) * (next - place), carriedShare: 1 };
}
