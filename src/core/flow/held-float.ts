import { type Answer, answer, noAnswer } from "../finding.ts";
import type { Attachment } from "../float/float.ts";
import type { G, Ms } from "../units.ts";
import { gravityMs2 } from "../units.ts";
import { fluidOf } from "../water/drag.ts";
import type { Water } from "../water/water.ts";
import { root } from "./root.ts";

/** A float that is held back against the flow. */
export interface HeldFloat {
  /** Drag coefficient × frontal area of its part under water when it stands upright. */
  readonly dragAreaCm2: number;
  /** Load it carries, weighed in water. */
  readonly loadG: G;
  /** Further pull that takes its tip under. */
  readonly tipPullG: G;
}

/** What the flow does to a held float. */
interface HeldBack {
  /** How far it leans from upright. */
  readonly leanDeg: number;
  /** Push of the flow downwards, weighed; below 0 where it lifts the float. */
  readonly pushedDownG: G;
  readonly goesUnder: boolean;
}

/**
 * A held float in water that runs past it.
 *
 * Held by its foot, where the load hangs too, nothing but its own lift keeps it upright: the flow lays its tip over
 * downstream until the turning of lift and drag about the foot balance, and pushes square to the leaning float, so
 * part of the push goes down. Held by its top, its foot swings out downstream, and the same part lifts it. With the
 * lift and the drag both in the middle of the part under water, drag D upright and lean ψ:
 * by the foot `(load + D·cos²ψ·sinψ)·sinψ = D·cos²ψ`, by the top `load·sinψ = D·cos²ψ`; downward or upward goes
 * `D·cos²ψ·sinψ`.
 *
 * A reckoning of our own from the cross-flow principle (Hoerner); no measurements are known to us.
 *
 * @param pastMs speed of the water past the float [m/s]
 */
export function heldBack(float: HeldFloat, attachment: Attachment, pastMs: Ms, water: Water): HeldBack {
  const dragG = upright(float, water) * pastMs * pastMs;
  const byTop = attachment === "top and bottom";
  const turning = (lean: number) => {
    const across = dragG * Math.cos(lean) ** 2;
    const down = byTop ? 0 : across * Math.sin(lean);
    return (float.loadG + down) * Math.sin(lean) - across;
  };
  const lean = root(turning, 0, Math.PI / 2, 1e-10);
  const along = dragG * Math.cos(lean) ** 2 * Math.sin(lean);
  return {
    leanDeg: (lean * 180) / Math.PI,
    pushedDownG: byTop ? -along : along,
    goesUnder: !byTop && along >= float.tipPullG,
  };
}

/**
 * Share by which a float may be held back before it goes under: how much slower than it runs free; 1 where it may be
 * stopped, 0 where it may not be held at all.
 *
 * By the foot it goes under at `sin²ψ = tip/(load + tip)`, that is at a drag of `√tip·(load + tip)^1.5 / load`; by the
 * top it never does.
 *
 * @param paceMs surface pace [m/s]
 * @param freePaceMs pace at which it runs free [m/s], no more than the surface's
 * @returns share 0–1; an error `held-float` for a float that carries nothing or has no tip
 */
export function holdBackShareMax(
  float: HeldFloat,
  attachment: Attachment,
  paceMs: Ms,
  freePaceMs: Ms,
  water: Water,
): Answer<number> {
  const sound = float.loadG > 0 && float.tipPullG > 0 && float.dragAreaCm2 > 0;
  if (!(sound && freePaceMs >= 0 && paceMs >= freePaceMs)) return noAnswer("held-float");
  if (attachment === "top and bottom") return answer(1);
  const dragG = (Math.sqrt(float.tipPullG) * (float.loadG + float.tipPullG) ** 1.5) / float.loadG;
  const mayPassMs = Math.sqrt(dragG / upright(float, water));
  if (mayPassMs >= paceMs) return answer(1);
  return answer(Math.max(0, 1 - (paceMs - mayPassMs) / freePaceMs));
}

/** Drag of the upright float at 1 m/s, weighed [g]. */
function upright(float: HeldFloat, water: Water): number {
  const areaM2 = float.dragAreaCm2 * 1e-4;
  return (0.5 * fluidOf(water).densityGMm3 * 1e6 * areaM2 * 1000) / gravityMs2;
}
