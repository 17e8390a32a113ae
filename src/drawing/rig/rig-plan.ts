import { type Float, lengthMm } from "../../core/float/float.ts";
import { toldTipMm } from "../../core/float/tip.ts";
import type { SolvedDepth, SolvedRig, SolvedShot } from "../../model/solved.ts";
import { type Point, point } from "../items.ts";
import type { Box } from "../kit.ts";
import { floatEyeRadiusMm } from "../parts/float-body.ts";
import { shotRadii } from "../shot-radii.ts";
import { drawnLyingMm, type LineShape } from "./current-shape.ts";
import {
  type Feature,
  type LeastLine,
  type LinePlaces,
  leastLines,
  leftFreeMm,
  placeOnLine,
} from "./rig-places.ts";

/** Where everything of a rig stands on the drawing; marks and labels are painted from it. */
export interface RigPlan extends LinePlaces {
  readonly box: Box;
  readonly float: Float;
  readonly surfaceMm: number;
  readonly bedMm: number;
  /** The float's lower end. */
  readonly floatAt: Point;
  readonly floatLengthScale: number;
  readonly floatWidthScale: number;
  readonly hookHeightMm: number;
  /** Lock shot on the line that leaves the float towards the rod, from the eye on. */
  readonly lockAboveRadiiMm: readonly number[];
}

/** What the plan leaves free for words above the surface, and below it for the bed with the words there. */
interface PlanRoom {
  readonly aboveMm: number;
  readonly belowMm: number;
}

/** Share of the height that a float takes up: less where the line below needs the room. */
const floatShares = [0.27, 0.2, 0.14];
/** Share of the line from the float to the frame that lock shot may fill. */
const lockRoomShare = 0.8;
/** Drawn diameter per diameter of shot, at the least. */
const leastShotScale = 0.2;
/** A float is drawn at least this wide at its widest, thinner ones being exaggerated. */
const leastFloatWidthMm = 2.4;
const loopHalfMm = 1.5;
/** The share of the width that a line which trails behind its float may take up. */
const trailShare = 0.3;
/** Places a rig made up for one depth; undefined where the box is too small for it. */
export function planRig(
  { rig }: SolvedRig,
  depth: SolvedDepth,
  shape: LineShape,
  box: Box,
  room: PlanRoom,
): RigPlan | undefined {
  for (const least of leastLines) {
    for (const floatShare of floatShares) {
      const frame = rigFrame(rig, depth, shape, box, room, floatShare);
      const placed = largestShot(rig, depth, shape, frame, least);
      if (placed) return { ...frame, ...placed };
    }
  }
  return undefined;
}

/** The line below the float with its shot as large as there is room for, and lock shot to the same scale. */
function largestShot(
  { hookLengthMm, water }: SolvedRig["rig"],
  depth: SolvedDepth,
  shape: LineShape,
  frame: RigFrame,
  least: LeastLine,
): (LinePlaces & Pick<RigPlan, "lockAboveRadiiMm">) | undefined {
  const { floatAt, surfaceMm, box } = frame;
  const { below, above } = depth.lock;
  const roomAboveMm = lockRoomShare * Math.hypot(floatAt.xMm, floatAt.yMm - surfaceMm);
  const largest = Math.min(1, Math.max(0.45, box.heightMm / 150));
  for (let shotScale = largest; shotScale > leastShotScale; shotScale *= 0.85) {
    const radiusOf = shotRadii(
      [...depth.lineShot, ...below, ...above].map(({ diameterMm }) => diameterMm),
      shotScale,
    );
    const lockAboveRadiiMm = above.map(({ diameterMm }) => radiusOf(diameterMm));
    if (lockAboveRadiiMm.reduce((sum, radiusMm) => sum + 2 * radiusMm, 0) > roomAboveMm) continue;
    const features = lineFeatures(hookLengthMm, depth, below, radiusOf);
    const placed = placeOnLine(features, drawnLyingMm(water, depth), shape, frame, least);
    if (placed) return { lockAboveRadiiMm, ...placed };
  }
  return undefined;
}

type RigFrame = ReturnType<typeof rigFrame>;

/** Surface, bed and float in the box. */
function rigFrame(
  { float, water }: SolvedRig["rig"],
  depth: SolvedDepth,
  shape: LineShape,
  box: Box,
  room: PlanRoom,
  floatShare: number,
) {
  const height = box.heightMm - room.aboveMm - room.belowMm;
  const floatLengthScale = Math.min(1, (floatShare * height) / lengthMm(float));
  const widest = Math.max(...float.profile.map((p) => p.diameterMm));
  const tipMm = toldTipMm(depth.tipShowingMm);
  const surfaceMm = room.aboveMm + Math.max(1, tipMm * floatLengthScale + 0.6);
  const bedMm = box.heightMm - room.belowMm;
  const leastX = Math.min(16, Math.max(water === "flowing" ? 11 : 9, 0.17 * box.widthMm));
  const trailMm = (-shape.lean(0) * (bedMm - surfaceMm)) / depth.depthMm;
  const x = Math.max(leastX, Math.min(trailShare * box.widthMm, trailMm + leftFreeMm));
  return {
    box,
    float,
    surfaceMm,
    bedMm,
    floatAt: point(x, surfaceMm + (lengthMm(float) - tipMm) * floatLengthScale),
    floatLengthScale,
    floatWidthScale: Math.max(floatLengthScale, leastFloatWidthMm / widest),
    hookHeightMm: Math.min(5, Math.max(2.8, 0.045 * box.heightMm)),
  };
}

/** Everything on the line below the float, from the hook up. */
function lineFeatures(
  hookLengthMm: number,
  depth: SolvedDepth,
  lockBelow: readonly SolvedShot[],
  radiusOf: (diameterMm: number) => number,
): Feature[] {
  const shotFeature = (shot: SolvedShot, fromHookMm: number): Feature => ({
    kind: "shot",
    fromHookMm,
    shot,
    radiusMm: radiusOf(shot.diameterMm),
  });
  const line: Feature[] = [
    { kind: "loop", fromHookMm: hookLengthMm, radiusMm: loopHalfMm },
    ...depth.lineShot.map((s) => shotFeature(s, s.fromHookMm)),
  ];
  return [
    { kind: "hook", fromHookMm: 0, radiusMm: 0 },
    ...line.sort((a, b) => a.fromHookMm - b.fromHookMm),
    ...[...lockBelow].reverse().map((s) => shotFeature(s, depth.floatToHookMm)),
    { kind: "eye", fromHookMm: depth.floatToHookMm, radiusMm: floatEyeRadiusMm },
  ];
}
