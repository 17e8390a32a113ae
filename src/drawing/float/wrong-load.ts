import { cocks } from "../../core/float/cocking.ts";
import { tipShowingMm } from "../../core/float/tip.ts";
import { pullG } from "../../core/tackle/shot.ts";
import type { Mm } from "../../core/units.ts";
import { allShot, type ShotEffect, type SolvedDepth, type SolvedRig } from "../../model/solved.ts";
import type { DrawingKit } from "../kit.ts";

/** Shot that are wanting, or too many, and the tip that then shows [mm]; null where the float goes under. */
interface WrongLoad {
  readonly shot: string;
  readonly tipMm: Mm | null;
}

/** A change of the tip that is seen from the bank, and told as another [mm]. */
const seenMm: Mm = 7;
/** Nobody forgets, or pinches on, more of one size than this. */
const mostShot = 3;

/**
 * A load that is seen to be too little or too much while everything hangs: by one shot, else by as few of one size as are
 * seen, the lightest first. Too little by what the rig carries and the float still stands without, too much by what is in
 * its tub. None where nothing of the kind is seen.
 */
export function wrongLoad(
  { rig, hookAndBaitPullG }: SolvedRig,
  depth: SolvedDepth,
  load: "too little" | "too much",
  { words, figures }: DrawingKit,
): WrongLoad | undefined {
  const { float, conditions } = rig;
  const sign = load === "too little" ? -1 : 1;
  const rightG = depth.pullG + hookAndBaitPullG;
  const carried = allShot(depth);
  const mayBe = ({ size, metal }: ShotEffect) =>
    load === "too much"
      ? mostShot
      : carried.filter((shot) => shot.size === size && shot.metal === metal).length;
  const rising = [...depth.shotEffects].sort((a, b) => a.massG - b.massG);
  for (let count = 1; count <= mostShot; count += 1)
    for (const effect of rising) {
      const loadG = rightG + sign * count * pullG(effect.massG, effect.metal, conditions);
      if (count > mayBe(effect) || !cocks(float, loadG, conditions)) continue;
      const tipMm = tipShowingMm(float, loadG, conditions);
      if (sign * (depth.tipShowingMm - (tipMm ?? 0)) < seenMm) continue;
      const shot =
        count === 1
          ? words("drawing.state.one-shot", { size: effect.size })
          : figures.shot(Array.from({ length: count }, () => effect));
      return { shot, tipMm: tipMm || null };
    }
  return undefined;
}
