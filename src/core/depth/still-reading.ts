import { cocks } from "../float/cocking.ts";
import type { Float } from "../float/float.ts";
import { loadForTipG, tipShowingMm } from "../float/tip.ts";
import type { G, Mm } from "../units.ts";
import type { Water } from "../water/water.ts";
import type { GuideReading } from "./guide-step.ts";

/** Something that hangs below the float: the bait with its hook, or a shot. */
export interface HangingLoad {
  /** None for hook and bait. */
  readonly size: string | null;
  readonly fromHookMm: Mm;
  /** What it takes off the float once it rests; never below 0. */
  readonly pullG: G;
}

/** A load that comes to rest on the bed as the hook is set deeper. */
interface Resting extends HangingLoad {
  /** Overdepth at which it touches, and from which all its pull is off the float [mm]. */
  readonly touchesMm: Mm;
  readonly restsMm: Mm;
}

/** The float over still water: its tip while all hangs (none where that takes it under), and what reaches the bed. */
export interface StillHang {
  readonly sunk: boolean;
  readonly tipMm: Mm;
  readonly resting: readonly Resting[];
}

/**
 * Where each load touches the bed and where it rests. With the hook set δ too deep and the float risen by r, a load at
 * a from the hook touches once δ − r = a. From there r = δ − a, until all its pull is off; then the float stands still,
 * so the next touches at its own distance plus the rise so far.
 *
 * @param loads from the hook up
 * @param totalPullG everything that hangs from the float [g]
 */
export function stillHang(
  float: Float,
  water: Water,
  loads: readonly HangingLoad[],
  totalPullG: G,
): StillHang {
  const hangingTip = tipShowingMm(float, totalPullG, water);
  const tipMm = hangingTip ?? 0;
  let offG = 0;
  let riseMm = 0;
  const resting = loads.map((load) => {
    const touchesMm = load.fromHookMm + riseMm;
    offG += load.pullG;
    riseMm = (tipShowingMm(float, totalPullG - offG, water) ?? 0) - tipMm;
    return { ...load, touchesMm, restsMm: load.fromHookMm + riseMm };
  });
  return { sunk: hangingTip === null, tipMm, resting };
}

/** What the float says in still water with the hook set so far beyond the depth [mm]. */
export function stillReading(float: Float, water: Water, hang: StillHang, overdepthMm: Mm): GuideReading {
  const { riseMm, touching } = restAt(hang.resting, overdepthMm);
  const shotOnBed = touching.flatMap(({ size }) => size ?? []);
  if (hang.sunk && riseMm <= 0) return { state: "drags under", tipShowingMm: null, shotOnBed };
  const showingMm = hang.tipMm + riseMm;
  if (!cocks(float, loadForTipG(float, showingMm, water), water)) {
    return { state: "lies flat", tipShowingMm: null, shotOnBed };
  }
  return { state: overdepthMm < 0 ? "hangs" : "rests on the bed", tipShowingMm: showingMm, shotOnBed };
}

/** Rise of the float at an overdepth [mm], and what touches the bed there. */
function restAt(resting: readonly Resting[], overdepthMm: Mm) {
  const last = resting.findLast(({ touchesMm }) => touchesMm <= overdepthMm);
  const riseMm = last ? Math.min(overdepthMm, last.restsMm) - last.fromHookMm : 0;
  const touching = resting.filter(({ fromHookMm }) => last && fromHookMm <= last.fromHookMm);
  return { riseMm, touching };
}
