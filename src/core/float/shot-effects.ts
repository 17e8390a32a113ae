import { pullG, type Shot } from "../tackle/shot.ts";
import type { G, Mm } from "../units.ts";
import type { Water } from "../water/water.ts";
import { cocks } from "./cocking.ts";
import type { Float } from "./float.ts";
import { tipShowingMm } from "./tip.ts";

/** What one change of load does to the tip. */
export interface TipState {
  readonly load: "too little" | "right" | "too much";
  /** Change of the shot's weight in air [g]. */
  readonly changeG: G;
  /** 0 where the float goes under. */
  readonly tipShowingMm: Mm;
}

/**
 * The three pictures of a float: a shot too few, right, and a shot too many.
 *
 * @param loadPullG pull of everything that hangs from the float [g] when it is right
 * @param shot the shot that is missing or too many
 */
export function tipStates(float: Float, loadPullG: G, shot: Shot, water: Water): readonly TipState[] {
  const shotPullG = pullG(shot.massG, shot.metal, water);
  const state = (load: TipState["load"], sign: number): TipState => ({
    load,
    changeG: sign * shot.massG,
    tipShowingMm: tipShowingMm(float, loadPullG + sign * shotPullG, water) ?? 0,
  });
  return [state("too little", -1), state("right", 0), state("too much", 1)];
}

/** What one shot of a size does to the tip, put on or taken off. */
export interface ShotEffect extends Shot {
  /** Null where one more takes the float under. */
  readonly oneMoreMm: Mm | null;
  /** Null where the float lies flat without it; none for a size that the rig does not carry. */
  readonly oneFewerMm?: Mm | null;
}

/**
 * Tip showing with one more of each shot, and with one fewer of those that the rig carries.
 *
 * @param loadPullG pull of everything that hangs from the float [g]
 * @param carried shot that hang from it
 */
export function shotEffects(
  float: Float,
  loadPullG: G,
  shots: readonly Shot[],
  carried: readonly Shot[],
  water: Water,
): readonly ShotEffect[] {
  return shots.map(({ size, massG, metal }) => {
    const shotPullG = pullG(massG, metal, water);
    const fewerG = loadPullG - shotPullG;
    const oneFewerMm = cocks(float, fewerG, water) ? tipShowingMm(float, fewerG, water) : null;
    const isCarried = carried.some((one) => one.size === size && one.metal === metal);
    return {
      size,
      massG,
      metal,
      oneMoreMm: tipShowingMm(float, loadPullG + shotPullG, water),
      ...(isCarried && { oneFewerMm }),
    };
  });
}
