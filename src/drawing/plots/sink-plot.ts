import { entry, last } from "../../core/lists.ts";
import type { Landing, Sink } from "../../core/sink/sink-of-rig.ts";
import type { Mm } from "../../core/units.ts";
import { boldMm, circle, point, polyline, text, thin, thinMm } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { labelRow } from "../labels/label-rows.ts";
import { layLabel, leading, paintLabel, together } from "../labels/label-text.ts";
import type { Drawing, Item, Stroke } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { depthAxisMm, depthTicks, ticks } from "./axis.ts";

/** A rig whose sinking is shown: both landings, or one. */
interface SinkCurves {
  readonly id: string;
  readonly title: string;
  /** What stands at its curves. */
  readonly label: string;
  readonly sinks: readonly Sink[];
}

interface SinkPlotOptions {
  readonly textMm: number;
}

/** Lines to read a depth and a time by. */
const grid: Stroke = { ink: "faint", widthMm: thinMm, dashMm: [0.5, 1.5], cap: "butt" };
/** The rig bold; the way that it is held against thin, and dashed besides. */
const strokes = {
  rig: { ink: "ink", widthMm: 1.5 * boldMm },
  sister: { ink: "ink", widthMm: boldMm, dashMm: [2.2, 1.2] },
} as const satisfies Readonly<Record<string, Stroke>>;

/** Least height of the water in a panel, and its least width in ems. */
const leastPlotMm = 25;
const leastPanelEms = 8;
const gapMm = 4;
/** At the end of a curve. */
const endRadiusMm = 0.8;
/** Between the bed and the words below it. */
const leaderMm = 2.2;

/** A curve with its look and what stands at its end. */
interface Curve {
  readonly sink: Sink;
  readonly stroke: Stroke;
  readonly label: string;
}

/** One way to land, with a curve for the rig and one for what it is held against. */
interface Panel {
  readonly landing: Landing;
  readonly curves: readonly Curve[];
}

/** What all panels share. */
interface Scales {
  readonly depthMm: Mm;
  readonly longestS: number;
  readonly widthMm: number;
  /** From the top of a panel to the surface, and from there to the bed. */
  readonly headMm: number;
  readonly waterMm: number;
  readonly textMm: number;
}

function panelsOf(rig: SinkCurves, sister: SinkCurves | undefined, { figures }: DrawingKit): Panel[] {
  const held = [
    { of: rig, stroke: strokes.rig },
    ...(sister ? [{ of: sister, stroke: strokes.sister }] : []),
  ];
  return rig.sinks.map(({ landing }) => ({
    landing,
    curves: held.flatMap(({ of, stroke }) =>
      of.sinks
        .filter((sink) => sink.landing === landing)
        .map((sink) => ({
          sink,
          stroke,
          label: `${together(of.label)} ${together(figures.time(last(sink.tenthsS)))}`,
        })),
    ),
  }));
}

/**
 * How deep the bait is after how long, down as down is in the water: the rig bold, the pattern it is held against
 * thin, each named at its end. What was laid out straight and what landed in a heap have a panel each, to the same
 * scales, so that no more than two lines have to be told apart.
 *
 * @throws NoRoomError where the box is too small
 */
