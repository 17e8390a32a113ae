import { type Answer, answer } from "../core/finding.ts";
import { pullToSinkG } from "../core/float/tip.ts";
import { feedDriftMm, feedUpstreamMm } from "../core/flow/feed-drift.ts";
import { hangInCurrent } from "../core/flow/hang.ts";
import { holdBackShareMax } from "../core/flow/held-float.ts";
import type { FlowRig } from "../core/flow/line-balance.ts";
import type { Ms } from "../core/units.ts";
import type { FlowFigure, HoldBackMax } from "../model/in-water.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";

/** Shares of the pace by which a float is shown held back: run free, half, stopped. */
const heldBackShares = [0, 0.5, 1] as const;

/** One figure for each of the rig's paces and each share held back. */
export function flowFigures(
  rig: Rig,
  { depthMm, overdepthMm }: SolvedDepth,
  flowing: FlowRig,
  feedFallMs: Ms,
): Answer<readonly FlowFigure[]> {
  // The bait is meant to be where the setting puts it: at the bed, or above it by what the rig is set off it.
  const aboveBedMm = Math.max(0, -overdepthMm);
  const figures: FlowFigure[] = [];
  for (const paceMs of rig.pacesMs) {
    const drift = feedDriftMm(paceMs, depthMm, feedFallMs);
    if (!drift.ok) return drift;
    for (const share of heldBackShares) {
      const hang = hangInCurrent(flowing, paceMs, share, aboveBedMm);
      if (!hang.ok) return hang;
      const { leadMm } = hang.value;
      figures.push({ ...hang.value, feedUpstreamMm: feedUpstreamMm(drift.value, { kind: "held", leadMm }) });
    }
  }
  return answer(figures);
}

/** How much holding back the float stands in each of the rig's paces. */
export function holdBackMax(
  { rig, hookAndBaitPullG }: SolvedRig,
  depth: SolvedDepth,
  dragAreaCm2: number,
): Answer<readonly HoldBackMax[]> {
  const loadG = depth.pullG + hookAndBaitPullG;
  const float = { dragAreaCm2, loadG, tipPullG: pullToSinkG(rig.float, loadG, rig.conditions) };
  const shares: HoldBackMax[] = [];
  for (const paceMs of rig.pacesMs) {
    const bottomOnly = holdBackShareMax(float, "bottom", paceMs, rig.conditions);
    if (!bottomOnly.ok) return bottomOnly;
    const topAndBottom = holdBackShareMax(float, "top and bottom", paceMs, rig.conditions);
    if (!topAndBottom.ok) return topAndBottom;
    const own = rig.float.attachment === "top and bottom" ? topAndBottom : bottomOnly;
    shares.push({
      paceMs,
      share: own.value,
      bottomOnlyShare: bottomOnly.value,
      topAndBottomShare: topAndBottom.value,
    });
  }
  return answer(shares);
}
