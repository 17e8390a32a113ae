import { type Answer, answer } from "../core/finding.ts";
import type { FlowRig } from "../core/flow/line-balance.ts";
import { neededLoadShare, tooLightPaceMs } from "../core/flow/too-light.ts";
import type { Ms } from "../core/units.ts";
import type { TooLight } from "../model/in-water.ts";

/** How far the current may lift the bait of a float that runs free [mm]. Common practice, no source. */
export const mayLiftMm = 200;

/** Takes some tenths of a second: for a build, not for a page that answers each key. */
export function tooLight(rig: FlowRig, pacesMs: readonly Ms[]): Answer<TooLight> {
  const limit = tooLightPaceMs(rig, 0, mayLiftMm);
  if (!limit.ok) return limit;
  const needed: { paceMs: number; loadShare: number | null }[] = [];
  for (const paceMs of pacesMs) {
    const light = limit.value !== null && paceMs >= limit.value;
    const share = light ? neededLoadShare(rig, paceMs, 0, mayLiftMm) : answer(1);
    if (!share.ok) return share;
    needed.push({ paceMs, loadShare: share.value });
  }
  return answer({ paceMs: limit.value, needed });
}
