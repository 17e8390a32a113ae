import { type Answer, answer, noAnswer } from "../finding.ts";
import type { Mm, Ms, S, Share } from "../units.ts";
import { isZeroOrMore, wrongMeasure } from "./hanging-rig.ts";
import { type Balance, balanceOf, type FlowRig, type HangingLine, type HangPoint } from "./line-balance.ts";
import { paceAtMmS } from "./profile.ts";
import { root } from "./root.ts";

/** How a rig hangs in running water. */
export interface FlowHang {
  /** Pace at the surface. */
  readonly paceMs: Ms;
  readonly heldBackShare: Share;
  /** Pace of the float over the bed. */
  readonly floatPaceMs: Ms;
  /** Bait downstream of the float; below 0 where it trails behind. */
  readonly leadMm: Mm;
  /** Depth of the hook below the surface. */
  readonly hookDepthMm: Mm;
  readonly touchesBed: boolean;
  /** Line to add so that the hook comes to the wanted height; null where no length of line does it. */
  readonly extraDepthMm: Mm | null;
  /** Line at the float from upright, positive where it slants downstream going down. */
  readonly angleAtFloatDeg: number;
  /** From the hook up to the float's eye, x downstream of the float. */
  readonly shape: readonly HangPoint[];
}

/** Line beyond the depth, as a share of it, that is not worth setting: the line lies along the flow. */
const longestShare = 1;
const depthWithinMm = 0.01;
const paceWithinMmS = 0.05;

/**
 * How a rig hangs when its float runs free, is held back, or is stopped.
 *
 * A float that runs free goes at the pace at which the push on it and on the rig cancel: the rig hangs in slower water
 * and holds it back a little. Held back by a share, it goes that share slower; at 1 it is stopped. Left out: lift
 * on the float, wind, eddies, the pull of the rod's line other than along the surface.
 *
 * @param paceMs pace of the surface [m/s], 0 or more
 * @param heldBackShare 0 runs free, 1 is stopped
 * @param aboveBedMm height of the hook that `extraDepthMm` is for
 * @returns an error `rig-measure` or `flow-pace` for what no rig or river can have
 */
export function hangInCurrent(
  rig: FlowRig,
  paceMs: Ms,
  heldBackShare: Share,
  aboveBedMm = 0,
): Answer<FlowHang> {
  const wrong = wrongMeasure(rig) ?? (isZeroOrMore(rig.floatDragAreaCm2) ? undefined : "floatDragAreaCm2");
  if (wrong !== undefined) return noAnswer("rig-measure", { measure: wrong });
  if (!isZeroOrMore(paceMs) || !(heldBackShare >= 0 && heldBackShare <= 1)) {
    return noAnswer("flow-pace", { paceMs, heldBackShare });
  }
  const balance = balanceOf(rig);
  const surfaceMmS = paceMs * 1000;
  const floatMmS = (1 - heldBackShare) * freePaceMmS(rig, balance, surfaceMmS);
  const { line, touchesBed } = hangAt(rig, balance, surfaceMmS, floatMmS);
  const eye = line.points.at(-1)!;
  return answer({
    paceMs,
    heldBackShare,
    floatPaceMs: floatMmS / 1000,
    leadMm: -eye.xMm,
    hookDepthMm: line.points[0]!.depthMm,
    touchesBed,
    extraDepthMm: extraDepthMm(rig, balance, surfaceMmS, floatMmS, rig.depthMm - aboveBedMm),
    angleAtFloatDeg: (Math.atan2(line.pushUn, line.weightUn) * 180) / Math.PI,
    shape: line.points.map((point) => ({ ...point, xMm: point.xMm - eye.xMm })),
  });
}

/** Water past the float's frame at a depth. */
function tow(rig: FlowRig, surfaceMmS: S, floatMmS: S) {
  return (depthMm: Mm) => paceAtMmS(depthMm, rig.depthMm, surfaceMmS) - floatMmS;
}

function hangAt(
  rig: FlowRig,
  balance: Balance,
  surfaceMmS: S,
  floatMmS: S,
): { line: HangingLine; touchesBed: boolean } {
  const towMmS = tow(rig, surfaceMmS, floatMmS);
  const lengthMm = rig.floatToHookMm;
  const lineFrom = (hookDepthMm: Mm) => balance.lineUp(hookDepthMm, towMmS, { kind: "length", lengthMm });
  const eyeOff = (hookDepthMm: Mm) => lineFrom(hookDepthMm).points.at(-1)!.depthMm - rig.draughtMm;
  const lowest = rig.draughtMm + lengthMm;
  if (lowest >= rig.depthMm && eyeOff(rig.depthMm) <= 0) {
    // Line is left over: it lies on the bed, and what hangs reaches from there to the eye.
    const end = { kind: "depth", depthMm: rig.draughtMm, longestMm: lengthMm } as const;
    return { line: balance.lineUp(rig.depthMm, towMmS, end), touchesBed: true };
  }
  const hookDepthMm = root(eyeOff, rig.draughtMm - lengthMm, Math.min(lowest, rig.depthMm), depthWithinMm);
  return { line: lineFrom(hookDepthMm), touchesBed: false };
}

/** Pace of a float that runs free [mm/s]. */
function freePaceMmS(rig: FlowRig, balance: Balance, surfaceMmS: S): number {
  const atFloat = paceAtMmS(rig.draughtMm / 2, rig.depthMm, surfaceMmS);
  const halfDragArea = 0.5 * balance.fluid.densityGMm3 * rig.floatDragAreaCm2 * 100;
  const pushUn = (floatMmS: S) => {
    const past = atFloat - floatMmS;
    return halfDragArea * Math.abs(past) * past + hangAt(rig, balance, surfaceMmS, floatMmS).line.pushUn;
  };
  return root(pushUn, 0, surfaceMmS, paceWithinMmS);
}

function extraDepthMm(
  rig: FlowRig,
  balance: Balance,
  surfaceMmS: S,
  floatMmS: S,
  hookDepthMm: Mm,
): number | null {
  const longestMm = (1 + longestShare) * rig.depthMm;
  const line = balance.lineUp(hookDepthMm, tow(rig, surfaceMmS, floatMmS), {
    kind: "depth",
    depthMm: rig.draughtMm,
    longestMm,
  });
  const eye = line.points.at(-1)!;
  return eye.depthMm > rig.draughtMm + 1 ? null : eye.fromHookMm - rig.floatToHookMm;
}
