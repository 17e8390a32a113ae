import type { Mm } from "../units.ts";
import { hangingFrom, type LineTop } from "./line-balance.ts";
import { paceAtMmS } from "./profile.ts";
import { root } from "./root.ts";
import { type Stream, settle, towOf } from "./settle.ts";

const paceWithinMmS = 0.05;
/** A float that runs free is seldom slower than this share of the surface, and another setting seldom changes it more. */
const seldomSlowerShare = 0.8;
const seldomChangedShare = 0.05;

/**
 * Pace of a float that runs free [mm/s]: nothing pushes it along or holds it back.
 *
 * @param lengthMm line from its eye to the hook
 * @param nearMmS a pace that it is thought to be near to
 */
export function freePaceMmS(stream: Stream, lengthMm: Mm, nearMmS?: number): number {
  return unpushedMmS(stream, (floatMmS) => settle(stream, floatMmS, lengthMm), nearMmS);
}

/** The line as it is set, its hook held at a depth, below a float that runs free there: it may end above or below the float. */
export function freeLineFrom(stream: Stream, hookDepthMm: Mm): LineTop {
  const { balance, rig } = stream;
  const end = { kind: "length", lengthMm: rig.floatToHookMm } as const;
  const lineAt = (floatMmS: number) => balance.topOf(hangingFrom(hookDepthMm), towOf(stream, floatMmS), end);
  return lineAt(unpushedMmS(stream, lineAt));
}

/** Pace of a float that nothing pushes along or holds back [mm/s], by the line that hangs below it at each pace. */
function unpushedMmS(stream: Stream, lineAt: (floatMmS: number) => LineTop, nearMmS?: number): number {
  const { surfaceMmS } = stream;
  const push = (floatMmS: number) => pushUn(stream, floatMmS, lineAt(floatMmS));
  const [low, high] =
    nearMmS === undefined
      ? [seldomSlowerShare * surfaceMmS, surfaceMmS]
      : [(1 - seldomChangedShare) * nearMmS, Math.min((1 + seldomChangedShare) * nearMmS, surfaceMmS)];
  const [atLow, atHigh] = [push(low), push(high)];
  return atLow > 0 && atHigh < 0
    ? root(push, low, high, paceWithinMmS, atLow, atHigh)
    : root(push, 0, surfaceMmS, paceWithinMmS);
}

/** Push along the flow on a float and on the line that hangs below it at this pace [µN]. */
function pushUn({ rig, balance, surfaceMmS }: Stream, floatMmS: number, line: LineTop): number {
  const halfDragArea = 0.5 * balance.fluid.densityGMm3 * rig.floatDragAreaCm2 * 100;
  const past = paceAtMmS(rig.draughtMm / 2, rig.depthMm, surfaceMmS) - floatMmS;
  return halfDragArea * Math.abs(past) * past + line.pushUn;
}

/** Line by which the float is moved down and up, as shares of what hangs below it, to see how its pace changes with it. */
const shorterShare = 0.3;
const longerShare = 0.5;

/**
 * Pace of a float that runs free, by the line from its eye to the hook [mm/s]. It changes little and evenly with it, so a
 * parabola through three settings tells it for all that a rig is set to.
 *
 * @param freeMmS its pace as it is set
 */
export function freePaceBySetting(stream: Stream, freeMmS: number): (lengthMm: Mm) => number {
  const { floatToHookMm } = stream.rig;
  const [shorter, longer] = [-shorterShare * floatToHookMm, longerShare * floatToHookMm];
  const slope = (movedMm: Mm) => (freePaceMmS(stream, floatToHookMm + movedMm, freeMmS) - freeMmS) / movedMm;
  const [slopeShorter, slopeLonger] = [slope(shorter), slope(longer)];
  const bend = (slopeLonger - slopeShorter) / (longer - shorter);
  return (lengthMm) => {
    const movedMm = lengthMm - floatToHookMm;
    return freeMmS + movedMm * (slopeShorter + bend * (movedMm - shorter));
  };
}
