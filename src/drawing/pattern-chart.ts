import { lengthMm } from "../core/float.ts";
import type { SolvedDepth, SolvedRig } from "../solve/solved.ts";
import { floatLook } from "./float-parts.ts";
import { point, polyline, rectangle, text, thin, thinSoft } from "./items.ts";
import type { Box, DrawingKit } from "./kit.ts";
import { placeInOrder } from "./label-placement.ts";
import { type LabelText, layLabel, leading, paintLabel } from "./label-text.ts";
import type { Drawing, Item } from "./model.ts";
import { bedThicknessMm } from "./parts/bed.ts";
import { floatEyeRadiusMm } from "./parts/float-body.ts";
import { parts } from "./parts/parts.ts";
import { leastShotRadiusMm } from "./parts/shot.ts";
import { lineShot, lockShot, rigDescription, shotLabel } from "./rig-words.ts";
import { strandStrokes } from "./strands.ts";

/** Room for a plot beside a rig: its top is the surface, its foot the deepest bed of the chart. */
export interface PlotRoom extends Box {
  /** The depth that its height stands for [mm of water]. */
  readonly depthMm: number;
}

export interface PatternEntry {
  readonly rig: SolvedRig;
  readonly depth: SolvedDepth;
  /** Draws what stands beside the rig, to the same scale of depth, such as how its bait sinks. */
  readonly plot?: (room: PlotRoom) => readonly Item[];
}

export interface PatternChartOptions {
  readonly textMm: number;
}

const marginMm = 1;
const shotScale = 0.5;
const hookMm = 2.6;
/** Steps of the depth scale [mm of water], the first that leaves room between its figures. */
const steps = [100, 250, 500, 1000, 2000];

/**
 * Shotting patterns next to each other, drawn to one scale of depth, with what is at the float and what is down the
 * line below each.
 *
 * @throws Error where the box is too small
 */
export function drawPatternChart(
  entries: readonly PatternEntry[],
  box: Box,
  kit: DrawingKit,
  { textMm }: PatternChartOptions,
): Drawing {
  const { words, figures, measure } = kit;
  const deepestMm = Math.max(...entries.map(({ depth }) => depth.depthMm));
  const axisMm = measure(figures.shortDepth(deepestMm - (deepestMm % 500) + 250), textMm, "regular") + 3;
  const slotMm = (box.widthMm - axisMm) / entries.length;
  const captions = entries.map((entry) => caption(entry, slotMm - 2 * marginMm, textMm, kit));
  const captionMm = Math.max(...captions.map((parts) => parts.reduce((sum, one) => sum + one.heightMm, 0)));
  const surfaceMm = 4 + textMm * 0.5;
  const footMm = box.heightMm - captionMm - bedThicknessMm - 2;
  const scale = (footMm - surfaceMm) / deepestMm;
  if (captions.flat().some((one) => one.widthMm > slotMm - 2 * marginMm) || scale * deepestMm < 40)
    throw new Error(`no room for ${entries.length} patterns in ${box.widthMm} × ${box.heightMm} mm`);

  const items: Item[] = [
    ...depthScale(deepestMm, scale, surfaceMm, axisMm, textMm, kit),
    ...entries.flatMap((entry, i) => {
      const left = axisMm + i * slotMm;
      const rigMm = entry.plot ? slotMm * 0.3 : slotMm;
      const plotRoom = {
        widthMm: slotMm - rigMm - marginMm,
        heightMm: deepestMm * scale,
        depthMm: deepestMm,
      };
      const plot = entry.plot?.(plotRoom);
      return [
        ...drawColumn(entry, { left, right: left + slotMm, x: left + rigMm / 2, surfaceMm, scale }),
        ...(plot ? [{ kind: "group", xMm: left + rigMm, yMm: surfaceMm, items: plot } as const] : []),
        ...captionItems(captions[i]!, left + marginMm, footMm + bedThicknessMm + 1.5, kit),
      ];
    }),
  ];
  return {
    ...box,
    title: words("drawing.pattern.title"),
    description: entries.map(({ rig, depth }) => rigDescription(rig, depth, kit)).join(" "),
    items,
  };
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

interface ChartColumn {
  readonly left: number;
  readonly right: number;
  /** The rig's line. */
  readonly x: number;
  readonly surfaceMm: number;
  readonly scale: number;
}

/** One rig to the chart's scale; shot that would cover each other are moved just so far that they do not. */
function drawColumn({ rig, depth }: PatternEntry, column: ChartColumn): Item[] {
  const { left, right, x, surfaceMm, scale } = column;
  const { float, hookLengthMm } = rig.rig;
  const bedMm = surfaceMm + depth.depthMm * scale;
  const eyeMm = surfaceMm + depth.draughtMm * scale + floatEyeRadiusMm;
  const hookTip = Math.min(bedMm - 0.3, eyeMm + depth.floatToHookMm * scale);
  const y = (fromHookMm: number) => hookTip - fromHookMm * scale;
  const shots = [...depth.shot].sort((a, b) => b.fromHookMm - a.fromHookMm);
  const radii = shots.map((one) => Math.max(leastShotRadiusMm, (one.diameterMm / 2) * shotScale));
  const wanted = shots.map((one, i) => ({ atMm: y(one.fromHookMm), sizeMm: 2 * radii[i]! }));
  const places = placeInOrder(wanted, eyeMm + floatEyeRadiusMm, hookTip - hookMm, 0.15);
  if (!places) throw new Error(`no room for the shot of ${rig.rig.id} at ${depth.depthMm} mm`);
  const loop = y(hookLengthMm);
  const widest = Math.max(...float.profile.map((p) => p.diameterMm));
  return [
    rectangle(left, surfaceMm, right - left - 0.6, bedMm - surfaceMm, { fill: "water" }),
    ...parts.bed.draw({ leftMm: left, rightMm: right - 0.6, yMm: bedMm }),
    ...parts.waterSurface.draw({ leftMm: left, rightMm: right - 0.6, yMm: surfaceMm }),
    polyline([point(x, eyeMm), point(x, loop)], strandStrokes["main line"]),
    polyline([point(x, loop), point(x, hookTip - hookMm)], strandStrokes["hook length"]),
    polyline([point(x - 1, loop), point(x + 1, loop)], thin),
    ...parts.floatBody.draw({
      ...floatLook(float),
      at: point(x, surfaceMm + (lengthMm(float) - depth.tipShowingMm) * scale),
      lengthScale: scale,
      widthScale: Math.max(scale, 1.8 / widest),
    }),
    ...places.flatMap((place, i) => parts.shot.draw({ at: point(x, place), radiusMm: radii[i]! })),
    ...parts.hook.draw({ bend: point(x, hookTip), heightMm: hookMm }),
  ];
}
