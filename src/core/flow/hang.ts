import { type Answer, answer, noAnswer } from "../finding.ts";
import { first } from "../lists.ts";
import { paceMostMs } from "../quantity.ts";
import type { Mm, Ms, Share } from "../units.ts";
import { freePaceBySetting, freePaceMmS } from "./free-pace.ts";
import { isZeroOrMore, wrongMeasure } from "./hanging-rig.ts";
import type { FlowRig, HangPoint } from "./line-balance.ts";
import { offBedMm, type Stream, settle, streamOf } from "./settle.ts";

/** How a rig hangs in running water. */
export interface FlowHang {
  /** Pace at the surface. */
  readonly paceMs: Ms;
  /** By how much slower the float goes than it would run free. */
  readonly heldBackShare: Share;
  /** Pace of the float over the bed. */
  readonly floatPaceMs: Ms;
  /** Bait downstream of the float; below 0 where it trails behind. */
  readonly leadMm: Mm;
  /** Depth of the hook below the surface. */
  readonly hookDepthMm: Mm;
  /** Height of the hook over the bed; 0 where its bait is on it. */
  readonly offBedMm: Mm;
  /** Line at the float from upright, positive where it slants downstream going down. */
  readonly angleAtFloatDeg: number;
  /** From the hook up to the float's eye, x downstream of the float; line that lies on the bed is part of it. */
  readonly shape: readonly HangPoint[];
}

/** A rig in a stream, with the pace at which its float runs free. */
export interface Trotted {
  readonly stream: Stream;
  readonly freeMmS: number;
  /** The same with another length of line from its eye to the hook. */
  freeSetToMmS(lengthMm: Mm): number;
}

/**
 * A rig made ready to be held back in one pace.
 *
 * @param paceMs pace of the surface [m/s], from 0 to `paceMostMs`
 * @returns an error `rig-measure` or `flow-pace` for what no rig or river can have
 */
export function trot(rig: FlowRig, paceMs: Ms): Answer<Trotted> {
  const wrong = wrongMeasure(rig) ?? (isZeroOrMore(rig.floatDragAreaCm2) ? undefined : "floatDragAreaCm2");
  if (wrong !== undefined) return noAnswer("rig-measure", { measure: wrong });
  if (!(paceMs >= 0 && paceMs <= paceMostMs)) return noAnswer("flow-pace", { paceMs, heldBackShare: 0 });
  const stream = streamOf(rig, paceMs);
  const freeMmS = freePaceMmS(stream, rig.floatToHookMm);
  let bySetting: ((lengthMm: Mm) => number) | undefined;
  return answer({
    stream,
    freeMmS,
    freeSetToMmS: (lengthMm) => {
      bySetting ??= freePaceBySetting(stream, freeMmS);
      return bySetting(lengthMm);
    },
  });
}

/**
 * How a rig hangs when its float runs free, is held back, or is stopped.
 *
 * A float that runs free goes at the pace at which the push on it and on the rig cancel: the rig hangs in slower water
 * and holds it back a little. Held back by a share, it goes that share slower; at 1 it is stopped. Left out: lift
 * on the float, wind, eddies, the pull of the rod's line other than along the surface.
 *
 * @param heldBackShare 0 runs free, 1 is stopped
 * @returns an error `flow-pace` for a share that cannot be
 */
export function hangHeld({ stream, freeMmS }: Trotted, heldBackShare: Share): Answer<FlowHang> {
  const { rig, surfaceMmS } = stream;
  const paceMs = surfaceMmS / 1000;
  if (!(heldBackShare >= 0 && heldBackShare <= 1)) return noAnswer("flow-pace", { paceMs, heldBackShare });
  const floatMmS = (1 - heldBackShare) * freeMmS;
  const line = settle(stream, floatMmS, rig.floatToHookMm);
  const { points, end: eye } = line;
  const hook = first(points);
  return answer({
    paceMs,
    heldBackShare,
    floatPaceMs: floatMmS / 1000,
    leadMm: hook.xMm - eye.xMm,
    hookDepthMm: hook.depthMm,
    offBedMm: offBedMm(rig.depthMm - hook.depthMm),
    angleAtFloatDeg: (Math.atan2(line.pushUn, line.weightUn) * 180) / Math.PI,
    shape: points.map((point) => ({ ...point, xMm: point.xMm - eye.xMm })),
  });
}

/** `hangHeld` of a rig by itself. */
export function hangInCurrent(rig: FlowRig, paceMs: Ms, heldBackShare: Share): Answer<FlowHang> {
  const trotted = trot(rig, paceMs);
  return trotted.ok ? hangHeld(trotted.value, heldBackShare) : trotted;
}
