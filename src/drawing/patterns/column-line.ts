import { lyingMm } from "../../core/depth/lying.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedRig, SolvedShot } from "../../model/solved.ts";
import { lyingShot } from "../float/lift-bite.ts";
import { type Point, point, polyline, thin } from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { asDrawn } from "../rig/current-shape.ts";
import { strandStrokes } from "../strands.ts";
import { rotated } from "../transform.ts";

const hookMm = 2.6;
/** A line is drawn so far above the bed that it lies on. */
const aboveBedMm = 0.4;
/** Bare line that is seen between a hook on the bed and where its line comes down. */
const bareMm = 0.6;
/** Line that would reach so far beyond its room is drawn shorter, and told to be [mm]. */
const shortenedMm = 1;

/** Where the line below a float is drawn. */
interface ColumnLine {
  /** A place on what hangs, by its distance from the hook along the line. */
  readonly y: (fromHookMm: Mm) => number;
  readonly hanging: readonly SolvedShot[];
  readonly lying: readonly SolvedShot[];
  /** Where what hangs ends: just above the hook, or at the bed. */
  readonly footMm: number;
  /** A shot on the bed. */
  readonly laidAt: (fromHookMm: Mm, radiusMm: number) => Point;
  /** Hook length and main line, each in its strand, and the hook; above it the loop. */
  readonly items: readonly Item[];
  /** Whether the line that hangs is drawn shorter. */
  readonly isBroken: boolean;
  /** Whether what lies on the bed is not to scale. */
  readonly isLaidUntrue: boolean;
}

/** How much line lies on the bed [mm]: in still water what the depth leaves over, in running water as the rig is drawn there. */
function onBed(solved: SolvedRig, depth: SolvedDepth): Mm {
  const overdepthMm = asDrawn(solved, depth).overdepthMm;
  if (overdepthMm <= 0) return 0;
  return solved.rig.water === "flowing" ? overdepthMm : lyingMm(depth);
}

/**
 * The line below a float, straight down to the hook and to the chart's scale; where a rig lays some of it on the bed, from
 * there to the right, as far as there is room.
 */
export function columnLine(
  solved: SolvedRig,
  depth: SolvedDepth,
  eye: Point,
  { rightMm, bedMm, scale }: { readonly rightMm: number; readonly bedMm: number; readonly scale: number },
): ColumnLine {
  const { hookLengthMm } = solved.rig;
  const onBedMm = onBed(solved, depth);
  const lying = onBedMm > 0 ? lyingShot(asDrawn(solved, depth)) : [];
  const hangsMm = eye.yMm + (depth.floatToHookMm - onBedMm) * scale;
  const lowest = Math.min(bedMm - (onBedMm > 0 ? aboveBedMm : 0.3), hangsMm);
  const y = (fromHookMm: Mm) => lowest - (fromHookMm - onBedMm) * scale;
  const runMm = Math.min(Math.max(onBedMm * scale, hookMm + bareMm), rightMm - eye.xMm - 0.3);
  const aside = (fromHookMm: Mm) => (onBedMm === 0 ? 0 : runMm * (1 - Math.min(1, fromHookMm / onBedMm)));
  const at = (fromHookMm: Mm) => point(eye.xMm + aside(fromHookMm), y(Math.max(fromHookMm, onBedMm)));
  const bend = at(0);
  const hookEye = onBedMm > 0 ? point(bend.xMm - hookMm, bend.yMm) : point(bend.xMm, bend.yMm - hookMm);
  const hook = parts.hook.draw({ bend, heightMm: hookMm });
  const loop = at(hookLengthMm);
  const touch = onBedMm > 0 ? [at(onBedMm)] : [];
  const isLoopLying = hookLengthMm < onBedMm;
  const tick = isLoopLying
    ? [point(loop.xMm, loop.yMm - 1), point(loop.xMm, loop.yMm + aboveBedMm)]
    : [point(loop.xMm - 1, loop.yMm), point(loop.xMm + 1, loop.yMm)];
  return {
    y,
    lying,
    hanging: depth.lineShot.filter((one) => !lying.includes(one)),
    footMm: onBedMm > 0 ? bedMm : lowest - hookMm,
    laidAt: (fromHookMm, radiusMm) => point(eye.xMm + aside(fromHookMm), bedMm - radiusMm),
    isBroken: hangsMm > lowest + shortenedMm,
    isLaidUntrue: onBedMm > 0 && Math.abs(runMm - onBedMm * scale) > shortenedMm,
    items: [
      polyline([eye, ...(isLoopLying ? touch : []), loop], strandStrokes["main line"]),
      polyline([loop, ...(isLoopLying ? [] : touch), hookEye], strandStrokes["hook length"]),
      polyline(tick, thin),
      ...(onBedMm > 0 ? rotated(hook, -90, bend) : hook),
    ],
  };
}
