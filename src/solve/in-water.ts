import { feedAndBait } from "../core/feed/feed-and-bait.ts";
import { type Answer, answer } from "../core/finding.ts";
import type { HangingRig } from "../core/flow/hanging-rig.ts";
import { first } from "../core/lists.ts";
import { terminalFallMs } from "../core/sink/body-fall.ts";
import type { FloatOnWater } from "../core/sink/chain-of-rig.ts";
import { landingsOf, type Sink, sinkOfRig } from "../core/sink/sink-of-rig.ts";
import type { Share } from "../core/units.ts";
import type { InWater, Sister } from "../model/in-water.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { ballDown } from "./feed-in-water.ts";
import { inFlow } from "./flow-figures.ts";
import { flowRig } from "./hanging-rig.ts";
import { liftAndPull } from "./lift-and-pull.ts";
import { sisterOf } from "./same-shot.ts";
import { tooLight } from "./too-light.ts";

/**
 * How a rig made up for one depth sinks in still water and hangs in its paces. Takes some ten milliseconds, so the sums
 * of `solveRig` do without it.
 *
 * @param heldBackShares shares by which the float is held back; where none are named, those that are told
 */
export function solveInWater(
  solved: SolvedRig,
  depth: SolvedDepth,
  heldBackShares?: readonly Share[],
): Answer<InWater> {
  const { rig, floatMassG } = solved;
  const { floatDragAreaCm2: dragAreaCm2, ...hanging } = flowRig(rig, depth);
  const feed = terminalFallMs(hanging.bait, rig.conditions);
  if (!feed.ok) return feed;
  const float = { massG: floatMassG, dragAreaCm2 };
  const sink = sinkEachWay(rig, hanging, float);
  if (!sink.ok) return sink;
  const sister = sinkOfSister(rig, depth, hanging, float);
  if (!sister.ok) return sister;
  const ball = ballDown(depth.depthMm, rig.pacesMs, rig.conditions);
  if (!ball.ok) return ball;
  const lift = liftAndPull(solved, depth);
  if (!lift.ok) return lift;
  const common = {
    sink: sink.value,
    ...(sister.value && { sister: sister.value }),
    ball: ball.value,
    lift: lift.value,
    assumed: { floatDragAreaCm2: dragAreaCm2, floatMassG, feedFallMs: feed.value },
  };
  if (rig.water === "still") {
    const against = feedAndBait(first(sink.value), feed.value);
    if (!against.ok) return against;
    return answer({ ...common, againstFeed: against.value, flow: [], holdBackMax: [] });
  }
  const flow = inFlow(solved, depth, feed.value, heldBackShares);
  if (!flow.ok) return flow;
  return answer({ ...common, flow: flow.value.figures, holdBackMax: flow.value.holdBackMax });
}

function sinkEachWay(rig: Rig, hanging: HangingRig, float: FloatOnWater): Answer<readonly Sink[]> {
  const sink: Sink[] = [];
  for (const landing of landingsOf(rig.float)) {
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
  const sink = sinkEachWay(rig, { ...hanging, shot: [...sister.shot, ...depth.lockShot] }, float);
  return sink.ok ? answer({ ...sister, sink: sink.value }) : sink;
}

/** A solved rig with the water's part at every depth, and what was found on the way: for a build. */
export function withWater(solved: SolvedRig): Answer<SolvedRig> {
  const depths = solved.depths.map((depth) => ({ depth, water: solveFully(solved, depth) }));
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

function solveFully(solved: SolvedRig, depth: SolvedDepth): Answer<InWater> {
  const { rig } = solved;
  const water = solveInWater(solved, depth);
  if (!water.ok || rig.water === "still") return water;
  const light = tooLight(flowRig(rig, depth), rig.pacesMs);
  return light.ok ? answer({ ...water.value, tooLight: light.value }, water.findings) : light;
}
