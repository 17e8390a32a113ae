import { type Float, lengthMm } from "../core/float.ts";
import { hangInCurrent } from "../core/flow/hang.ts";
import type { Profile } from "../core/profile.ts";
import type { SolvedDepth, SolvedRig } from "../solve/solved.ts";

/** How far downstream of the float's eye the line is, by its distance from the hook [mm]. */
export type LineLean = (fromHookMm: number) => number;

/**
 * A rig in running water is drawn held back a little, as it is fished most of the time: enough to see the bait lead
 * the float (common practice, no source).
 */
const heldBackShare = 0.3;

/**
 * Drag coefficient of an upright float: about 1 for a cylinder across a flow between Re 350 and 9000.
 * Source: Wieselsberger 1922 (NACA TN-84): 1.15 at 356, 0.964 at 892, 0.886 at 2270, 1.06 at 9180.
 */
const floatDragCoefficient = 1;

const upright: LineLean = () => 0;

/**
 * Shape of the line in the fastest current that the rig is for; upright in still water, and where no balance is to be
 * had.
 */
export function lineLean({ rig }: SolvedRig, depth: SolvedDepth): LineLean {
  if (rig.pacesMs.length === 0) return upright;
  const hang = hangInCurrent(
    {
      shot: depth.shot,
      floatToHookMm: depth.floatToHookMm,
      draughtMm: depth.draughtMm,
      depthMm: depth.depthMm,
      mainLineDiameterMm: rig.mainLine.diameterMm,
      hookLineDiameterMm: rig.hookLine.diameterMm,
      hookLengthMm: rig.hookLengthMm,
      bait: rig.bait,
      hookMassG: rig.hook.massG,
      water: rig.conditions,
      floatDragAreaCm2: dragAreaCm2(rig.float, depth.tipShowingMm),
    },
    Math.max(...rig.pacesMs),
    heldBackShare,
  );
  if (!hang.ok) return upright;
  const points = hang.value.shape;
  // Line that lies on the bed is left out of the balance, which then starts where the line meets the bed.
  const lyingMm = depth.floatToHookMm - points.at(-1)!.fromHookMm;
  return (alongMm) => {
    const fromHookMm = alongMm - lyingMm;
    const above = points.findIndex((point) => point.fromHookMm >= fromHookMm);
    if (above <= 0) return above === 0 ? points[0]!.xMm : 0;
    const [a, b] = [points[above - 1]!, points[above]!];
    const share = (fromHookMm - a.fromHookMm) / (b.fromHookMm - a.fromHookMm || 1);
    return a.xMm + share * (b.xMm - a.xMm);
  };
}

/** Drag coefficient × the area that a standing float shows the flow below the surface. */
function dragAreaCm2(float: Float, tipShowingMm: number): number {
  return (floatDragCoefficient * sideAreaMm2(float.profile, lengthMm(float) - tipShowingMm)) / 100;
}

/** Area of the outline seen from the side, below a height. */
function sideAreaMm2(profile: Profile, heightMm: number): number {
  let area = 0;
  for (const [i, upper] of profile.entries()) {
    const lower = profile[i - 1];
    if (!lower || lower.atMm >= heightMm || upper.atMm === lower.atMm) continue;
    const top = Math.min(heightMm, upper.atMm);
    const share = (top - lower.atMm) / (upper.atMm - lower.atMm);
    const diameter = lower.diameterMm + share * (upper.diameterMm - lower.diameterMm);
    area += ((lower.diameterMm + diameter) / 2) * (top - lower.atMm);
  }
  return area;
}
