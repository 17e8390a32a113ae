import type { Sink } from "../core/sink/sink-of-rig.ts";
import type { SolvedDepth, SolvedRig } from "../solve/solved.ts";
import { point, polyline, text, thinSoft } from "./items.ts";
import type { Box, DrawingKit } from "./kit.ts";
import { type LabelText, layLabel, leading, paintLabel } from "./label-text.ts";
import type { Drawing, Item } from "./model.ts";
import { bedThicknessMm } from "./parts/bed.ts";
import { drawPatternColumn, sinkCurve } from "./pattern-column.ts";
import { moveFloat } from "./rig-variants.ts";
import { lineShot, lockShot, rigDescription, shotLabel } from "./rig-words.ts";

export interface PatternEntry {
  readonly rig: SolvedRig;
  readonly depth: SolvedDepth;
}

export interface PatternChartOptions {
  readonly textMm: number;
  /** End of the scale of time, where several charts share one [s]. */
  readonly longestS?: number;
}

const marginMm = 1;
/** The share of its slot that a rig takes up beside its plot of sinking. */
const rigShare = 0.34;
/** Steps of the depth scale [mm of water], the first that leaves room between its figures. */
const steps = [100, 250, 500, 1000, 2000];

/** A rig whose shot rests on the bed as it is set stands higher for it. */
function asSet({ rig, depth }: PatternEntry): PatternEntry {
  return { rig, depth: moveFloat(rig, depth, "set") };
}

/**
 * Shotting patterns next to each other, drawn to one scale of depth, with what is at the float and what is down the
 * line below each, and beside each how deep its bait is after how long, to one scale of time.
 *
 * @throws Error where the box is too small
 */
export function drawPatternChart(
  wanted: readonly PatternEntry[],
  box: Box,
  kit: DrawingKit,
  { textMm, longestS = longestSinkS(wanted) }: PatternChartOptions,
): Drawing {
  const { words, figures, measure } = kit;
  const entries = wanted.map(asSet);
  const deepestMm = Math.max(...entries.map(({ depth }) => depth.depthMm));
  const axisMm = measure(figures.shortDepth(deepestMm - (deepestMm % 500) + 250), textMm, "regular") + 3;
  const slotMm = (box.widthMm - axisMm) / entries.length;
  const captions = entries.map((entry) => caption(entry, slotMm - 2 * marginMm, textMm, kit));
  const captionMm = Math.max(...captions.map((parts) => parts.reduce((sum, one) => sum + one.heightMm, 0)));
  const surfaceMm = 4 + textMm * 0.5;
  const said = longestS > 0 ? words("drawing.pattern.sink") : "";
  const note = layLabel([{ text: said, ink: "soft" }], box.widthMm - 2 * marginMm, textMm, measure);
  const footMm = box.heightMm - note.heightMm - captionMm - bedThicknessMm - 2.5;
  const scale = (footMm - surfaceMm) / deepestMm;
  if (captions.flat().some((one) => one.widthMm > slotMm - 2 * marginMm) || scale * deepestMm < 40)
    throw new Error(`no room for ${entries.length} patterns in ${box.widthMm} × ${box.heightMm} mm`);

  const items: Item[] = [
    ...depthScale(deepestMm, scale, surfaceMm, axisMm, textMm, kit),
    ...entries.flatMap((entry, i) => {
      const left = axisMm + i * slotMm;
      const sink = sinkOf(entry);
      const rigMm = sink ? slotMm * rigShare : slotMm;
      const column = { leftMm: left, rightMm: left + slotMm - 0.6, xMm: left + rigMm / 2, surfaceMm, scale };
      const frame = {
        leftMm: left + rigMm,
        rightMm: column.rightMm - marginMm,
        surfaceMm,
        scale,
        longestS,
      };
      return [
        ...drawPatternColumn(entry.rig, entry.depth, column),
        ...(sink ? sinkCurve(sink, frame, textMm, kit) : []),
        ...captionItems(captions[i]!, left + marginMm, footMm + bedThicknessMm + 1.5, kit),
      ];
    }),
    ...paintLabel(note, marginMm, box.heightMm - note.heightMm / 2 - 0.2, measure),
  ];
  return {
    ...box,
    title: words("drawing.pattern.title"),
    description: entries.map((entry) => told(entry, kit)).join(" "),
    items,
  };
}

/** The longest that a bait of these rigs takes to the bed; 0 where nobody reckoned it [s]. */
function longestSinkS(entries: readonly PatternEntry[]): number {
  return Math.max(0, ...entries.map((entry) => sinkOf(entry)?.tenthsS.at(-1) ?? 0));
}

/** Least room for one pattern, in ems: two words of its caption side by side. */
const patternEms = 17;

/** The same in as many charts as the width asks for, with one scale of time through all of them. */
export function drawPatternCharts(
  entries: readonly PatternEntry[],
  box: Box,
  kit: DrawingKit,
  { textMm }: PatternChartOptions,
): Drawing[] {
  const perChart = Math.max(1, Math.floor(box.widthMm / (patternEms * textMm)));
  const longestS = longestSinkS(entries);
  return Array.from({ length: Math.ceil(entries.length / perChart) }, (_, i) =>
    drawPatternChart(entries.slice(i * perChart, (i + 1) * perChart), box, kit, { textMm, longestS }),
  );
}

/** How the rig sinks laid out straight, where that was reckoned. */
function sinkOf({ depth }: PatternEntry): Sink | undefined {
  return depth.inWater?.sink.find(({ landing }) => landing === "straight");
}

function told(entry: PatternEntry, kit: DrawingKit): string {
  const rig = rigDescription(entry.rig, entry.depth, kit);
  const sink = sinkOf(entry);
  if (!sink) return rig;
  const time = kit.figures.time(sink.tenthsS.at(-1)!);
  return `${rig} ${kit.words("drawing.pattern.spokenSink", { time })}`;
}

function caption({ rig, depth }: PatternEntry, roomMm: number, textMm: number, kit: DrawingKit): LabelText[] {
  const { words, measure } = kit;
  const lock = lockShot(depth);
  const line = lineShot(depth);
  const said = [
    lock.length > 0 ? words("drawing.pattern.lock", { shot: shotLabel(lock, kit) }) : undefined,
    line.length > 0 ? words("drawing.pattern.line", { shot: shotLabel(line, kit) }) : undefined,
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

/** Depths down the left side. */
function depthScale(
  deepestMm: number,
  scale: number,
  surfaceMm: number,
  axisMm: number,
  textMm: number,
  { figures }: DrawingKit,
): Item[] {
  const step = steps.find((one) => one * scale >= 2 * textMm * leading) ?? steps.at(-1)!;
  const x = axisMm - 0.8;
  const items: Item[] = [polyline([point(x, surfaceMm), point(x, surfaceMm + deepestMm * scale)], thinSoft)];
  for (let depthMm = 0; depthMm <= deepestMm + 1; depthMm += step) {
    const y = surfaceMm + depthMm * scale;
    items.push(
      polyline([point(x - 1.2, y), point(x, y)], thinSoft),
      text(point(x - 1.8, y + 0.35 * textMm), figures.shortDepth(depthMm), textMm, {
        anchor: "end",
        ink: "soft",
      }),
    );
  }
  return items;
}
