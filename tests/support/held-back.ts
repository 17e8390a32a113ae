import type { Attachment } from "../../src/core/float/float.ts";
import type { HeldFloat } from "../../src/core/flow/held-float.ts";
import { type Water, waterDensityKgM3 } from "../../src/core/water/water.ts";

/** What the flow does to a held float. */
interface HeldBack {
  /** How far it leans from upright. */
  readonly leanDeg: number;
  /** Push of the flow downwards, weighed; below 0 where it lifts the float. */
  readonly pushedDownG: number;
  readonly goesUnder: boolean;
}

/**
 * A held float in water that runs past it, by the balance of the turning about what holds it: by the foot
 * `(load + D·cos²ψ·sinψ)·sinψ = D·cos²ψ`, by the top `load·sinψ = D·cos²ψ`.
 */
export function heldBack(float: HeldFloat, attachment: Attachment, pastMs: number, water: Water): HeldBack {
  const dragN = 0.5 * waterDensityKgM3(water) * float.dragAreaCm2 * 1e-4 * pastMs ** 2;
  const dragG = (dragN * 1000) / 9.80665;
  const byTop = attachment === "top and bottom";
  const isTurnedFurther = (lean: number) => {
    const across = dragG * Math.cos(lean) ** 2;
    const down = byTop ? 0 : across * Math.sin(lean);
    return across > (float.loadG + down) * Math.sin(lean);
  };
  let [lean, beyond] = [0, Math.PI / 2];
  for (let i = 0; i < 60; i++) {
    const middle = (lean + beyond) / 2;
    if (isTurnedFurther(middle)) lean = middle;
    else beyond = middle;
  }
  const along = dragG * Math.cos(lean) ** 2 * Math.sin(lean);
  return {
    leanDeg: (lean * 180) / Math.PI,
    pushedDownG: byTop ? -along : along,
    goesUnder: !byTop && along >= float.tipPullG,
  };
}
