import { asSet } from "../../core/float/moved-float.ts";
import { last } from "../../core/lists.ts";
import type { Sink } from "../../core/sink/sink-of-rig.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { point, polyline, text, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { type LabelText, layLabel, paintLabel } from "../labels/label-text.ts";
import type { Drawing, Item } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { depthAxisMm, depthTicks } from "../plots/axis.ts";
import { spoken } from "../spoken.ts";
import {
  drawPatternColumn,
  type PatternColumn,
  type ShotLook,
  shotScales,
  sinkCurve,
} from "./pattern-column.ts";

interface PatternEntry {
  readonly rig: SolvedRig;
  readonly depth: SolvedDepth;
}

/** Room for the charts: their width, and how high the deepest water is drawn. */
interface PatternRoom {
  readonly widthMm: number;
  readonly waterMm: number;
  readonly textMm: number;
}

const marginMm = 1;
/** Least width of a pattern with its caption, in ems; where fewer find room, the rest go into further charts. */
const slotEms = 6;
/** The share of its slot that a rig takes up beside its plot of sinking. */
const rigShare = 0.34;

/** What charts of one picture share. */
interface Scales {
  readonly room: PatternRoom;
  readonly deepestMm: number;
  readonly longestS: number;
  /** Millimetres of paper for each of water. */
  readonly scale: number;
  readonly surfaceMm: number;
  readonly axisMm: number;
  readonly slotMm: number;
  readonly look: ShotLook;
}

/**
 * Shotting patterns next to each other, drawn to one scale of depth, with what is at the float and what is down the
 * line below each, and beside each how deep its bait is after how long, to one scale of time. In a narrow room there are
 * several charts, all to the same scales.
 */
export function drawPatternCharts(
  patterns: readonly PatternEntry[],
  room: PatternRoom,
  kit: DrawingKit,
): Drawing[] {
  const { widthMm, waterMm, textMm } = room;
  // A rig whose shot rests on the bed as it is set stands higher for it.
  const entries = patterns.map(({ rig, depth }) => ({ rig, depth: asSet(depth) }));
  const deepestMm = Math.max(...entries.map(({ depth }) => depth.depthMm));
  const axisMm = depthAxisMm(deepestMm, textMm, kit) + 1;
  const abreast = Math.max(1, Math.floor((widthMm - axisMm) / (slotEms * textMm)));
  const charts = Math.ceil(entries.length / abreast);
  const perChart = Math.ceil(entries.length / charts);
  const diametersMm = entries.flatMap(({ depth: { lineShot, lockShot } }) =>
    [...lineShot, ...lockShot].map((one) => one.diameterMm),
  );
  const each: Scales = {
    look: { scales: shotScales, diametersMm },
    room,
    deepestMm,
    longestS: Math.max(0, ...entries.map((entry) => sinkOf(entry)?.tenthsS.at(-1) ?? 0)),
    scale: waterMm / deepestMm,
    surfaceMm: 4 + textMm * 0.5,
    axisMm,
    slotMm: (widthMm - axisMm) / perChart,
  };
  // A size of shot is as large in one rig as in the next.
  const shotScale = Math.min(...entries.map((entry) => rigColumn(entry, axisMm, each).shotScale));
  const scales = { ...each, look: { scales: [shotScale], diametersMm } };
  return Array.from({ length: charts }, (_, i) =>
    drawChart(entries.slice(i * perChart, (i + 1) * perChart), scales, kit),
  );
}

function drawChart(entries: readonly PatternEntry[], scales: Scales, kit: DrawingKit): Drawing {
  const { words, measure } = kit;
  const { room, longestS, surfaceMm, axisMm, slotMm } = scales;
  const { widthMm, textMm } = room;
  const captionRoomMm = slotMm - 2 * marginMm;
  const captions = entries.map((entry) => caption(entry, captionRoomMm, textMm, kit));
  const captionMm = Math.max(...captions.map((parts) => parts.reduce((sum, one) => sum + one.heightMm, 0)));
  const captionTop = surfaceMm + room.waterMm + bedThicknessMm + 1.5;
  const noteTop = captionTop + captionMm + 1;
  const columns = entries.map((entry, i) => chartColumn(entry, axisMm + i * slotMm, scales, kit));
  const notes = [
    words("drawing.pattern.scale"),
    ...(columns.some(({ isApart }) => isApart) ? [words("drawing.pattern.apart")] : []),
    ...(columns.some(({ isBroken }) => isBroken) ? [words("drawing.pattern.broken")] : []),
    ...(columns.some(({ isLaidUntrue }) => isLaidUntrue) ? [words("drawing.pattern.laid")] : []),
    ...(longestS > 0 ? [words("drawing.pattern.sink")] : []),
  ];
  const note = layLabel([{ text: notes.join(" ") }], widthMm - 2 * marginMm, textMm, measure);
  return {
    widthMm,
    heightMm: noteTop + note.heightMm + 0.2,
    title: words("drawing.pattern.title"),
    description: entries.map((entry) => told(entry, kit)).join(" "),
    items: [
      ...depthScale(scales, kit),
      ...columns.flatMap(({ items }) => items),
      ...captions.flatMap((told, i) => captionItems(told, axisMm + i * slotMm + marginMm, captionTop, kit)),
      ...paintLabel(note, marginMm, noteTop + note.heightMm / 2, measure),
    ],
  };
}

