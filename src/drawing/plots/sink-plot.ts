import { entry, last, neighbours, sum } from "../../core/lists.ts";
import type { Landing, Sink } from "../../core/sink/sink-of-rig.ts";
import type { Mm, S } from "../../core/units.ts";
import { boldMm, circle, point, polyline, text, thin, thinMm } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { layLabel, leading, paintLabel, type Run, together } from "../labels/label-text.ts";
import type { Drawing, Item, Stroke } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { depthAxisMm, depthTicks, ticks } from "./axis.ts";
import { curveNames, gridClearOf } from "./sink-names.ts";
import { tellSooner } from "./sooner.ts";

/** A rig whose sinking is shown: both landings, or one. */
interface SinkCurves {
  readonly id: string;
  readonly title: string;
  /** What stands at its curves. */
  readonly label: string;
  readonly sinks: readonly Sink[];
  /** How far over depth its hook is set, below 0 off the bed. */
  readonly overdepthMm?: Mm;
}

interface SinkPlotOptions {
  readonly textMm: number;
}

/** Lines to read a depth and a time by. */
const grid: Stroke = { ink: "faint", widthMm: thinMm, dashMm: [0.35, 1.75], cap: "butt" };
/** The rig bold and plain; what it is held against thin, with a bead on it at even times, which shows where both are one. */
const strokes = {
  rig: { ink: "ink", widthMm: 1.6 * boldMm },
  sister: { ink: "ink", widthMm: thinMm },
} as const satisfies Readonly<Record<string, Stroke>>;
const bead = { radiusMm: 0.55, gapMm: 2.4 } as const;

/** Least height of the water in a panel, and its least width in ems. */
const leastPlotMm = 25;
const leastPanelEms = 8;
const gapMm = 4;
/** Where the bait is down: a disc for the rig, a ring for the other. */
const endRadiusMm = { rig: 0.75, sister: 1.15 } as const;

