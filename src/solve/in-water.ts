import { type Body, terminalFallMs } from "../core/body-fall.ts";
import { type FeedAndBait, feedAndBait } from "../core/feed-and-bait.ts";
import { type Answer, answer } from "../core/finding.ts";
import { floatDragAreaCm2 } from "../core/float-drag.ts";
import { feedDriftMm, feedUpstreamMm } from "../core/flow/feed-drift.ts";
import { type FlowHang, hangInCurrent } from "../core/flow/hang.ts";
import { holdBackShareMax } from "../core/flow/held-float.ts";
import type { HangingRig } from "../core/hanging-rig.ts";
import type { FloatOnWater } from "../core/sink/chain-of-rig.ts";
import { landings, type Sink, sinkOfRig } from "../core/sink/sink-of-rig.ts";
import { pullToSinkG } from "../core/tip.ts";
import type { Rig } from "./rig.ts";
import { type Arrangement, sisterOf } from "./same-shot.ts";
import type { SolvedDepth, SolvedRig } from "./solved.ts";

/** Shares of the pace by which a float is shown held back: run free, half, stopped. */
export const heldBackShares = [0, 0.5, 1] as const;

/** How the rig hangs at one pace, held back by one share. */
export interface FlowFigure extends FlowHang {
  /** Where loose feed must go in to reach the bed below the bait, upstream of the float. */
  readonly feedUpstreamMm: number;
}

/** How a rig sinks and hangs, and what was assumed for it. */
export interface InWater {
  /** One for each way of landing. */
  readonly sink: readonly Sink[];
  /** The same shot strung out where the rig gathers them, in a bulk where it strings them out; where there is such. */
  readonly sister?: Sister;
  /** Loose feed thrown in with the rig, against its bait, in still water; only for still water. */
  readonly againstFeed?: FeedAndBait;
  /** One for each pace and share; empty in still water. */
  readonly flow: readonly FlowFigure[];
  /** For each of the rig's paces, the share by which the float may be held back before it goes under. */
  readonly holdBackMax: readonly { readonly paceMs: number; readonly share: number }[];
  readonly assumed: {
    readonly floatDragAreaCm2: number;
    readonly floatMassG: number;
    /** Steady fall of the loose feed: taken to be that of the hook bait by itself [m/s]. */
    readonly feedFallMs: number;
  };
}

/** How the bait of the same load sinks in the other pattern. */
export interface Sister {
  readonly arrangement: Arrangement;
  readonly sink: readonly Sink[];
}

/**
 * How a rig made up for one depth sinks in still water and hangs in its paces. Takes some milliseconds, so the sums of
 * `solveRig` do without it.
 */
export function solveInWater(solved: SolvedRig, depth: SolvedDepth): Answer<InWater> {
  const { rig } = solved;
  const dragAreaCm2 = floatDragAreaCm2(rig.float.profile, depth.draughtMm);
  const hanging = hangingRig(rig, depth);
  const feed = terminalFallMs(hanging.bait, rig.conditions);
  if (!feed.ok) return feed;
  const feedFallMs = feed.value;

  const float = { massG: solved.floatMassG, dragAreaCm2 };
  const sink = sinkBothWays(hanging, float);
  if (!sink.ok) return sink;
  const sister = sinkOfSister(rig, depth, hanging, float);
  if (!sister.ok) return sister;
  const sinking = { sink: sink.value, ...(sister.value && { sister: sister.value }) };
  const assumed = { floatDragAreaCm2: dragAreaCm2, floatMassG: solved.floatMassG, feedFallMs };
  if (rig.water === "still") {
    const against = feedAndBait(sink.value[0]!, feedFallMs);
    if (!against.ok) return against;
    return answer({ ...sinking, againstFeed: against.value, flow: [], holdBackMax: [], assumed });
  }
  const flow = flowFigures(rig, depth, { ...hanging, floatDragAreaCm2: dragAreaCm2 }, feedFallMs);
  if (!flow.ok) return flow;
  const holdBack = holdBackMax(solved, depth, dragAreaCm2);
  if (!holdBack.ok) return holdBack;
  return answer({ ...sinking, flow: flow.value, holdBackMax: holdBack.value, assumed });
}

function sinkBothWays(hanging: HangingRig, float: FloatOnWater): Answer<readonly Sink[]> {
  const sink: Sink[] = [];
  for (const landing of landings) {
    const one = sinkOfRig({ ...hanging, float }, landing);
    if (!one.ok) return one;
    sink.push(one.value);
  }
  return answer(sink);
}

function sinkOfSister(
  rig: Rig,
  depth: SolvedDepth,
  hanging: HangingRig,
  float: FloatOnWater,
): Answer<Sister | undefined> {
  const sister = sisterOf(rig, depth);
  if (!sister) return answer(undefined);
  const locks = depth.shot.filter(({ role }) => role === "lock");
  const sink = sinkBothWays({ ...hanging, shot: [...sister.shot, ...locks] }, float);
  return sink.ok ? answer({ arrangement: sister.arrangement, sink: sink.value }) : sink;
}

/** What hangs below the float, as the sums of water and line take it. */
export function hangingRig(rig: Rig, depth: SolvedDepth): HangingRig {
  const { massG, densityKgM3, fallMs } = rig.bait;
  const bait: Body = { massG, densityKgM3, ...(fallMs !== undefined && { fallMs }) };
  return {
    shot: depth.shot,
    floatToHookMm: depth.floatToHookMm,
    draughtMm: depth.draughtMm,
    depthMm: depth.depthMm,
    mainLineDiameterMm: rig.mainLine.diameterMm,
    hookLineDiameterMm: rig.hookLine.diameterMm,
    hookLengthMm: rig.hookLengthMm,
    bait,
    hookMassG: rig.hook.massG,
    water: rig.conditions,
  };
}

function flowFigures(
  rig: Rig,
  depth: SolvedDepth,
  flowing: HangingRig & { readonly floatDragAreaCm2: number },
  feedFallMs: number,
): Answer<readonly FlowFigure[]> {
  // The bait is meant to be where the setting puts it: at the bed, or above it by what the rig is set off it.
  const aboveBedMm = Math.max(0, -depth.overdepthMm);
  const figures: FlowFigure[] = [];
  for (const paceMs of rig.pacesMs) {
    const drift = feedDriftMm(paceMs, depth.depthMm, feedFallMs);
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

function holdBackMax(
  { rig, hookAndBaitPullG }: SolvedRig,
  depth: SolvedDepth,
  dragAreaCm2: number,
): Answer<InWater["holdBackMax"]> {
  const loadG = depth.pullG + hookAndBaitPullG;
  const tipPullG = pullToSinkG(rig.float, loadG, rig.conditions);
  const shares: { paceMs: number; share: number }[] = [];
  for (const paceMs of rig.pacesMs) {
    const float = { dragAreaCm2, loadG, tipPullG };
    const share = holdBackShareMax(float, rig.float.attachment, paceMs, rig.conditions);
    if (!share.ok) return share;
    shares.push({ paceMs, share: share.value });
  }
  return answer(shares);
}

/** A solved rig with the water's part at every depth, and what was found on the way. */
export function withWater(solved: SolvedRig): Answer<SolvedRig> {
  const depths = solved.depths.map((depth) => ({ depth, water: solveInWater(solved, depth) }));
  return answer(
    {
      ...solved,
      depths: depths.map(({ depth, water }) => (water.ok ? { ...depth, inWater: water.value } : depth)),
    },
    depths.flatMap(({ water }) =>
      water.findings.map((finding) => ({ ...finding, severity: "warning" as const })),
    ),
  );
}
