import { type Answer, answer } from "../core/finding.ts";
import type { FlowRig } from "../core/flow/line-balance.ts";
import { neededLoadShare, tooLightPaceMs } from "../core/flow/too-light.ts";

/** How far the current may lift the bait of a float that runs free [mm]. Common practice, no source. */
export const mayLiftMm = 200;

/** From which pace a rig is too light, and what load would do in its own paces. */
export interface TooLight {
  /** Null where no pace that is fished lifts the bait so far. */
  readonly paceMs: number | null;
  /** Load as a multiple of the rig's own shot; 1 where that does, null where no load of shot would. */
  readonly needed: readonly { readonly paceMs: number; readonly loadShare: number | null }[];
}

/** Takes some tenths of a second: for a build, not for a page that answers each key. */
export function tooLight(rig: FlowRig, pacesMs: readonly number[]): Answer<TooLight> {
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
