import type { HangPoint } from "../../core/flow/line-balance.ts";
import { first } from "../../core/lists.ts";
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
 * How a rig in running water hangs as it is drawn: in the first of its paces, run free, or held back where that is what
 * the rig is for; none in still water, and where the rig's hanging was not reckoned.
 */
export function drawnHang({ rig }: SolvedRig, { inWater }: SolvedDepth): FlowFigure | undefined {
  const share = rig.heldBackShare ?? 0;
  return inWater?.flow.find((hang) => hang.paceMs === rig.pacesMs[0] && hang.heldBackShare === share);
}

/** Shape of the line in the current; upright in still water, and where the rig's hanging was not reckoned. */
export function lineShape(solved: SolvedRig, depth: SolvedDepth): LineShape {
  const points = drawnHang(solved, depth)?.shape;
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
export function asDrawn(solved: SolvedRig, depth: SolvedDepth): SolvedDepth {
  if (solved.rig.water === "still") return depth;
  const hang = drawnHang(solved, depth);
  const offBedMm = hang ? hang.offBedMm : startOf(depth).hookOffBedMm;
  return { ...depth, overdepthMm: offBedMm > 0 ? -offBedMm : lyingMm(hang?.shape ?? []) };
}

const startOf = ({ depthGuide }: SolvedDepth) => depthGuide.find(({ advice }) => advice === "start-here")!;

/** How much line lies on the bed. */
function lyingMm([hook, next]: readonly HangPoint[]): number {
  return hook && next && hook.depthMm === next.depthMm ? next.fromHookMm : 0;
}