/** A curve with its look and what stands beside it. */
interface Curve {
  readonly sink: Sink;
  readonly of: keyof typeof strokes;
  readonly name: string;
  readonly endS: S;
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

function panelsOf(rig: SinkCurves, sister: SinkCurves | undefined): Panel[] {
  const held = [
    { curves: rig, of: "rig" as const },
    ...(sister ? [{ curves: sister, of: "sister" as const }] : []),
  ];
  return rig.sinks.map(({ landing }) => ({
    landing,
    curves: held.flatMap(({ curves, of }) =>
      curves.sinks
        .filter((sink) => sink.landing === landing)
        .map((sink) => ({ sink, of, name: curves.label, endS: last(sink.tenthsS) })),
    ),
  }));
}

/** Which of two is down sooner; nothing of one alone. */
function resultOf({ curves }: Panel, kit: DrawingKit): Run[] {
  return curves.length < 2 ? [] : [{ text: tellSooner(curves, kit) }];
}

/**
 * How deep the bait is after how long, down as down is in the water: the rig bold, the pattern it is held against
 * thin with beads, each named beside its curve. What was laid out straight and what landed in a heap have a panel each, to
 * the same scales, so that no more than two lines have to be told apart; its head says which is down sooner.
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
  const panels = panelsOf(rig, sister);
  const depths = depthTicks(depthMm);
  const left = depthAxisMm(depthMm, textMm, kit);
  const besideMm = (box.widthMm - left - gapMm * (panels.length - 1)) / panels.length;
  const abreast = besideMm >= leastPanelEms * textMm ? panels.length : 1;
  const widthMm = abreast > 1 ? besideMm : box.widthMm - left;
  const longestS = Math.max(...panels.flatMap(({ curves }) => curves.map(({ sink }) => last(sink.tenthsS))));
  const heads = panels.map((panel) => {
    const way: Run = { text: words(`drawing.film.way.${panel.landing}`), face: "bold" };
    return [[way], resultOf(panel, kit)].map((runs) => layLabel(runs, widthMm, textMm, measure));
  });
  const across = box.widthMm - left;
  const time = layLabel([{ text: axesTold(rig, kit), ink: "soft" }], across, textMm, measure);
  const axisMm = time.heightMm + leading * textMm + 1.6;
  const headMm = Math.max(...heads.map((head) => sum(head.map((label) => label.heightMm)))) + axisMm;
  // Hatching, and the lower half of the bed's figure.
  const footMm = Math.max(bedThicknessMm + 0.3, 0.6 * textMm);
  const rows = panels.length / abreast;
  const waterMm = box.heightMm / rows - headMm - footMm;
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
        ...head.flatMap((label, j) => {
          const belowMm = sum(head.slice(j + 1).map(({ heightMm }) => heightMm));
          return paintLabel(label, 0, headMm - axisMm - belowMm - label.heightMm / 2, measure);
        }),
        ...(isLeft ? paintLabel(time, 0, headMm - axisMm + time.heightMm / 2, measure) : []),
        ...plot(panel, scales, kit),
      ];
      return [
        ...(isLeft ? depthFigures(depths, point(left, yMm + headMm), scales, kit) : []),
        { kind: "group", xMm, yMm, items },
      ];
    }),
  };
}

/** What goes down and what goes across, and where a bait is to stop short of the bed. */
function axesTold({ overdepthMm = 0 }: SinkCurves, { words, figures }: DrawingKit): string {
  const time = words("drawing.sink.time");
  if (overdepthMm >= 0) return time;
  return words("drawing.sink.time-off", { time, gap: together(figures.shortGap(-overdepthMm)) });
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

/** Water, figures of time above the surface, the curves, the rig's below the other's beads, their names, and a grid that is clear of those. */
function plot({ curves }: Panel, scales: Scales, kit: DrawingKit): Item[] {
  const { depthMm, longestS, widthMm, headMm, waterMm, textMm } = scales;
  const across = { leftMm: 0, rightMm: widthMm };
  const bedMm = headMm + waterMm;
  const times = ticks(longestS, widthMm, kit.measure("00", textMm, "regular") + 3);
  const xOf = (timeS: S) => endX(timeS, scales, kit);
  const at = ({ timeS, depthMm: deep }: Sink["track"][number]) => point(xOf(timeS), downMm(deep, scales));
  const drawn = curves.map((curve) => ({
    ...curve,
    places: curve.sink.track.map(at),
    end: at(last(curve.sink.track.filter(({ timeS }) => timeS <= curve.endS))),
    beads: curve.of === "sister" ? beadsOn(curve, widthMm / longestS).map(at) : [],
  }));
  const names = curveNames(
    drawn.map(({ places, beads, name, endS, of }) => ({
      places,
      say: [
        { text: name, ...(of === "rig" && { face: "bold" as const }) },
        { text: together(kit.figures.time(endS)) },
      ],
      ...(beads.length > 0 && { beads }),
    })),
    { ...across, topMm: headMm, footMm: bedMm },
    textMm,
    kit.measure,
  );
  const level = depthTicks(depthMm)
    .slice(1, -1)
    .map((deep) => downMm(deep, scales));
  return [
    ...gridClearOf(
      names.boxes,
      [
        ...level.map((yMm) => [point(0, yMm), point(widthMm, yMm)] as const),
        ...times.map((time) => [point(xOf(time), headMm - 1), point(xOf(time), bedMm)] as const),
      ],
      grid,
    ),
    ...parts.waterSurface.draw({ ...across, yMm: headMm }),
    ...parts.bed.draw({ ...across, yMm: bedMm }),
    ...times.map((time, i) =>
      text(point(xOf(time), headMm - 2), String(time), textMm, { anchor: i === 0 ? "start" : "middle" }),
    ),
    ...drawn.map(({ places, of }) => polyline(places, strokes[of])),
    ...names.items,
    ...drawn.flatMap(({ beads }) => beads.map((place) => circle(place, bead.radiusMm, hollow))),
    ...drawn
      .toReversed()
      .map(({ end, of }) => circle(end, endRadiusMm[of], of === "rig" ? { fill: "ink" } : hollow)),
  ];
}

const hollow = { fill: "paper", stroke: thin } as const;

/** Places of a curve at even times, as near to each other as beads may be. */
function beadsOn({ sink, endS }: Curve, mmPerS: number): Sink["track"] {
  const stepS = [1, 2, 5, 10, 20, 50].find((one) => one * mmPerS >= bead.gapMm) ?? 100;
  return Array.from({ length: Math.ceil(endS / stepS) - 1 }, (_, i) => placeAt(sink.track, (i + 1) * stepS));
}

/** Where the bait is at a time. */
function placeAt(track: Sink["track"], timeS: S): Sink["track"][number] {
  const [a, b] = neighbours(track).find(([, one]) => one.timeS >= timeS) ?? last(neighbours(track));
  const share = b.timeS === a.timeS ? 1 : (timeS - a.timeS) / (b.timeS - a.timeS);
  return { timeS, depthMm: a.depthMm + share * (b.depthMm - a.depthMm) };
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
