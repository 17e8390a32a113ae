import { lyingMm } from "../../core/depth/lying.ts";
import type { HangPoint } from "../../core/flow/line-balance.ts";
import { first } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { WaterKind } from "../../core/water/water.ts";
import type { FlowFigure } from "../../model/in-water.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";

/** How far downstream of the float's eye the line is, by its distance from the hook [mm]. */
export type LineLean = (fromHookMm: number) => number;

/** The line below the float as it is drawn. */
export interface LineShape {
  readonly lean: LineLean;
  /** How far up from the hook a place on the line is, by its distance from the hook along it [mm]. */
  readonly upMm: (fromHookMm: number) => number;
}

/** A line that hangs straight down. */
export const upright: LineShape = { lean: () => 0, upMm: (fromHookMm) => fromHookMm };

/**
 * How a rig in running water hangs as it is drawn: as its guide has it fished, so that drawing and guide tell one height of
 * the bait; none in still water, and where the rig's hanging was not reckoned.
 */
export function drawnHang({ inWater, guidedFlow }: SolvedDepth): FlowFigure | undefined {
  return inWater?.flow.find(
    ({ paceMs, heldBackShare }) =>
      paceMs === guidedFlow?.paceMs && heldBackShare === guidedFlow.heldBackShare,
  );
}

/** Shape of the line in the current; upright in still water, and where the rig's hanging was not reckoned. */
export function lineShape(depth: SolvedDepth): LineShape {
  const points = drawnHang(depth)?.shape;
  if (!points) return upright;
  const hookDepthMm = first(points).depthMm;
  return {
    lean: (fromHookMm) => between(points, fromHookMm, ({ xMm }) => xMm),
    upMm: (fromHookMm) => between(points, fromHookMm, ({ depthMm }) => hookDepthMm - depthMm),
  };
}

function between(points: readonly HangPoint[], fromHookMm: number, value: (at: HangPoint) => number): number {
  const above = points.findIndex((point) => point.fromHookMm >= fromHookMm);
  if (above <= 0) return value(points.at(above)!);
  const [a, b] = [points[above - 1]!, points[above]!];
  const share = (fromHookMm - a.fromHookMm) / (b.fromHookMm - a.fromHookMm || 1);
  return value(a) + share * (value(b) - value(a));
}

/**
 * The depth with its overdepth read off the drawing: in running water the length of line says nothing of where the
 * bait is, so that below 0 its hook hangs so far off the bed, and above 0 so much of its line lies there.
 */
export function asDrawn({ rig }: SolvedRig, depth: SolvedDepth): SolvedDepth {
  if (rig.water === "still") return depth;
  const hang = drawnHang(depth);
  const offBedMm = hang ? hang.offBedMm : startOf(depth).hookOffBedMm;
  return { ...depth, overdepthMm: offBedMm > 0 ? -offBedMm : laidMm(hang?.shape ?? []) };
}

const startOf = ({ depthGuide }: SolvedDepth) => depthGuide.find(({ advice }) => advice === "start-here")!;

/** How much line of a hang lies on the bed. */
function laidMm([hook, next]: readonly HangPoint[]): number {
  return hook && next && hook.depthMm === next.depthMm ? next.fromHookMm : 0;
}

/** A shot at the end of what lies on the bed lies there, too [mm]. */
const atEndMm = 0.5;

/**
 * How much line is drawn on the bed [mm], below 0 how far the hook is off it: in still water what the depth leaves over
 * below the float, at the least up to the highest shot that the guide has there.
 */
export function drawnLyingMm(water: WaterKind, depth: SolvedDepth): Mm {
  const { overdepthMm, depthGuide, lineShot } = depth;
  if (water === "flowing" || overdepthMm <= 0) return overdepthMm;
  const { shotOnBed = [] } = depthGuide.find((step) => step.overdepthMm === overdepthMm) ?? {};
  const highestMm = lineShot[shotOnBed.length - 1]?.fromHookMm ?? 0;
  return Math.min(overdepthMm, Math.max(lyingMm(depth), highestMm)) + atEndMm;
}
