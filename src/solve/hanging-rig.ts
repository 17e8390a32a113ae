import { floatDragAreaCm2 } from "../core/float/float-drag.ts";
import type { HangingRig } from "../core/flow/hanging-rig.ts";
import type { FlowRig } from "../core/flow/line-balance.ts";
import type { Body } from "../core/sink/body-fall.ts";
import type { Rig } from "../model/rig.ts";
import { allShot, type SolvedDepth } from "../model/solved.ts";

/** What a rig made up for a depth must be known by for its line to be hung. */
export type SetUp = Pick<SolvedDepth, "depthMm" | "draughtMm" | "floatToHookMm" | "lineShot" | "lockShot">;

/** What hangs below the float, as the sums of water and line take it. */
export function hangingRig(rig: Rig, depth: SetUp): HangingRig {
  const { depthMm, draughtMm, floatToHookMm } = depth;
  const { massG, densityKgM3, fallMs } = rig.bait;
  const bait: Body = { massG, densityKgM3, ...(fallMs !== undefined && { fallMs }) };
  return {
    shot: allShot(depth),
    floatToHookMm,
    draughtMm,
    depthMm,
    mainLineDiameterMm: rig.mainLine.diameterMm,
    hookLineDiameterMm: rig.hookLine.diameterMm,
    hookLengthMm: rig.hookLengthMm,
    bait,
    hookMassG: rig.hook.massG,
    water: rig.conditions,
  };
}

/** The same with what the water finds of the float. */
export function flowRig(rig: Rig, depth: SetUp): FlowRig {
  return {
    ...hangingRig(rig, depth),
    floatDragAreaCm2: floatDragAreaCm2(rig.float.profile, depth.draughtMm),
  };
}
