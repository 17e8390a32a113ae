import { topMm } from "../../core/float/profile.ts";
import { first, last } from "../../core/lists.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { arrow, type Point, point, polyline, thinMm } from "../items.ts";
import type { Item } from "../model.ts";
import { floatEyeRadiusMm } from "../parts/float-body.ts";
import { parts } from "../parts/parts.ts";
import { leastShotRadiusMm } from "../parts/shot.ts";
import { strandStrokes } from "../strands.ts";
import { rotated } from "../transform.ts";
import { between, heightAt } from "./ground.ts";
import { cutPath, pathLengthMm, pointAlong } from "./path.ts";

/** Where a rig hangs in the picture of a swim. */
interface Place {
  readonly xMm: number;
  readonly surfaceMm: number;
  /** The bed on the picture. */
  readonly bed: readonly Point[];
  /** Drawn depth per depth. */
  readonly scale: number;
  /** Whether its line to the rod is in the picture. */
  readonly isOnRod: boolean;
}

/** Floats are drawn this long and wide: to the scale of the depth they would be too small to read. */
const floatMm = { length: 8, width: 1.8 };
const hookMm = 2.6;
/** A gap under the hook, and line on the bed, are drawn no smaller. */
const leastGapMm = 2.4;
const leastLyingMm = 6;
const lyingLiftMm = 0.8;
/** Clear of the hook that lies. */
const spanLiftMm = 3;

const shotScale = 0.2;
const mostShotRadiusMm = 1.1;

const lengthScale = ({ rig }: SolvedRig) => floatMm.length / topMm(rig.float.profile);

/** Height of the tip above the surface on the picture. */
export function tipHeightMm(solved: SolvedRig, depth: SolvedDepth): number {
  return depth.tipShowingMm * lengthScale(solved);
}

/** The lower end of the float. */
export function floatFoot(
  solved: SolvedRig,
  depth: SolvedDepth,
  { xMm, surfaceMm }: Pick<Place, "xMm" | "surfaceMm">,
): Point {
  return point(xMm, surfaceMm + floatMm.length - tipHeightMm(solved, depth));
}

/** A rig hanging from its float, its hook above, at or along the bed. */
export function swimRig(solved: SolvedRig, depth: SolvedDepth, place: Place): Item[] {
  const { rig } = solved;
  const { profile, attachment } = rig.float;
  const foot = floatFoot(solved, depth, place);
  const lyingMm = Math.max(0, depth.overdepthMm);
  const { lying, hanging } = linePath(depth.overdepthMm, foot, place);
  const path = [...lying, ...hanging];
  const [onBed, total] = [pathLengthMm(lying), pathLengthMm(path)];
  /** Distance along the drawn line from the hook. */
  const drawn = (fromHookMm: number) =>
    fromHookMm < lyingMm
      ? (fromHookMm / lyingMm) * onBed
      : onBed + ((fromHookMm - lyingMm) / (depth.floatToHookMm - lyingMm)) * (total - onBed);
  const loop = drawn(rig.hookLengthMm);
  const widest = Math.max(...profile.map(({ diameterMm }) => diameterMm));
  return [
    polyline(cutPath(path, loop, total), strandStrokes["main line"]),
    polyline(cutPath(path, 0, loop), strandStrokes["hook length"]),
    ...parts.loopJoin.draw({ at: pointAlong(path, loop), heightMm: 2.4 }),
    ...(lying.length > 0 ? lyingHook(first(path)) : parts.hook.draw({ bend: first(path), heightMm: hookMm })),
    ...(lying.length > 0 ? lyingSpan(first(lying), last(lying)) : []),
    ...depth.lineShot.flatMap(({ fromHookMm, diameterMm }) =>
      shotAt(pointAlong(path, drawn(fromHookMm)), diameterMm),
    ),
    ...lock(depth, foot, place.isOnRod),
    ...parts.floatBody.draw({
      profile,
      tipMm: Math.max(depth.tipShowingMm, topMm(profile) * 0.12),
      loadMm: 0,
      eye: attachment !== "top and bottom",
      at: foot,
      lengthScale: lengthScale(solved),
      widthScale: floatMm.width / widest,
    }),
  ];
}

function shotAt(at: Point, diameterMm: number): readonly Item[] {
  const radiusMm = Math.min(mostShotRadiusMm, Math.max(leastShotRadiusMm, diameterMm * shotScale));
  return parts.shot.draw({ at, radiusMm });
}

/** The heaviest shot on either side of the float's eye, for all of them: on the line to the rod, and under the float. */
function lock({ lock: { above, below } }: SolvedDepth, foot: Point, isOnRod: boolean): Item[] {
  const heaviest = (shot: readonly { diameterMm: number }[]) =>
    Math.max(0, ...shot.map(({ diameterMm }) => diameterMm));
  const eyeMm = foot.yMm + floatEyeRadiusMm;
  const places = [
    { at: point(foot.xMm - lockAsideMm, eyeMm), diameterMm: heaviest(above) },
    { at: point(foot.xMm, eyeMm + lockAsideMm), diameterMm: heaviest(below) },
  ];
  const on = places.filter(({ diameterMm }) => diameterMm > 0);
  return [
    ...(above.length > 0 && !isOnRod
      ? [
          polyline(
            [
              point(foot.xMm, eyeMm),
              point(foot.xMm - lockAsideMm, eyeMm),
              point(foot.xMm - 2 * lockAsideMm, eyeMm - 2 * lockAsideMm),
            ],
            strandStrokes["main line"],
          ),
        ]
      : []),
    ...on.flatMap(({ at, diameterMm }) => shotAt(at, diameterMm)),
  ];
}

const lockAsideMm = 1.7;
const clearOfFrameMm = 2.2;

/** The line from the hook to the float: what lies on the bed, out from the bank, and what hangs. */
function linePath(overdepthMm: number, foot: Point, { xMm, bed, scale }: Place) {
  const bedMm = heightAt(bed, xMm);
  if (overdepthMm <= 0) {
    const gapMm = overdepthMm < 0 ? Math.max(leastGapMm, -overdepthMm * scale) : 0;
    return { lying: [], hanging: [point(xMm, bedMm - gapMm), foot] };
  }
  const roomMm = last(bed).xMm - xMm - hookMm - clearOfFrameMm;
  const lengthMm = Math.min(roomMm, Math.max(leastLyingMm, overdepthMm * scale));
  // Just off the bed's own line, so that it can be seen.
  const above = bed.map((p) => point(p.xMm, p.yMm - lyingLiftMm));
  const lying = cutPath(between(above, xMm, xMm + lengthMm), 0, lengthMm).reverse();
  return { lying, hanging: [point(xMm, bedMm - lyingLiftMm), foot] };
}

/** How far the line lies along the bed, measured over it: this much more than the depth is set. */
function lyingSpan(from: Point, to: Point): Item[] {
  const yMm = Math.min(from.yMm, to.yMm) - spanLiftMm;
  const middle = point((from.xMm + to.xMm) / 2, yMm);
  return [from, to].flatMap(({ xMm }) =>
    arrow(middle, point(xMm, yMm), { ink: "accent", widthMm: thinMm }, 1.8),
  );
}

/** On its side, with its eye at the end of the line. */
function lyingHook(eye: Point): Item[] {
  const upright = parts.hook.draw({ bend: point(eye.xMm, eye.yMm + hookMm), heightMm: hookMm });
  return rotated(upright, -90, eye);
}
