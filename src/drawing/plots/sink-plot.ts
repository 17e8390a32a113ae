import { entry, last, sum } from "../../core/lists.ts";
import type { Landing, Sink } from "../../core/sink/sink-of-rig.ts";
import type { Mm, S } from "../../core/units.ts";
import { point, rectangle, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { type LabelText, layLabel, paintLabel, type Run, together } from "../labels/label-text.ts";
import type { Drawing, Item } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { depthAxisMm, depthTicks } from "./axis.ts";
import { fallingBait, fallingWidthMm } from "./falling-bait.ts";
import { tellSooner } from "./sooner.ts";

/** A rig whose sinking is shown: both landings, or one. */
interface SinkingRig {
  readonly id: string;
  readonly title: string;
  /** What stands above its bait. */
  readonly label: string;
  readonly sinks: readonly Sink[];
  /** How far over depth its hook is set, below 0 off the bed. */
  readonly overdepthMm?: Mm;
}

interface SinkPlotOptions {
  readonly textMm: number;
}

/** Least height of the water in a panel, and its least width in ems. */
const leastPlotMm = 25;
const leastPanelEms = 8;
const gapMm = 4;
/** Between the left of a column and the middle of its marks, and after its times. */
const besideMm = 2;

/** A bait on its way down, and what stands above it. */
interface Column {
  readonly sink: Sink;
  readonly name: string;
  readonly endS: S;
}

/** One way to land, with a column for the rig and one for what it is held against. */
interface Panel {
  readonly landing: Landing;
  readonly columns: readonly Column[];
}

/** What all panels share. */
interface Scales {
  readonly depthMm: Mm;
  readonly longestS: S;
  readonly widthMm: number;
  /** From the top of a panel to the surface, and from there to the bed. */
  readonly headMm: number;
  readonly waterMm: number;
  readonly textMm: number;
}

function panelsOf(rig: SinkingRig, sister: SinkingRig | undefined): Panel[] {
  return rig.sinks.map(({ landing }) => ({
    landing,
    columns: [rig, ...(sister ? [sister] : [])].flatMap(({ label, sinks }) =>
      sinks
        .filter((sink) => sink.landing === landing)
        .map((sink) => ({ sink, name: label, endS: last(sink.tenthsS) })),
    ),
  }));
}

/** Which of two is down sooner; nothing of one alone. */
function resultOf({ columns }: Panel, kit: DrawingKit): Run[] {
  return columns.length < 2 ? [] : [{ text: tellSooner(columns, kit) }];
}

/**
 * Where the bait is second by second: the rig's beside that of the pattern it is held against, each straight down as it is in the
 * water, under its name. What was laid out straight and what landed in a heap have a panel each, to the same depth; its head
 * says which is down sooner. Where panels must stand below each other it may be taller than its box.
 *
 * @throws NoRoomError where the box is too narrow
 */
export function drawSinkPlot(
  rig: SinkingRig,
  sister: SinkingRig | undefined,
  depthMm: number,
  box: Box,
  kit: DrawingKit,
  { textMm }: SinkPlotOptions,
): Drawing {
  const { words } = kit;
  const panels = panelsOf(rig, sister);
  const left = depthAxisMm(depthMm, textMm, kit);
  const across = box.widthMm - left;
  const longestS = Math.max(...panels.flatMap(({ columns }) => columns.map(({ endS }) => endS)));
  const most = Math.max(...panels.map(({ columns }) => columns.length));
  const leastMm = Math.max(
    leastPanelEms * textMm,
    most * (2 * besideMm + fallingWidthMm(longestS, textMm, kit)),
  );
  const shareMm = (across - gapMm * (panels.length - 1)) / panels.length;
  const abreast = shareMm >= leastMm ? panels.length : 1;
  const widthMm = abreast > 1 ? shareMm : across;
  const heads = headsOf(panels, rig, { widthMm, acrossMm: across, textMm }, kit);
  const { headMm } = heads;
  // Hatching, and the lower half of the bed's figure.
  const footMm = Math.max(bedThicknessMm + 0.3, 0.6 * textMm);
  const rows = panels.length / abreast;
  const rowMm = Math.max(box.heightMm / rows, headMm + leastPlotMm + footMm);
  const waterMm = rowMm - headMm - footMm;
  if (widthMm < leastMm) throw new NoRoomError("a plot of sinking", box, { folder: "rigs", id: rig.id });

  const scales: Scales = { depthMm, longestS, widthMm, headMm, waterMm, textMm };
  return {
    widthMm: box.widthMm,
    heightMm: rows * rowMm,
    title: words("drawing.sink.title", { rig: rig.title }),
    description: describe([rig, ...(sister ? [sister] : [])], kit),
    items: panels.flatMap((panel, i): Item[] => {
      const xMm = left + (i % abreast) * (widthMm + gapMm);
      const yMm = abreast > 1 ? 0 : i * rowMm;
      const isLeft = i % abreast === 0;
      const items = [...heads.items(i, isLeft), ...water(panel, scales, kit)];
      return [
        ...(isLeft ? depthFigures(point(left, yMm + headMm), scales, kit) : []),
        { kind: "group", xMm, yMm, items },
      ];
    }),
  };
}

/** Between a name and the surface below it. */
const nameFreeMm = 1;

/** What stands above the panels, each as high: how it lands, who is down sooner, what a mark is, and whose bait is below. */
function headsOf(
  panels: readonly Panel[],
  rig: SinkingRig,
  {
    widthMm,
    acrossMm,
    textMm,
  }: { readonly widthMm: number; readonly acrossMm: number; readonly textMm: number },
  kit: DrawingKit,
): { readonly headMm: number; readonly items: (panel: number, isLeft: boolean) => Item[] } {
  const { words, measure } = kit;
  const lay = (run: Run, roomMm: number) => layLabel([run], roomMm, textMm, measure);
  const ways = panels.map((panel) => {
    const way: Run = { text: words(`drawing.film.way.${panel.landing}`), face: "bold" };
    return [lay(way, widthMm), ...resultOf(panel, kit).map((run) => lay(run, widthMm))];
  });
  const names = panels.map(({ columns }) =>
    columns.length > 1 ? columns.map(({ name }) => lay({ text: name }, widthMm / columns.length)) : [],
  );
  const told = lay({ text: ringsTold(rig, kit), ink: "soft" }, acrossMm);
  const heightOf = (labels: readonly LabelText[]) => sum(labels.map(({ heightMm }) => heightMm));
  const wayMm = Math.max(...ways.map(heightOf));
  const namesMm = Math.max(0, ...names.flat().map(({ heightMm }) => heightMm));
  const headMm = wayMm + told.heightMm + namesMm + nameFreeMm;
  return {
    headMm,
    items: (panel, isLeft) => [
      ...entry(ways, panel).flatMap((label, j, all) =>
        paintLabel(label, 0, heightOf(all.slice(0, j)) + label.heightMm / 2, measure),
      ),
      ...(isLeft ? paintLabel(told, 0, wayMm + told.heightMm / 2, measure) : []),
      ...entry(names, panel).flatMap((label, j, all) =>
        paintLabel(label, (j * widthMm) / all.length, headMm - nameFreeMm - label.heightMm / 2, measure),
      ),
    ],
  };
}

/** What a mark is, and where a bait is to stop short of the bed. */
function ringsTold({ overdepthMm = 0 }: SinkingRig, { words, figures }: DrawingKit): string {
  const rings = words("drawing.sink.rings");
  if (overdepthMm >= 0) return rings;
  return words("drawing.sink.rings-off", { rings, gap: together(figures.shortGap(-overdepthMm)) });
}

/** Depths at the left, down from the surface. */
function depthFigures(
  surface: { readonly xMm: number; readonly yMm: number },
  { waterMm, depthMm, textMm }: Scales,
  { figures }: DrawingKit,
): Item[] {
  return depthTicks(depthMm).map((depth) =>
    text(
      point(surface.xMm - 1.5, surface.yMm + (waterMm * depth) / depthMm + 0.35 * textMm),
      figures.shortDepth(depth),
      textMm,
      { anchor: "end" },
    ),
  );
}

/** Water from surface to bed, with each bait on its way down. */
function water({ columns }: Panel, scales: Scales, kit: DrawingKit): Item[] {
  const { depthMm, longestS, widthMm, headMm, waterMm, textMm } = scales;
  const across = { leftMm: 0, rightMm: widthMm };
  const bedMm = headMm + waterMm;
  const aloneMm = (widthMm - fallingWidthMm(longestS, textMm, kit)) / 2;
  const yOf = (deepMm: Mm) => headMm + (waterMm * deepMm) / depthMm;
  return [
    rectangle(0, headMm, widthMm, waterMm, { fill: "water" }),
    ...parts.waterSurface.draw({ ...across, yMm: headMm }),
    ...parts.bed.draw({ ...across, yMm: bedMm }),
    ...columns.flatMap(({ sink }, i) => {
      const xMm = columns.length > 1 ? (i * widthMm) / columns.length + besideMm : aloneMm;
      return fallingBait(sink, { xMm, yOf, bedMm, textMm }, kit);
    }),
  ];
}

function describe(rigs: readonly SinkingRig[], { words, figures }: DrawingKit): string {
  return rigs
    .map(({ sinks, title }) => {
      const ways = sinks.map(({ landing, tenthsS }) =>
        words(`drawing.sink.${landing}`, {
          half: figures.time(entry(tenthsS, 4)),
          all: figures.time(last(tenthsS)),
        }),
      );
      return words("drawing.sink.description", { rig: title, ways: ways.join("; ") });
    })
    .join(" ");
}
