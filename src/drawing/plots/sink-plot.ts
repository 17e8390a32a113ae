import { entry, last } from "../../core/lists.ts";
import type { Landing, Sink } from "../../core/sink/sink-of-rig.ts";
import { boldMm, point, polyline, text, thinMm, thinSoft } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, Stroke } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { parts } from "../parts/parts.ts";
import { depthTicks, ticks } from "./axis.ts";
import { drawKey, type KeyEntry } from "./curve-key.ts";

/** A rig whose sinking is shown: both landings, or one. */
interface SinkCurves {
  readonly id: string;
  readonly title: string;
  readonly sinks: readonly Sink[];
}

interface SinkPlotOptions {
  readonly textMm: number;
}

/** Lines to read a depth and a time by. */
const grid: Stroke = { ink: "faint", widthMm: thinMm, dashMm: [0.5, 1.5], cap: "butt" };

/** Least height of the plot itself. */
const leastPlotMm = 25;

/**
 * Dashes of its own for each curve, so that a print without colour tells them apart; the pattern that the rig is held
 * against is thin besides.
 */
const strokes: Readonly<Record<"rig" | "sister", Readonly<Record<Landing, Stroke>>>> = {
  rig: {
    straight: { ink: "ink", widthMm: 1.5 * boldMm },
    heap: { ink: "ink", widthMm: 1.5 * boldMm, dashMm: [2.2, 1.2] },
  },
  sister: {
    straight: { ink: "soft", widthMm: thinMm, dashMm: [3, 0.9, 0.6, 0.9], cap: "butt" },
    heap: { ink: "soft", widthMm: thinMm, dashMm: [0.6, 0.9], cap: "butt" },
  },
};

/**
 * How deep the bait is after how long: the rig bold, the pattern it is held against thin. Down is down, as in the
 * water.
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
  const { words, figures, measure } = kit;
  const all = [
    ...rig.sinks.map((sink) => ({ sink, title: rig.title, stroke: strokes.rig[sink.landing] })),
    ...(sister?.sinks ?? []).map((sink) => ({
      sink,
      title: sister!.title,
      stroke: strokes.sister[sink.landing],
    })),
  ];
  const longestS = Math.max(...all.map(({ sink }) => last(sink.tenthsS)));
  const entries = all.toReversed().map(
    ({ sink, title, stroke }): KeyEntry => ({
      stroke,
      label: words(`drawing.sink.${sink.landing}`, { rig: title }),
    }),
  );

  const depths = depthTicks(depthMm);
  const left = Math.max(...depths.map((depth) => measure(figures.shortDepth(depth), textMm, "regular"))) + 2;
  const top = textMm * 0.6;
  const keyOf = (topMm: number) =>
    drawKey(entries, { leftMm: left, topMm, widthMm: box.widthMm - left }, textMm, kit);
  const axisMm = 2.2 * textMm + 2.5;
  const foot = box.heightMm - keyOf(0).heightMm - axisMm;
  const right = box.widthMm - measure("00", textMm, "regular");
  if (foot - top < leastPlotMm || right - left < leastPlotMm)
    throw new NoRoomError("a plot of sinking", box, { folder: "rigs", id: rig.id });
  const xOf = (timeS: number) => left + ((right - left) * timeS) / longestS;
  const yOf = (depth: number) => top + ((foot - top) * depth) / depthMm;

  const caption = words("drawing.sink.time");
  const times = ticks(longestS, right - left, measure("000", textMm, "regular") + 3);
  const items: Item[] = [
    ...depths
      .slice(1, -1)
      .map((depth) => polyline([point(left, yOf(depth)), point(right, yOf(depth))], grid)),
    ...times.map((time) => polyline([point(xOf(time), top), point(xOf(time), foot)], grid)),
    ...parts.waterSurface.draw({ leftMm: left, rightMm: right, yMm: top }),
    ...parts.bed.draw({ leftMm: left, rightMm: right, yMm: foot }),
    ...depths.map((depth) =>
      text(point(left - 1.5, yOf(depth) + textMm * 0.35), figures.shortDepth(depth), textMm, {
        anchor: "end",
      }),
    ),
    ...times.flatMap((time): Item[] => [
      polyline([point(xOf(time), foot), point(xOf(time), foot - 1.5)], thinSoft),
      text(point(xOf(time), foot + 2 + textMm), String(time), textMm, { anchor: "middle" }),
    ]),
    text(point((left + right) / 2, foot + 2 + 2.1 * textMm), caption, textMm, {
      anchor: "middle",
      ink: "soft",
    }),
    ...all.toReversed().map(({ sink, stroke }) =>
      polyline(
        sink.track.map(({ timeS, depthMm }) => point(xOf(timeS), yOf(depthMm))),
        stroke,
      ),
    ),
    ...keyOf(foot + axisMm).items,
  ];
  return {
    widthMm: box.widthMm,
    heightMm: box.heightMm,
    title: words("drawing.sink.title", { rig: rig.title }),
    description: all
      .map(({ sink, title }) =>
        words("drawing.sink.description", {
          rig: words(`drawing.sink.${sink.landing}`, { rig: title }),
          half: figures.time(entry(sink.tenthsS, 4)),
          all: figures.time(last(sink.tenthsS)),
        }),
      )
      .join(" "),
    items,
  };
}