/** A rig in its slot. */
function rigColumn(
  entry: PatternEntry,
  leftMm: number,
  { scale, surfaceMm, slotMm, look }: Scales,
): PatternColumn {
  const rigMm = sinkOf(entry) ? slotMm * rigShare : slotMm;
  const column = { leftMm, rightMm: leftMm + rigMm - 0.6, xMm: leftMm + rigMm / 2, surfaceMm, scale };
  return drawPatternColumn(entry.rig, entry.depth, column, look);
}

/** A rig in its slot, with its plot of sinking beside it where that was reckoned. */
function chartColumn(entry: PatternEntry, leftMm: number, scales: Scales, kit: DrawingKit): PatternColumn {
  const { room, longestS, scale, surfaceMm, slotMm } = scales;
  const sink = sinkOf(entry);
  const column = rigColumn(entry, leftMm, scales);
  if (!sink) return column;
  const frame = {
    leftMm: leftMm + slotMm * rigShare + 0.8,
    rightMm: leftMm + slotMm - 0.6 - marginMm,
    surfaceMm,
    bedMm: surfaceMm + entry.depth.depthMm * scale,
    scale,
    longestS,
  };
  return { ...column, items: [...column.items, ...sinkCurve(sink, frame, room.textMm, kit)] };
}

/** How the rig sinks laid out straight, where that was reckoned. */
function sinkOf({ depth }: PatternEntry): Sink | undefined {
  return depth.inWater?.sink.find(({ landing }) => landing === "straight");
}

/** What hangs where on a rig's line, and how long its bait sinks. */
function told(entry: PatternEntry, kit: DrawingKit): string {
  const { words, figures } = kit;
  const { rig, depth } = entry;
  const sink = sinkOf(entry);
  const values = { rig: rig.rig.title, shot: figures.shotPlaces(depth.lineShot) };
  const said = sink
    ? words("drawing.pattern.told-sink", { ...values, time: figures.time(last(sink.tenthsS)) })
    : words("drawing.pattern.told", values);
  return spoken(said, kit);
}

function caption({ rig, depth }: PatternEntry, roomMm: number, textMm: number, kit: DrawingKit): LabelText[] {
  const { words, figures, measure } = kit;
  const line = depth.lineShot;
  const said = [
    depth.lockShot.length > 0 ? words("drawing.pattern.lock", { shot: figures.lock(depth.lock) }) : undefined,
    line.length > 0 ? words("drawing.pattern.line", { shot: figures.shot(line) }) : undefined,
  ];
  return [
    layLabel([{ text: rig.rig.title, face: "bold" }], roomMm, textMm, measure),
    ...said.flatMap((one) => (one ? [layLabel([{ text: one }], roomMm, textMm, measure)] : [])),
  ];
}

function captionItems(
  labels: readonly LabelText[],
  leftMm: number,
  topMm: number,
  { measure }: DrawingKit,
): Item[] {
  let top = topMm;
  return labels.flatMap((label) => {
    const middle = top + label.heightMm / 2;
    top += label.heightMm;
    return paintLabel(label, leftMm, middle, measure);
  });
}

/** Depths down the left side, to the bed's own. */
function depthScale({ room, deepestMm, scale, surfaceMm, axisMm }: Scales, { figures }: DrawingKit): Item[] {
  const { textMm } = room;
  const x = axisMm - 0.8;
  return [
    polyline([point(x, surfaceMm), point(x, surfaceMm + deepestMm * scale)], thinSoft),
    ...depthTicks(deepestMm).flatMap((depthMm) => {
      const y = surfaceMm + depthMm * scale;
      return [
        polyline([point(x - 1, y), point(x, y)], thinSoft),
        text(point(x - 1.5, y + 0.35 * textMm), figures.shortDepth(depthMm), textMm, { anchor: "end" }),
      ];
    }),
  ];
}
