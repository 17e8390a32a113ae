import { lengthMm } from "../../core/float/float.ts";
import { toldTipMm } from "../../core/float/tip.ts";
import { first, last, neighbours, paired } from "../../core/lists.ts";
import type { SolvedDepth, SolvedRig, SolvedShot } from "../../model/solved.ts";
import { floatLook } from "../float/float-parts.ts";
import { circle, type Point, point, polyline, rectangle } from "../items.ts";
import { placeInOrder, type WantedLabel } from "../labels/label-placement.ts";
import type { Item } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { floatEyeRadiusMm } from "../parts/float-body.ts";
import { lineBreakHalfMm } from "../parts/line-break.ts";
import { parts } from "../parts/parts.ts";
import { shotRadii } from "../shot-radii.ts";
import { strandStrokes } from "../strands.ts";
import { columnLine } from "./column-line.ts";

/** Drawn diameter per diameter of shot, the first at which all of them find room. */
export const shotScales: readonly number[] = [0.5, 0.4, 0.3];
/** Line that is seen between shot that do not touch on it, and what is left of that where there is no room. */
const apartMm = [0.3, 0.15] as const;
/** Shot closer than this to touching are pinched on as one [mm of line]. */
const asOneMm = 2;
/** Round a shot that lies on another. */
const rimMm = 0.2;
/** A shot this far from its place is off it. */
const offPlaceMm = 0.3;
/** Bare line that a break mark takes up on the line [mm]. */
const breakMm = 2 * lineBreakHalfMm;

/** A rig's place in the chart. */
interface ChartColumn {
  readonly leftMm: number;
  readonly rightMm: number;
  /** The rig's line. */
  readonly xMm: number;
  readonly surfaceMm: number;
  readonly scale: number;
}

/** A rig in the chart, and what of it is not to scale. */
export interface PatternColumn {
  readonly items: readonly Item[];
  /** Whether shot stand apart that would cover each other. */
  readonly isApart: boolean;
  /** Whether line is drawn shorter. */
  readonly isBroken: boolean;
  /** Whether what lies on the bed is not to scale. */
  readonly isLaidUntrue: boolean;
  /** Drawn diameter per diameter of its shot. */
  readonly shotScale: number;
}

/** How large shot may be drawn: the scales to try, largest first, and all that are in the picture, as a size has one look in it. */
export interface ShotLook {
  readonly scales: readonly number[];
  readonly diametersMm: readonly number[];
}

/**
 * One rig to the chart's scale; shot that would cover each other are moved just so far that they do not.
 *
 * @throws NoRoomError where there are too many
 */
export function drawPatternColumn(
  solved: SolvedRig,
  depth: SolvedDepth,
  column: ChartColumn,
  look: ShotLook,
): PatternColumn {
  const { rig } = solved;
  const { leftMm, rightMm, xMm: x, surfaceMm, scale } = column;
  const { float } = rig;
  const bedMm = surfaceMm + depth.depthMm * scale;
  const eye = point(x, surfaceMm + depth.draughtMm * scale + floatEyeRadiusMm);
  const line = columnLine(solved, depth, eye, { rightMm, bedMm, scale });
  const shots = placeShot({ ...depth, lineShot: line.hanging }, line.y, eye, { leftMm, ...line }, look);
  if (!shots) {
    const room = { widthMm: rightMm - leftMm, heightMm: bedMm - surfaceMm };
    throw new NoRoomError("a rig beside others", room, { folder: "rigs", id: rig.id });
  }
  const radiusOf = shotRadii(look.diametersMm, shots.shotScale);
  const laid = line.lying.map(({ diameterMm, fromHookMm }): PlacedShot => {
    const radiusMm = radiusOf(diameterMm);
    return { at: line.laidAt(fromHookMm, radiusMm), radiusMm };
  });
  const widest = Math.max(...float.profile.map((p) => p.diameterMm));
  const items = [
    rectangle(leftMm, surfaceMm, rightMm - leftMm, bedMm - surfaceMm, { fill: "water" }),
    ...parts.bed.draw({ leftMm, rightMm, yMm: bedMm }),
    ...parts.waterSurface.draw({ leftMm, rightMm, yMm: surfaceMm }),
    ...line.items,
    ...parts.floatBody.draw({
      ...floatLook(float),
      at: point(x, surfaceMm + (lengthMm(float) - toldTipMm(depth.tipShowingMm)) * scale),
      lengthScale: scale,
      widthScale: Math.max(scale, 1.8 / widest),
    }),
    ...lineToRod(shots.above, eye, column),
    ...bracketOf(shots, eye),
    ...(line.isBroken ? parts.lineBreak.draw({ at: point(x, barest(shots, eye, line.footMm)) }) : []),
    ...[...shots.above, ...shots.below, ...shots.line, ...laid].flatMap(({ at, radiusMm, isOn }) => [
      ...(isOn ? [circle(at, radiusMm + rimMm, { fill: "paper" })] : []),
      ...parts.shot.draw({ at, radiusMm }),
    ]),
  ];
  const { isBroken, isLaidUntrue } = line;
  return { items, isBroken, isLaidUntrue, isApart: shots.isApart, shotScale: shots.shotScale };
}

