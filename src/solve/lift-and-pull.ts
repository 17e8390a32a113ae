import { type Answer, answer } from "../core/finding.ts";
import { bitePull, hardestStepG } from "../core/float/bite.ts";
import type { LiftAndPull } from "../model/in-water.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { sameShot } from "./same-shot.ts";

/** How fast a fish rises with the bait [m/s]. From memory. */
export const fishRiseMs = 0.2;

/** Rise over which a growing weight is felt as one knock, a quarter of a second at that pace [mm]. Our own choice. */
export const knockMm = 50;

/** One for each way in which the same shot finds room; none for a rig whose shot cannot be gathered or spread. */
export function liftAndPull(solved: SolvedRig, depth: SolvedDepth): Answer<readonly LiftAndPull[]> {
  const { rig, hookAndBaitPullG } = solved;
  const float = { float: rig.float, loadG: depth.pullG + hookAndBaitPullG, water: rig.conditions };
  const ways = sameShot(rig, depth);
  const highestMm = Math.max(0, ...ways.flatMap(({ shot }) => shot.map(({ fromHookMm }) => fromHookMm)));
  const liftMm = Math.min(2 * highestMm, depth.depthMm, depth.draughtMm + depth.floatToHookMm);
  const found: LiftAndPull[] = [];
  for (const { arrangement, own, shot } of ways) {
    const steps = bitePull(shot, hookAndBaitPullG, float, liftMm, fishRiseMs);
    if (!steps.ok) return steps;
    found.push({ arrangement, own, steps: steps.value, hardestStepG: hardestStepG(steps.value, knockMm) });
  }
  return answer(found);
}
