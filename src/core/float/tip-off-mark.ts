import { type Finding, warning } from "../finding.ts";
import { pullG, type Shot } from "../tackle/shot.ts";
import type { G, Mm } from "../units.ts";
import type { Water } from "../water/water.ts";
import type { Float } from "./float.ts";
import { loadForTipG, tipShowingMm } from "./tip.ts";

/** A tip so far from the mark that is wanted is wrong to the eye [mm]: twice what a card tells it to. Our own choice. */
const tipOffMarkMm = 10;
/** A shot that brings the tip nearer by less than this is not worth a word [mm]. */
const worthMm = 5;

/** The tip of a made-up rig, and what could be added to it. */
interface MarkedTip {
  readonly float: Float;
  readonly water: Water;
  /** Pull of everything that hangs from the float [g]. */
  readonly loadPullG: G;
  readonly wantedMm: Mm;
  /** As far as the skin of the water may hold the tip off its place [mm]. */
  readonly uncertaintyMm: Mm;
  /** What is left in the tub. */
  readonly left: readonly Shot[];
  /** What the scale has besides. */
  readonly forSale: readonly Shot[];
}

/**
 * Whether the tip shows what is wanted, within a centimetre and what the skin of the water may do; else the shot that
 * brings it nearest, from the tub or, where that is clearly better, from the shop.
 *
 * @returns nothing, or one warning
 */
export function checkTipMark(tip: MarkedTip): readonly Finding[] {
  const { float, water, loadPullG, wantedMm, uncertaintyMm, left, forSale } = tip;
  const tipMm = tipShowingMm(float, loadPullG, water) ?? 0;
  const offMm = Math.abs(tipMm - wantedMm);
  if (offMm <= Math.max(tipOffMarkMm, uncertaintyMm)) return [];
  const nearest = (shots: readonly Shot[]) =>
    shots
      .map((shot) => {
        const thenMm = tipShowingMm(float, loadPullG + pullG(shot.massG, shot.metal, water), water) ?? 0;
        return { size: shot.size, thenMm, offMm: thenMm > 0 ? Math.abs(thenMm - wantedMm) : Infinity };
      })
      .sort((a, b) => a.offMm - b.offMm)[0] ?? { size: "", thenMm: 0, offMm: Infinity };
  const [add, buy] = [nearest(left), nearest(forSale)];
  const told = ({ size, thenMm }: typeof add) => ({ tipMm, wantedMm, size, thenMm });
  if (buy.offMm + worthMm <= Math.min(add.offMm, offMm)) return [warning("tip-off-mark-buy", told(buy))];
  if (add.offMm + worthMm <= offMm) return [warning("tip-off-mark-add", told(add))];
  const missingG = loadForTipG(float, wantedMm, water) - loadPullG;
  return [warning("tip-off-mark", { tipMm, wantedMm, missingG })];
}
