import { type Answer, answer, noAnswer } from "../finding.ts";
import type { Attachment } from "../float/float.ts";
import { power } from "../power.ts";
import type { G, Ms } from "../units.ts";
import { gravityMs2 } from "../units.ts";
import { fluidOf } from "../water/drag.ts";
import type { Water } from "../water/water.ts";

/** A float that is held back against the flow. */
export interface HeldFloat {
  /** Drag coefficient × frontal area of its part under water when it stands upright. */
  readonly dragAreaCm2: number;
  /** Load it carries, weighed in water. */
  readonly loadG: G;
  /** Further pull that takes its tip under. */
  readonly tipPullG: G;
}

/**
 * Share by which a float may be held back before it goes under: how much slower than it runs free; 1 where it may be
 * stopped, 0 where it may not be held at all.
 *
 * Held by its foot, where the load hangs too, the flow lays its tip over downstream until the turning of lift and drag
 * about the foot balance, and pushes square to the leaning float, so part of the push goes down. With both in the
 * middle of the part under water, drag D upright and lean ψ: `(load + D·cos²ψ·sinψ)·sinψ = D·cos²ψ`, and
 * `D·cos²ψ·sinψ` goes down. It goes under at `sin²ψ = tip/(load + tip)`, that is at a drag of
 * `√tip·(load + tip)^1.5 / load`. Held by its top its foot swings out, the same part lifts it, and it never does.
 *
 * Sums of our own from the cross-flow principle (Hoerner); no measurements are known to us.
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
  const dragG = (Math.sqrt(float.tipPullG) * power(float.loadG + float.tipPullG, 1.5)) / float.loadG;
  const mayPassMs = Math.sqrt(dragG / upright(float, water));
  if (mayPassMs >= paceMs) return answer(1);
  return answer(Math.max(0, 1 - (paceMs - mayPassMs) / freePaceMs));
}

/** Drag of the upright float at 1 m/s, weighed [g]. */
function upright(float: HeldFloat, water: Water): number {
  const areaM2 = float.dragAreaCm2 * 1e-4;
  return (0.5 * fluidOf(water).densityGMm3 * 1e6 * areaM2 * 1000) / gravityMs2;
}