export function drawSinkPlot(
  rig: SinkCurves,
  sister: SinkCurves | undefined,
  depthMm: number,
  box: Box,
  kit: DrawingKit,
  { textMm }: SinkPlotOptions,
): Drawing {
  const { words, measure } = kit;
  const panels = panelsOf(rig, sister, kit);
  const depths = depthTicks(depthMm);
  const left = depthAxisMm(depthMm, textMm, kit);
  const besideMm = (box.widthMm - left - gapMm * (panels.length - 1)) / panels.length;
  const abreast = besideMm >= leastPanelEms * textMm ? panels.length : 1;
  const widthMm = abreast > 1 ? besideMm : box.widthMm - left;
  const longestS = Math.max(...panels.flatMap(({ curves }) => curves.map(({ sink }) => last(sink.tenthsS))));
  const heads = panels.map(({ landing }) =>
    layLabel([{ text: words(`drawing.film.way.${landing}`), face: "bold" }], widthMm, textMm, measure),
  );
  const across = box.widthMm - left;
  const time = layLabel([{ text: words("drawing.sink.time"), ink: "soft" }], across, textMm, measure);
  const axisMm = time.heightMm + leading * textMm + 1.6;
  const headMm = Math.max(...heads.map((head) => head.heightMm)) + axisMm;
  const rows = panels.length / abreast;
  const named = (i: number, bedMm: number) =>
    labelRow(
      entry(panels, i).curves.map(({ label, sink }) => ({
        say: label,
        at: point(endX(last(sink.tenthsS), { longestS, widthMm, textMm }, kit), bedMm),
      })),
      widthMm,
      textMm,
      measure,
    );
  const footMm = bedThicknessMm + leaderMm + Math.max(...panels.map((_, i) => named(i, 0).heightMm));
  const waterMm = box.heightMm / rows - headMm - footMm - 0.5;
  if (waterMm < leastPlotMm || widthMm < leastPanelEms * textMm)
    throw new NoRoomError("a plot of sinking", box, { folder: "rigs", id: rig.id });

  const scales: Scales = { depthMm, longestS, widthMm, headMm, waterMm, textMm };
  return {
    ...box,
    title: words("drawing.sink.title", { rig: rig.title }),
    description: describe([rig, ...(sister ? [sister] : [])], kit),
    items: panels.flatMap((panel, i): Item[] => {
      const xMm = left + (i % abreast) * (widthMm + gapMm);
      const yMm = abreast > 1 ? 0 : (i * box.heightMm) / rows;
      const head = entry(heads, i);
      const isLeft = i % abreast === 0;
      const items = [
        ...paintLabel(head, 0, headMm - axisMm - head.heightMm / 2, measure),
        ...(isLeft ? paintLabel(time, 0, headMm - axisMm + time.heightMm / 2, measure) : []),
        ...plot(panel, scales, kit),
        ...named(i, headMm + waterMm).paint(headMm + waterMm + bedThicknessMm + leaderMm, "up", true),
        ...ends(panel, scales, kit),
      ];
      return [
        ...(isLeft ? depthFigures(depths, point(left, yMm + headMm), scales, kit) : []),
        { kind: "group", xMm, yMm, items },
      ];
    }),
  };
}

/** How far along a panel a time is; the last figure of the axis keeps within it. */
function endX(
  timeS: number,
  { longestS, widthMm, textMm }: Pick<Scales, "longestS" | "widthMm" | "textMm">,
  { measure }: DrawingKit,
): number {
  return ((widthMm - measure("0", textMm, "regular")) * timeS) / longestS;
}

const downMm = (depth: Mm, { headMm, waterMm, depthMm }: Scales) => headMm + (waterMm * depth) / depthMm;

/** Depths at the left, down from the surface. */
function depthFigures(
  depths: readonly Mm[],
  surface: { readonly xMm: number; readonly yMm: number },
  { waterMm, depthMm, textMm }: Scales,
  { figures }: DrawingKit,
): Item[] {
  return depths.map((depth) =>
    text(
      point(surface.xMm - 1.5, surface.yMm + (waterMm * depth) / depthMm + 0.35 * textMm),
      figures.shortDepth(depth),
      textMm,
      { anchor: "end" },
    ),
  );
}

/** Water, grid, figures of time above the surface, and the curves, the rig's on top. */
function plot({ curves }: Panel, scales: Scales, kit: DrawingKit): Item[] {
  const { depthMm, longestS, widthMm, headMm, waterMm, textMm } = scales;
  const across = { leftMm: 0, rightMm: widthMm };
  const bedMm = headMm + waterMm;
  const times = ticks(longestS, widthMm, kit.measure("00", textMm, "regular") + 3);
  const xOf = (timeS: number) => endX(timeS, scales, kit);
  return [
    ...depthTicks(depthMm)
      .slice(1, -1)
      .map((depth) =>
        polyline([point(0, downMm(depth, scales)), point(widthMm, downMm(depth, scales))], grid),
      ),
    ...times.map((time) => polyline([point(xOf(time), headMm - 1), point(xOf(time), bedMm)], grid)),
    ...parts.waterSurface.draw({ ...across, yMm: headMm }),
    ...parts.bed.draw({ ...across, yMm: bedMm }),
    ...times.map((time, i) =>
      text(point(xOf(time), headMm - 2), String(time), textMm, { anchor: i === 0 ? "start" : "middle" }),
    ),
    ...curves.toReversed().map(({ sink, stroke }) =>
      polyline(
        sink.track.map(({ timeS, depthMm: at }) => point(xOf(timeS), downMm(at, scales))),
        stroke,
      ),
    ),
  ];
}

/** A dot where each curve ends, that its name leads to. */
function ends({ curves }: Panel, scales: Scales, kit: DrawingKit): Item[] {
  return curves.map(({ sink }) => {
    const { timeS, depthMm } = last(sink.track.filter((one) => one.timeS <= last(sink.tenthsS)));
    return circle(point(endX(timeS, scales, kit), downMm(depthMm, scales)), endRadiusMm, {
      fill: "paper",
      stroke: thin,
    });
  });
}

function describe(rigs: readonly SinkCurves[], { words, figures }: DrawingKit): string {
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
