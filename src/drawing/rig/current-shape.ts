import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";

/** How far downstream of the float's eye the line is, by its distance from the hook [mm]. */
export type LineLean = (fromHookMm: number) => number;

/** A float in running water is drawn held back by half, so that the bait is seen to lead it. */
const heldBackShare = 0.5;

const upright: LineLean = () => 0;

/** How the rig hangs as it is drawn: held back by half in the fastest current that it is for; none in still water. */
export function drawnHang({ rig }: SolvedRig, depth: SolvedDepth) {
  const paceMs = Math.max(...rig.pacesMs);
  return depth.inWater?.flow.find((hang) => hang.paceMs === paceMs && hang.heldBackShare === heldBackShare);
}

/** Shape of the line in the current; upright in still water, and where the rig's hanging was not reckoned. */
export function lineLean(solved: SolvedRig, depth: SolvedDepth): LineLean {
  const points = drawnHang(solved, depth)?.shape;
  if (!points) return upright;
  // Line that lies on the bed is left out of the balance, which then starts where the line meets the bed.
  const lyingMm = depth.floatToHookMm - points.at(-1)!.fromHookMm;
  return (alongMm) => {
    const fromHookMm = alongMm - lyingMm;
    const above = points.findIndex((point) => point.fromHookMm >= fromHookMm);
    if (above <= 0) return points.at(above)!.xMm;
    const [a, b] = [points[above - 1]!, points[above]!];
    const share = (fromHookMm - a.fromHookMm) / (b.fromHookMm - a.fromHookMm || 1);
    return a.xMm + share * (b.xMm - a.xMm);
  };
}