/**
 * Where a line that is drawn shorter is marked so: in the bare line above the highest shot down it, as those below are measured
 * from the hook; or where there is most of it.
 */
function barest(
  { below, line }: { readonly below: readonly PlacedShot[]; readonly line: readonly PlacedShot[] },
  eye: Point,
  footMm: number,
): number {
  const top = { at: eye, radiusMm: floatEyeRadiusMm };
  const foot = { at: point(eye.xMm, footMm), radiusMm: 0 };
  const bare = neighbours([below.at(-1) ?? top, ...line, foot]).map(([upper, lower]) => {
    const fromMm = upper.at.yMm + upper.radiusMm;
    const toMm = lower.at.yMm - lower.radiusMm;
    return { middleMm: (fromMm + toMm) / 2, mm: toMm - fromMm };
  });
  const most = Math.max(...bare.map(({ mm }) => mm));
  return (bare.find(({ mm }) => mm >= Math.min(most, breakMm)) ?? first(bare)).middleMm;
}

/** Clear line between the lock shot and those down the line, so that none of the one is read as the other. */
const lockApartMm = 1.6;
/** Between shot that lock the float. */
const lockGapMm = 0.15;

interface PlacedShot {
  readonly at: Point;
  readonly radiusMm: number;
  /** Whether it lies on the one above it. */
  readonly isOn?: boolean;
}

interface WantedShot extends WantedLabel {
  /** Between it and the one above it. */
  readonly gapMm: number;
}

/** Each where it is, or as far up as it takes to lie on the one below it: the lowest of a bulk is where it is measured to. */
function stackUp(wanted: readonly WantedShot[], topMm: number): number[] | undefined {
  let freeMm = Number.POSITIVE_INFINITY;
  const places = wanted.toReversed().map(({ atMm, sizeMm, gapMm: aboveMm }) => {
    const place = Math.min(atMm, freeMm - sizeMm / 2);
    freeMm = place - sizeMm / 2 - aboveMm;
    return place;
  });
  const endMm = freeMm + (wanted[0]?.gapMm ?? 0);
  return endMm < topMm ? undefined : places.reverse();
}

/** Of each shot down a line, whether the one above it is pinched on against it. */
const touching = (onLine: readonly SolvedShot[]): boolean[] =>
  onLine.map((one, i) => {
    const above = onLine[i - 1];
    const touchMm = (one.diameterMm + (above?.diameterMm ?? 0)) / 2;
    return above !== undefined && above.fromHookMm - one.fromHookMm - touchMm < asOneMm;
  });

/**
 * Shot as large as there is room for, none covering another: those that lock the float below its eye and those above it,
 * on the line to the rod, then the others. If they can, shot that do not touch stand where they are: so a bulk is told
 * from one that is spread.
 */
