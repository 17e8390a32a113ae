import { type DepthGuideInput, depthGuide } from "../core/depth/depth-guide.ts";
import type { GuideStep } from "../core/depth/guide-step.ts";
import { type Answer, answer } from "../core/finding.ts";
import { flowGuide } from "../core/flow/flow-guide.ts";
import type { Rig } from "../model/rig.ts";
import { allShot, type GuidedFlow, type SolvedDepth, type SolvedRig } from "../model/solved.ts";
import { fishedShare } from "./flow-figures.ts";
import { flowRig, type SetUp } from "./hanging-rig.ts";

/** The depth guide of a rig made up for a depth, and the stream and the holding back that one for running water is for. */
interface GuideOfDepth {
  readonly steps: readonly GuideStep[];
  readonly guidedFlow?: GuidedFlow;
}

/** Running water is guided through at the first of the rig's paces, its float held back as it is fished. */
export function guideOfDepth(rig: Rig, depth: SetUp, hookAndBaitPullG: number): Answer<GuideOfDepth> {
  const input = guideInput(rig, depth, hookAndBaitPullG);
  if (rig.water === "still") {
    const guide = depthGuide(input);
    return guide.ok ? answer({ steps: guide.value }, guide.findings) : guide;
  }
  const guidedFlow = { paceMs: rig.pacesMs[0] ?? 0, heldBackShare: fishedShare(rig) };
  const guide = flowGuide(input, { rig: flowRig(rig, depth), ...guidedFlow });
  return guide.ok ? answer({ steps: guide.value, guidedFlow }, guide.findings) : guide;
}

function guideInput(rig: Rig, depth: SetUp, hookAndBaitPullG: number): DepthGuideInput {
  return {
    float: rig.float,
    water: rig.conditions,
    depthMm: depth.depthMm,
    shot: allShot(depth),
    hookAndBaitPullG,
    settingMm: rig.overdepthMm,
  };
}

/** Steps of a guide that is drawn through by hand [mm]. */
const drawnThroughMm = 10;

/** The guide of still water in steps small enough to be drawn through by hand. */
export function guideDrawnThrough(
  { rig, hookAndBaitPullG }: SolvedRig,
  depth: SolvedDepth,
): Answer<readonly GuideStep[]> {
  return depthGuide(guideInput(rig, depth, hookAndBaitPullG), drawnThroughMm);
}
