import { first, last } from "../../core/lists.ts";
import type { SinkingLine } from "../../core/sink/sink-of-rig.ts";
import type { Mm } from "../../core/units.ts";
import type { SisterShot } from "../../model/in-water.ts";
import { circle, type Point, point, polyline } from "../items.ts";
import type { Item, Stroke } from "../model.ts";
import { smooth } from "../smooth.ts";
import { strandStrokes } from "../strands.ts";
import { baitAt, baitRadiusMm } from "./moving.ts";
import type { SinkingSide } from "./sinking-told.ts";

export const floatBody: Stroke = { ink: "ink", widthMm: 1.3 };
/** Thinner than the body, as a tip is, so that it looks like nothing that hangs below it. */
export const floatTip: Stroke = { ink: "accent", widthMm: 0.8 };

/** Half of how high a lens is. */
export const lensHalfMm = 2;
const floatMm = 3.8;
const floatTipMm = 1.9;
/** What is left of a gap between two shot, but no more than so much: shot of a bulk touch, others do not. */
const gapShare = 0.016;
const mostGapMm = 0.8;

interface LensRoom {
  readonly leftMm: Mm;
  readonly widthMm: Mm;
  readonly middleMm: Mm;
}

/** Radius of a shot where water is drawn small: sizes are told apart, the smallest is still seen. */
export const smallShotMm = (diameterMm: Mm): number => Math.min(1.1, Math.max(0.5, 0.22 * diameterMm));

/**
 * How a side hangs, larger than it falls: its float, line, shot and bait from the left to the right, with room between shot that
 * do not touch; of a rig that lands in a heap, its line in loops about the float.
 */
export function sinkingLens({ shot, sink }: SinkingSide, { leftMm, widthMm, middleMm }: LensRoom): Item[] {
  const foot = point(leftMm + floatMm, middleMm);
  const tip = point(leftMm + floatTipMm, middleMm);
  const float = [polyline([tip, foot], floatBody), polyline([point(leftMm, middleMm), tip], floatTip)];
  if (sink.landing === "heap") return [...float, ...tangled(tip)];
  const bait = point(leftMm + widthMm - baitRadiusMm - 0.2, middleMm);
  return [
    polyline([foot, bait], strandStrokes["main line"]),
    ...float,
    ...alongLine(marksOn(shot, sink.line), sink.line, bait.xMm - foot.xMm).map(({ upMm, radiusMm }) =>
      circle(point(bait.xMm - upMm, middleMm), radiusMm, { fill: "ink" }),
    ),
    baitAt(bait),
  ];
}

/** Places from the hook, and what is there: those that lock a float are all at its eye. */
export function marksOn(shot: readonly SisterShot[], line: SinkingLine): readonly SisterShot[] {
  const eyeMm = eyeFromHookMm(line);
  const byPlace = new Map(shot.map((one) => [Math.min(one.fromHookMm, eyeMm), one.diameterMm]));
  return [...byPlace]
    .map(([fromHookMm, diameterMm]) => ({ fromHookMm, diameterMm }))
    .sort((a, b) => a.fromHookMm - b.fromHookMm);
}

/** The line begins where its float meets the surface; what comes next is the float's eye. */
const eyeFromHookMm = ({ fromHookMm }: SinkingLine): Mm =>
  fromHookMm.find((one) => one < first(fromHookMm)) ?? first(fromHookMm);

/** How far each shot is drawn from the bait on so much line: where it is, but clear of the one before it. */
function alongLine(marks: readonly SisterShot[], line: SinkingLine, lineMm: Mm) {
  const scale = lineMm / eyeFromHookMm(line);
  const mostMm = (0.4 * lineMm) / marks.length;
  const placed: { readonly upMm: Mm; readonly radiusMm: Mm; readonly fromHookMm: Mm }[] = [];
  for (const { fromHookMm, diameterMm } of marks) {
    const radiusMm = Math.min(mostMm, smallShotMm(diameterMm));
    const before = placed.at(-1);
    const gapMm = before ? Math.min(mostGapMm, gapShare * (fromHookMm - before.fromHookMm)) : 0;
    const leastMm = before ? before.upMm + before.radiusMm + radiusMm + gapMm : baitRadiusMm + radiusMm;
    placed.push({ upMm: Math.max(leastMm, scale * fromHookMm), radiusMm, fromHookMm });
  }
  const closer = lineMm / Math.max(lineMm, placed.at(-1)?.upMm ?? 0);
  return placed.map(({ upMm, radiusMm }) => ({ upMm: closer * upMm, radiusMm }));
}

/** From a float's tip: loops of line about it that shot and bait hang in. */
const loops = [
  [2.4, 0],
  [4.6, -1.6],
  [5.4, 0.4],
  [2.6, 1.8],
  [0.2, -0.4],
  [3, -1.8],
  [7.2, -0.6],
  [6, 1.7],
  [3.4, -0.6],
  [5.8, -1.7],
  [9, 0.2],
] as const;
const inLoops = [
  [4.6, -1.6],
  [2.6, 1.8],
  [7.2, -0.6],
] as const;

function tangled({ xMm, yMm }: Point): Item[] {
  const on = ([x, y]: readonly [number, number]) => point(xMm + x, yMm + y);
  return [
    polyline(smooth(loops.map(on)), strandStrokes["main line"]),
    ...inLoops.map((place) => circle(on(place), 0.6, { fill: "ink" })),
    baitAt(on(last(loops))),
  ];
}
