import { cocks } from "../../core/float/cocking.ts";
import { isToldAlike, liftMm } from "../../core/float/tip.ts";
import { first } from "../../core/lists.ts";
import type { G, Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedRig, SolvedShot } from "../../model/solved.ts";

/** What a fish that comes up with the bait takes off the float, as far as the lowest shot that hangs. */
interface LiftBite {
  readonly lifted: SolvedShot;
  /** Whether the rig lays shot on the bed, which are off the float already. */
  readonly isLying: boolean;
  /** Tip once hook and bait are off, and once the shot is as well; undefined where the float then falls flat. */
  readonly baitTipMm: Mm;
  readonly tipMm: Mm | undefined;
  /** Whether that is told otherwise than the tip without a bite. */
  readonly isSeen: boolean;
}

/** Shot on the line that lie on the bed as the rig is set. */
export function lyingShot({
  lineShot,
  overdepthMm,
}: Pick<SolvedDepth, "lineShot" | "overdepthMm">): SolvedShot[] {
  return lineShot.filter(({ fromHookMm }) => fromHookMm <= overdepthMm);
}

const sumPullG = (shot: readonly SolvedShot[]): G => shot.reduce((sum, { pullG }) => sum + pullG, 0);

/** A lift bite on a rig in still water; none without a shot on its line. */
export function liftBite({ rig, hookAndBaitPullG }: SolvedRig, depth: SolvedDepth): LiftBite | undefined {
  const { lineShot, tipAsSetMm, pullG, overdepthMm } = depth;
  if (lineShot.length === 0 || rig.water !== "still") return undefined;
  const lying = lyingShot(depth);
  const lifted = lineShot.find((shot) => !lying.includes(shot)) ?? first(lineShot);
  // Where the hook lies on the bed, it is off the float already, and so are the shot that lie there.
  const isBaitOff = overdepthMm > 0 && !lying.includes(lifted);
  const offG = isBaitOff ? sumPullG(lying) + hookAndBaitPullG : 0;
  const loadG = pullG + hookAndBaitPullG - offG;
  const baitG = overdepthMm > 0 ? 0 : hookAndBaitPullG;
  const takenG = baitG + lifted.pullG;
  const tipLess = (takenG: G) => tipAsSetMm + liftMm(rig.float, loadG, takenG, rig.conditions);
  const tipMm = cocks(rig.float, loadG - takenG, rig.conditions) ? tipLess(takenG) : undefined;
  return {
    lifted,
    isLying: lying.length > 0,
    baitTipMm: tipLess(baitG),
    tipMm,
    isSeen: tipMm === undefined || !isToldAlike(tipMm, tipAsSetMm),
  };
}
