import { fixedFloatLimitMm } from "../core/depth/rod-reach.ts";
import { type Answer, answer } from "../core/finding.ts";
import { pullToSinkG } from "../core/float/tip.ts";
import { feedDriftMm, meetTheBait } from "../core/flow/feed-drift.ts";
import { hangHeld, type Trotted, trot } from "../core/flow/hang.ts";
import { holdBackShareMax } from "../core/flow/held-float.ts";
import { extraDepthMm } from "../core/flow/set-deeper.ts";
import { rising } from "../core/lists.ts";
import type { Ms, Share } from "../core/units.ts";
import type { FlowFigure, HoldBackMax } from "../model/in-water.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { flowRig } from "./hanging-rig.ts";

/** Held back by a tenth a float is checked a little, as most are fished. Common practice, no source. */
const checkedShare = 0.1;

/** Shares by which every float is shown held back: run free, checked a little, half, stopped. */
const heldBackShares = [0, checkedShare, 0.5, 1];

/** Share by which a rig is held back where it is fished as it is meant. */
export function fishedShare({ heldBackShare }: Rig): number {
  return heldBackShare ?? checkedShare;
}

/** Height over the bed at which a bait is meant to run: 1 to 3 inches off it [mm]. Common practice, no source. */
const runsOffBedMm = 50;

/** What the stream does to a rig at one depth. */
interface InFlow {
  /** One for each of the rig's paces and each share held back. */
  readonly figures: readonly FlowFigure[];
  /** How much holding back the float stands, one for each pace. */
  readonly holdBackMax: readonly HoldBackMax[];
}

/**
 * @param feedFallMs steady fall of loose feed [m/s]
 * @param shares by which the float is held back; where none are named, those that are told
 */
export function inFlow(
  solved: SolvedRig,
  depth: SolvedDepth,
  feedFallMs: Ms,
  shares: readonly Share[] = rising([...heldBackShares, fishedShare(solved.rig)]),
): Answer<InFlow> {
  const figures: FlowFigure[] = [];
  const holdBackMax: HoldBackMax[] = [];
  for (const paceMs of solved.rig.pacesMs) {
    const trotted = trot(flowRig(solved.rig, depth), paceMs);
    if (!trotted.ok) return trotted;
    const ofPace = figuresOf(solved.rig, depth, trotted.value, feedFallMs, shares);
    const most = mostHeldBack(solved, depth, trotted.value);
    if (!ofPace.ok) return ofPace;
    if (!most.ok) return most;
    figures.push(...ofPace.value);
    holdBackMax.push(most.value);
  }
  return answer({ figures, holdBackMax });
}

function figuresOf(
  rig: Rig,
  { depthMm, overdepthMm }: SolvedDepth,
  trotted: Trotted,
  feedFallMs: Ms,
  shares: readonly Share[],
): Answer<readonly FlowFigure[]> {
  const drift = feedDriftMm(trotted.stream.surfaceMmS / 1000, depthMm, feedFallMs);
  if (!drift.ok) return drift;
  const fallS = depthMm / 1000 / feedFallMs;
  // A bait that is set off the bottom is meant to be as far off it.
  const promisedOffBedMm = overdepthMm < 0 ? -overdepthMm : runsOffBedMm;
  const reachMm = fixedFloatLimitMm(rig.rodLengthMm);
  const figures: FlowFigure[] = [];
  for (const share of shares) {
    const hang = hangHeld(trotted, share);
    if (!hang.ok) return hang;
    figures.push({
      ...hang.value,
      promisedOffBedMm,
      extraDepthMm: extraDepthMm(trotted, share, promisedOffBedMm, reachMm),
      feed: meetTheBait(drift.value, fallS, hang.value.floatPaceMs, hang.value.leadMm),
    });
  }
  return answer(figures);
}

function mostHeldBack(
  { rig, hookAndBaitPullG }: SolvedRig,
  depth: SolvedDepth,
  { stream, freeMmS }: Trotted,
): Answer<HoldBackMax> {
  const loadG = depth.pullG + hookAndBaitPullG;
  const float = {
    dragAreaCm2: stream.rig.floatDragAreaCm2,
    loadG,
    tipPullG: pullToSinkG(rig.float, loadG, rig.conditions),
  };
  const paceMs = stream.surfaceMmS / 1000;
  const share = (attachment: "bottom" | "top and bottom") =>
    holdBackShareMax(float, attachment, paceMs, freeMmS / 1000, rig.conditions);
  const [bottomOnly, topAndBottom] = [share("bottom"), share("top and bottom")];
  if (!bottomOnly.ok) return bottomOnly;
  if (!topAndBottom.ok) return topAndBottom;
  const own = rig.float.attachment === "top and bottom" ? topAndBottom : bottomOnly;
  return answer({
    paceMs,
    share: own.value,
    bottomOnlyShare: bottomOnly.value,
    topAndBottomShare: topAndBottom.value,
  });
}
