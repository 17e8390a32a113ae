import { first, last } from "../lists.ts";
import type { Mm, Share } from "../units.ts";
import { freePaceMmS } from "./free-pace.ts";
import type { Trotted } from "./hang.ts";
import { hangingFrom, type LineTop } from "./line-balance.ts";
import { type Stream, settle, towOf } from "./settle.ts";

/** How far from the height that was promised the hook may come to hang [mm]. */
const promisedWithinMm = 20;

/** Line below the float, as a share of the depth, beyond which more of it lies along the flow and is not worth setting. */
const longestShare = 1.5;
const lengthWithinMm = 0.5;
/** Nobody sets a float nearer than to the centimetre: half of one too much or too little must not break the promise [mm]. */
const setWithinMm = 5;
/** A longer line slows its float by some millimetres a second, so that each round takes a digit or two off the error. */
const roundsMax = 8;

/**
 * By how much deeper a rig must be set for its hook to hang at a height, its shot staying where they are on the line.
 *
 * Where the stream takes the hook past that height at once, from well above it down to the bed, no setting keeps it
 * there; a setting that must be kept to the millimetre is none either, nor is one that brings the float down onto its
 * shot or has half as much line again as the water is deep.
 *
 * @param heldBackShare 0 runs free, 1 is stopped
 * @param aboveBedMm height wanted
 * @param reachMm most line below the float that can be cast
 * @returns length [mm], below 0 where it must be set shallower; null where no length of line does it
 */
export function extraDepthMm(
  { stream, freeSetToMmS }: Trotted,
  heldBackShare: Share,
  aboveBedMm: Mm,
  reachMm: Mm,
): number | null {
  const { rig } = stream;
  const hookDepthMm = rig.depthMm - aboveBedMm;
  if (hookDepthMm <= rig.draughtMm) return null;
  const longestMm = Math.min(longestShare * rig.depthMm, reachMm);
  const held = (free: number) => (1 - heldBackShare) * free;
  const lengthFrom = (startMm: Mm, freeOf: (lengthMm: Mm) => number): number | null => {
    let lengthMm = startMm;
    for (let round = 0; round < roundsMax; round++) {
      const eye = lineTo(stream, hookDepthMm, held(freeOf(lengthMm)), longestMm).end;
      if (eye.depthMm > rig.draughtMm + 1) return null;
      const changedMm = Math.abs(eye.fromHookMm - lengthMm);
      lengthMm = eye.fromHookMm;
      if (changedMm < lengthWithinMm) break;
    }
    return lengthMm;
  };
  const nearMm = lengthFrom(rig.floatToHookMm, freeSetToMmS);
  if (nearMm === null) return null;
  const exactly = (lengthMm: Mm) => freePaceMmS(stream, lengthMm, freeSetToMmS(lengthMm));
  const lengthMm = lengthFrom(nearMm, exactly);
  const highestMm = last(stream.balance.placesMm);
  if (lengthMm === null || lengthMm <= highestMm) return null;
  const floatMmS = held(exactly(lengthMm));
  const kept = [lengthMm - setWithinMm, lengthMm + setWithinMm].every((set) => {
    const hungMm = first(settle(stream, floatMmS, set).points).depthMm;
    return Math.abs(hungMm - hookDepthMm) <= promisedWithinMm;
  });
  return kept ? lengthMm - rig.floatToHookMm : null;
}

/** The line from a hook at a depth up to the float's eye, or as far as the longest reaches. */
function lineTo(stream: Stream, hookDepthMm: Mm, floatMmS: number, longestMm: Mm): LineTop {
  const { balance, rig } = stream;
  return balance.topOf(hangingFrom(hookDepthMm), towOf(stream, floatMmS), {
    kind: "depth",
    depthMm: rig.draughtMm,
    longestMm,
  });
}
