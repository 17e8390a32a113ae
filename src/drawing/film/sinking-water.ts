import { entry } from "../../core/lists.ts";
import type { SolvedDepth } from "../../model/solved.ts";
import { point, polyline, text, thin } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { type LabelText, layLabel, paintLabel } from "../labels/label-text.ts";
import type { Item, Stroke } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { fish } from "../scenes/fish.ts";
import { verdictMark } from "../verdict.ts";
import type { FilmRoom } from "./film.ts";
import { baitAt, baitRadiusMm, waterOverBed } from "./moving.ts";
import { lensHalfMm, sinkingLens } from "./sinking-lens.ts";
import { landsApart, resultRuns, type SinkingSide } from "./sinking-told.ts";

/** Water is drawn no higher than this share of the picture's width. */
const waterShare = 0.8;
const gapMm = 3;
const zones = ["top", "middle", "bed"] as const;
const fishMm = 5;
/** From the left to what a zone is called, behind its fish. */
const nameX = fishMm + 1.4;
/** A tick or a cross beside what a side is called. */
const verdictReachMm = 2.1;
export const tipMm = 2.4;
const zoneLine: Stroke = { ink: "faint", widthMm: 0.35, dashMm: [1, 1.2], cap: "butt" };

/** Where one of the two is drawn. */
export interface Column {
  readonly leftMm: number;
  readonly widthMm: number;
  readonly surfaceMm: number;
  /** Drawn length per length, across as down. */
  readonly scale: number;
  /** Where the float landed. */
  readonly originMm: number;
}

/** The water that two rigs sink in beside each other: what never moves of it, and below it what comes of both. */
export function sinkingWater(
  sides: readonly SinkingSide[],
  { depthMm }: SolvedDepth,
  { widthMm, textMm }: FilmRoom,
  kit: DrawingKit,
) {
  const { words, figures, measure } = kit;
  const bait = words("drawing.film.sinking.bait");
  const named = zones.map((zone) => words(`drawing.film.zone.${zone}`));
  const deep = figures.shortDepth(depthMm);
  const wordMm = (one: string) => measure(one, textMm, "regular");
  const axisMm = Math.max(wordMm(deep), ...[bait, ...named].map((one) => nameX + wordMm(one))) + 1.5;
  const columnMm = (widthMm - axisMm - gapMm) / 2;
  const markMm = landsApart(sides) ? 2 * verdictReachMm + 1 : 0;
  const heads = sides.map(({ name }) =>
    layLabel([{ text: name, face: "bold" }], columnMm - markMm, textMm, measure),
  );
  const headMm = Math.max(...heads.map(({ heightMm }) => heightMm));
  const lensY = headMm + 1.4 + lensHalfMm;
  const surfaceMm = lensY + lensHalfMm + 1 + tipMm + 1;
  const reach = (pick: (...xs: number[]) => number) =>
    pick(0, ...sides.flatMap(({ sink }) => sink.line.moments.flatMap(({ xMm }) => [pick(...xMm)])));
  const [nearMm, farMm] = [reach(Math.min), reach(Math.max)];
  // A float lies with its tip towards the rod, and its bait lands on the other side.
  const [beforeMm, afterMm] = [tipMm + 0.5, baitRadiusMm + 0.5];
  const roomMm = columnMm - beforeMm - afterMm;
  const scale = Math.min((waterShare * widthMm) / depthMm, roomMm / Math.max(1, farMm - nearMm));
  const bedMm = surfaceMm + scale * depthMm;
  const columns = sides.map((_, i): Column => {
    const leftMm = axisMm + i * (columnMm + gapMm);
    const originMm = leftMm + beforeMm + (roomMm - scale * (farMm - nearMm)) / 2 - scale * nearMm;
    return { leftMm, widthMm: columnMm, surfaceMm, scale, originMm };
  });
  const result = layLabel(resultRuns(sides, kit), widthMm - 1, textMm, measure);
  const resultTopMm = bedMm + bedThicknessMm + 1.35 * textMm;
  const still: Item[] = [
    ...columns.flatMap((column, i) => [
      ...zoned(column, bedMm),
      ...headed(entry(sides, i), entry(heads, i), { leftMm: column.leftMm, headMm, markMm }, kit),
      ...sinkingLens(entry(sides, i), { ...column, middleMm: lensY }),
    ]),
    baitAt(point(nameX - 1.4 - baitRadiusMm, lensY)),
    text(point(nameX, lensY + 0.35 * textMm), bait, textMm, { ink: "soft" }),
    ...zoneNames(named, { surfaceMm, bedMm }, textMm),
    // Beside the bed, off the row of the times.
    text(point(axisMm - 1.5, bedMm + 0.35 * textMm), deep, textMm, { anchor: "end" }),
    polyline([point(axisMm - 1, bedMm), point(axisMm, bedMm)], thin),
  ];
  return {
    columns,
    still,
    result: paintLabel(result, widthMm - 0.5 - result.widthMm, resultTopMm + result.heightMm / 2, measure),
    heightMm: resultTopMm + result.heightMm,
  };
}

/** The fish of each zone, and what it is called. */
function zoneNames(
  named: readonly string[],
  { surfaceMm, bedMm }: { readonly surfaceMm: number; readonly bedMm: number },
  textMm: number,
): Item[] {
  return named.flatMap((name, i) => {
    // In the middle of its zone, or a fish would lie on the line between two; the lowest clear of the depth beside the bed.
    const middle = Math.min(surfaceMm + ((i + 0.5) * (bedMm - surfaceMm)) / 3, bedMm - 1.2 * textMm);
    return [
      ...fish(point(0.3, middle), fishMm),
      text(point(nameX, middle + 0.35 * textMm), name, textMm, { ink: "soft" }),
    ];
  });
}

/** Water over the bed, in three zones. */
function zoned({ leftMm, widthMm, surfaceMm }: Column, bedMm: number): Item[] {
  const rightMm = leftMm + widthMm;
  return [
    ...waterOverBed({ leftMm, rightMm, surfaceMm, footMm: bedMm }),
    ...[1, 2].map((at) => {
      const y = surfaceMm + (at * (bedMm - surfaceMm)) / 3;
      return polyline([point(leftMm, y), point(rightMm, y)], zoneLine);
    }),
  ];
}

/** What a side is called, with a tick or a cross where one of the two lands in a heap. */
function headed(
  { sink }: SinkingSide,
  head: LabelText,
  { leftMm, headMm, markMm }: { readonly leftMm: number; readonly headMm: number; readonly markMm: number },
  { measure }: DrawingKit,
): Item[] {
  const label = paintLabel(head, leftMm, headMm - head.heightMm / 2, measure);
  if (markMm === 0) return label;
  const at = point(leftMm + head.widthMm + verdictReachMm + 1, headMm - 0.6 * head.sizeMm);
  return [...label, ...verdictMark(sink.landing === "heap" ? "wrong" : "right", at, verdictReachMm)];
}
