import { asSet } from "../../core/float/moved-float.ts";
import { last } from "../../core/lists.ts";
import type { Landing, Sink } from "../../core/sink/sink-of-rig.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { point, polyline, rectangle, text, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { type LabelText, layLabel, paintLabel } from "../labels/label-text.ts";
import type { Drawing, Item } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { depthAxisMm, depthTicks } from "../plots/axis.ts";
import { fallingBait } from "../plots/falling-bait.ts";
import { spoken } from "../spoken.ts";
import { drawPatternColumn, type PatternColumn, type ShotLook, shotScales } from "./pattern-column.ts";

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
/** From the left of its water to the middle of a bait on the way down. */
const besideMm = 2.2;
/** Least width of a pattern with its caption, in ems; where fewer find room, the rest go into further charts. */
const slotEms = 6;
/** The share of its slot that a rig takes up beside its bait on the way down. */
const rigShare = 0.45;

/** What charts of one picture share. */
interface Scales {
  readonly room: PatternRoom;
  readonly deepestMm: number;
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
  const { room, surfaceMm, axisMm, slotMm } = scales;
  const { widthMm, textMm } = room;
  const captionRoomMm = slotMm - 2 * marginMm;
  const captions = entries.map((entry) => caption(entry, captionRoomMm, textMm, kit));
  const captionMm = Math.max(...captions.map((parts) => parts.reduce((sum, one) => sum + one.heightMm, 0)));
  const captionTop = surfaceMm + room.waterMm + bedThicknessMm + 1.5;
  const noteTop = captionTop + captionMm + 1;
  const columns = entries.map((entry, i) => chartColumn(entry, axisMm + i * slotMm, scales, kit));
  const notes = [scaleTold(columns, kit), ...sinkingTold(entries, kit)];
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

/** A rig in its slot, with its bait on the way down beside it where that was reckoned. */
function chartColumn(
  entry: PatternEntry,
  slotLeftMm: number,
  scales: Scales,
  kit: DrawingKit,
): PatternColumn {
  const { room, scale, surfaceMm, slotMm } = scales;
  const sink = sinkOf(entry);
  const column = rigColumn(entry, slotLeftMm, scales);
  if (!sink) return column;
  const leftMm = slotLeftMm + slotMm * rigShare;
  const rightMm = slotLeftMm + slotMm - marginMm;
  const bedMm = surfaceMm + entry.depth.depthMm * scale;
  const yOf = (depthMm: Mm) => surfaceMm + depthMm * scale;
  const falling = { xMm: leftMm + besideMm, yOf, bedMm, textMm: room.textMm };
  return {
    ...column,
    items: [
      ...column.items,
      rectangle(leftMm, surfaceMm, rightMm - leftMm, bedMm - surfaceMm, { fill: "water" }),
      ...parts.waterSurface.draw({ leftMm, rightMm, yMm: surfaceMm }),
      ...parts.bed.draw({ leftMm, rightMm, yMm: bedMm }),
      ...fallingBait(sink, falling, kit),
    ],
  };
}

/** How the rig sinks laid out straight, or as it may land; nothing where nobody reckoned it. */
function sinkOf({ depth }: PatternEntry): Sink | undefined {
  const sinks = depth.inWater?.sink ?? [];
  return sinks.find(({ landing }) => landing === "straight") ?? sinks[0];
}

/** All that is not to the scale of the depths. */
function scaleTold(columns: readonly PatternColumn[], { words }: DrawingKit): string {
  const untrue = [
    words("drawing.rig.not-to-scale.always"),
    ...(columns.some(({ isApart }) => isApart) ? [words("drawing.rig.not-to-scale.short-gaps")] : []),
    ...(columns.some(({ isBroken }) => isBroken) ? [words("drawing.pattern.broken")] : []),
    ...(columns.some(({ isLaidUntrue }) => isLaidUntrue) ? [words("drawing.pattern.laid")] : []),
  ];
  return words("drawing.pattern.scale", { parts: untrue.join(", ") });
}

/** What the rings are, and how the rigs land: most of them in one way, the others by name. */
function sinkingTold(entries: readonly PatternEntry[], { words }: DrawingKit): string[] {
  const landed = entries.flatMap((entry) => {
    const landing = sinkOf(entry)?.landing;
    return landing ? [{ rig: entry.rig.rig.title, landing }] : [];
  });
  const [some] = landed;
  if (!some) return [];
  const way = (landing: Landing) => words(`drawing.film.way.${landing}`);
  const others = landed.filter(({ landing }) => landing !== some.landing);
  return [
    words("drawing.pattern.sink", { way: way(some.landing) }),
    ...others.map(({ rig, landing }) => words("drawing.pattern.sink-of", { rig, way: way(landing) })),
  ];
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