function placeShot(
  depth: SolvedDepth,
  y: (fromHookMm: number) => number,
  eye: Point,
  { leftMm, footMm }: { readonly leftMm: number; readonly footMm: number },
  { scales, diametersMm }: ShotLook,
) {
  const onLine = [...depth.lineShot].sort((a, b) => b.fromHookMm - a.fromHookMm);
  const topMm = eye.yMm + floatEyeRadiusMm;
  const isOnNext = touching(onLine);
  const tries = apartMm.flatMap((gapMm) => scales.map((scale) => ({ gapMm, scale })));
  for (const { gapMm, scale } of tries) {
    const radiusFor = shotRadii(diametersMm, scale);
    const radiusOf = ({ diameterMm }: SolvedShot) => radiusFor(diameterMm);
    let freeMm = topMm;
    const below = depth.lock.below.map(radiusOf).map((radiusMm): PlacedShot => {
      const yMm = freeMm + lockGapMm + radiusMm;
      freeMm = yMm + radiusMm;
      return { at: point(eye.xMm, yMm), radiusMm };
    });
    const radii = onLine.map(radiusOf);
    const wanted = paired(paired(onLine, radii), isOnNext).map(([[one, radiusMm], isOn]) => ({
      atMm: y(one.fromHookMm),
      sizeMm: 2 * radiusMm,
      // Those that touch overlap, like coins in a row.
      gapMm: isOn ? -radiusMm : gapMm,
    }));
    const fromMm = depth.lockShot.length > 0 ? freeMm + lockApartMm : topMm;
    const places =
      stackUp(wanted, fromMm) ??
      (scale === last(scales) ? placeInOrder(wanted, fromMm, footMm, 0) : undefined);
    if (!places) continue;
    const line = paired(paired(places, radii), isOnNext).map(
      ([[yMm, radiusMm], isOn]): PlacedShot => ({ at: point(eye.xMm, yMm), radiusMm, isOn }),
    );
    const isOff = paired(places, wanted).map(([yMm, { atMm }]) => Math.abs(yMm - atMm) > offPlaceMm);
    // One that touches the one below it has to give way to it.
    const isTrue = !isOff.some((off, i) => off && !isOnNext[i + 1]);
    if (gapMm === first(apartMm) && !isTrue) continue;
    const above = shotAbove(depth.lock.above.map(radiusOf), eye, leftMm);
    return { above, below, line, isApart: isOff.includes(true), shotScale: scale };
  }
  return undefined;
}

/** The way that a line to the rod takes up from its first shot, as flat as there is room for the others. */
const flattest = 0.9;

/** Shot on the line to the rod: the first beside the float's eye, the others up from there, aslant. */
function shotAbove(radii: readonly number[], eye: Point, leftMm: number): PlacedShot[] {
  const [firstMm = 0, ...others] = radii;
  const start = eye.xMm - floatEyeRadiusMm - lockGapMm - firstMm;
  const neededMm = firstMm + others.reduce((sum, radiusMm) => sum + lockGapMm + 2 * radiusMm, 0);
  const aside = Math.min(flattest, Math.max(0, start - leftMm) / neededMm);
  const up = Math.sqrt(1 - aside ** 2);
  let alongMm = -firstMm - lockGapMm;
  return radii.map((radiusMm) => {
    const middle = alongMm + lockGapMm + radiusMm;
    alongMm = middle + radiusMm;
    return { at: point(start - aside * middle, eye.yMm - up * middle), radiusMm };
  });
}

/** From the float's eye through the shot above it, towards the rod; none where no shot are on it. */
function lineToRod(above: readonly PlacedShot[], eye: Point, { leftMm, surfaceMm }: ChartColumn): Item[] {
  const [start] = above;
  if (!start) return [];
  const end = point(leftMm, surfaceMm + 0.25 * (eye.yMm - surfaceMm));
  return [polyline([eye, ...above.map(({ at }) => at), end], strandStrokes["main line"])];
}

/** Takes in the shot that lock the float, on both sides of its eye. */
function bracketOf(
  { above, below }: { readonly above: readonly PlacedShot[]; readonly below: readonly PlacedShot[] },
  eye: Point,
): readonly Item[] {
  const lock = [...above, ...below];
  if (lock.length === 0) return [];
  const reachMm = Math.max(floatEyeRadiusMm, ...below.map(({ radiusMm }) => radiusMm));
  return parts.bracket.draw({
    xMm: eye.xMm + reachMm + 0.5,
    fromMm: Math.min(...lock.map(({ at, radiusMm }) => at.yMm - radiusMm)),
    toMm: Math.max(...lock.map(({ at, radiusMm }) => at.yMm + radiusMm)),
  });
}
