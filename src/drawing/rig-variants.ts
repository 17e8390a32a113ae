import type { SolvedDepth, SolvedRig } from "../solve/solved.ts";
import { lineShot } from "./rig-words.ts";

/** The rig as it is set, or the same rig with its float moved on the line. */
export const rigVariants = ["set", "over depth", "up in the water"] as const;
export type RigVariant = (typeof rigVariants)[number];

/** Bare line that stays between the highest shot and a float that is moved down [mm]. */
const leastBareMm = 100;

/**
 * The depth with the float moved on the line, which moves no shot below it. Over depth: so far that the lowest shot
 * comes to rest on the bed (in running water, where that would drag the float under, as far as only the bait
 * does). Up in the water: the bait at half depth, or as near to it as the highest shot allows.
 */
export function moveFloat({ rig }: SolvedRig, depth: SolvedDepth, variant: RigVariant): SolvedDepth {
  switch (variant) {
    case "set":
      return depth;
    case "over depth": {
      const step =
        rig.water === "still"
          ? depth.depthGuide.find((one) => one.shotOnBed.length > 0)
          : depth.depthGuide.findLast((one) => one.state === "rests on the bed");
      const tipShowingMm = step?.tipShowingMm ?? depth.tipShowingMm;
      return {
        ...depth,
        tipShowingMm,
        draughtMm: depth.draughtMm + depth.tipShowingMm - tipShowingMm,
        ...setTo(depth, step?.overdepthMm ?? depth.overdepthMm),
      };
    }
    case "up in the water": {
      const highestMm = Math.max(0, ...lineShot(depth).map((shot) => shot.fromHookMm));
      const leastMm = highestMm + leastBareMm + depth.draughtMm - depth.depthMm;
      return {
        ...depth,
        ...setTo(depth, Math.min(depth.overdepthMm, Math.max(-depth.depthMm / 2, leastMm))),
      };
    }
  }
}

/** What was reckoned of the rig in its water holds no longer. */
function setTo(depth: SolvedDepth, overdepthMm: number) {
  const floatToHookMm = depth.floatToHookMm + overdepthMm - depth.overdepthMm;
  return { overdepthMm, floatToHookMm, inWater: undefined };
}
