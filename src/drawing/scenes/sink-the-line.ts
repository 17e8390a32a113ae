import { topMm } from "../../core/float/profile.ts";
import type { Rig } from "../../model/rig.ts";
import { accent, arrow, circle, type Point, pathFrom, point, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, PathStep, Stroke } from "../model.ts";
import { strandStrokes } from "../strands.ts";
import { angler, hipsShare } from "./angler.ts";
import { bankAbove, bankAndWater } from "./ground.ts";
import { pointAlong } from "./path.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { smallFloat } from "./small-float.ts";
import { stepPictures } from "./step-pictures.ts";

/** Cast this far beyond the spot [mm]; common practice, no source. */
const castBeyondMm = 3000;

const sinkSteps = ["cast", "dip", "settle"] as const;
type SinkStep = (typeof sinkSteps)[number];

/** Places across as shares of the width. */
const bankEnds = 0.16;
const rodTip = 0.42;
/** Height of the angler as a share of the width. */
const tallShare = 0.22;
const spot = 0.7;
const beyond = 0.88;

const floatMm = 9;
/** Rod tip above the water, step by step; the second is under it. */
const tipAboveMm: Readonly<Record<SinkStep, number>> = { cast: 8, dip: -4, settle: 0.8 };
/** The rod's end above the water as shares of the width: high enough that the rod clears the edge of the bank. */
const buttAbove: Readonly<Record<SinkStep, number>> = { cast: 0.07, dip: 0.14, settle: 0.085 };

/** How to sink the line so that the wind cannot drag the float: cast beyond the spot, dip the tip and reel in, settle. */
export function drawSinkTheLine(rig: Rig, box: Box, kit: DrawingKit): Drawing[] {
  const { words, figures } = kit;
  const textMm = sceneTextMm(box);
  const surfaceMm = Math.max(0.46 * box.heightMm, textMm + 12);
  const items = (step: SinkStep): Item[] => [
    ...bankAndWater(box, surfaceMm, bankEnds * box.widthMm),
    ...feedSpot(box, surfaceMm, textMm, words("drawing.scenes.sink.spot")),
    ...scene(step, rig, box, surfaceMm),
    ...labels(step, box, surfaceMm, textMm, kit),
  ];
  return stepPictures("sink", sinkSteps, box, kit, items, { beyond: figures.shortDepth(castBeyondMm) });
}

/** Where specks of feed are on their way down: across from the spot and down, as shares of the way. */
const specks = [
  [-0.1, 0],
  [0.14, 0.12],
  [-0.02, 0.3],
  [0.24, 0.45],
  [-0.22, 0.55],
  [0.06, 0.72],
  [-0.14, 0.95],
  [0.26, 0.92],
] as const;

/** Feed that sinks where it went in. */
function feedSpot({ widthMm, heightMm }: Box, surfaceMm: number, textMm: number, words: string): Item[] {
  const x = spot * widthMm;
  const [top, foot] = [surfaceMm + floatMm + 2, heightMm - textMm * 1.8];
  const down = foot - top;
  return [
    ...specks.map(([aside, share]) =>
      circle(point(x + aside * down, top + share * down), 0.45, { fill: "ink" }),
    ),
    text(point(x, heightMm - 0.4 * textMm), words, textMm, { ink: "soft", anchor: "middle" }),
  ];
}

function scene(step: SinkStep, rig: Rig, { widthMm, heightMm }: Box, surfaceMm: number): Item[] {
  const tallMm = tallShare * Math.min(widthMm, heightMm / 0.54);
  const tip = point(rodTip * widthMm, surfaceMm - tipAboveMm[step]);
  const butt = point(0.09 * widthMm, surfaceMm - buttAbove[step] * widthMm);
  const floatAt = (step === "cast" ? beyond : spot) * widthMm;
  const { profile, tipShowingMm } = rig.float;
  const stretch = floatMm / topMm(profile);
  const foot = point(floatAt, surfaceMm + floatMm - tipShowingMm * stretch);
  const cast = smallFloat(rig, point(beyond * widthMm, foot.yMm), floatMm);
  return [
    // Where the float was before it was drawn back.
    ...(step === "dip" ? cast.map(outlined) : []),
    ...rod(butt, tip, { reel: true }),
    ...angler({
      hips: point(0.06 * widthMm, surfaceMm - (bankAbove / 100) * widthMm - hipsShare.sits * tallMm),
      heightMm: tallMm,
      hands: pointAlong([butt, tip], 0.046 * widthMm),
      sits: true,
    }),
    pathFrom(tip, line(step, tip, foot, surfaceMm), strandStrokes["main line"]),
    ...smallFloat(rig, foot, floatMm),
  ];
}

/** The outline of a mark alone, in dashes. */
const outlined = (item: Item): Item =>
  item.kind === "path" ? { kind: "path", steps: item.steps, stroke: before } : item;

const before: Stroke = { ink: "soft", widthMm: 0.35, dashMm: [0.8, 0.6] };

/** From the rod tip to the float: on the water, straight under it, or hanging under it. */
function line(step: SinkStep, tip: Point, foot: Point, surfaceMm: number): PathStep[] {
  const span = foot.xMm - tip.xMm;
  switch (step) {
    case "cast": {
      const down = tip.xMm + 0.16 * span;
      const last = foot.xMm - 9;
      return [
        ["C", tip.xMm + 1, surfaceMm - 1, down - 2, surfaceMm - 0.7, down, surfaceMm - 0.7],
        ["L", last, surfaceMm - 0.7],
        ["C", last + 5, surfaceMm - 0.7, foot.xMm - 3, foot.yMm + 0.5, foot.xMm, foot.yMm + 0.5],
      ];
    }
    case "dip":
      return [["L", foot.xMm, foot.yMm + 0.5]];
    case "settle": {
      const low = foot.yMm + 2;
      return [["C", tip.xMm + 0.25 * span, low, foot.xMm - 0.35 * span, low, foot.xMm, foot.yMm + 0.5]];
    }
  }
}

/** What moves: the wind over the water, the float drawn back to the spot. */
function labels(
  step: SinkStep,
  { widthMm }: Box,
  surfaceMm: number,
  textMm: number,
  { words }: DrawingKit,
): Item[] {
  const windMm = Math.max(textMm + 0.8, surfaceMm - 9);
  const wind = (from: number) => [
    text(point(from * widthMm, windMm - 1.4), words("drawing.scenes.sink.wind"), textMm, { ink: "soft" }),
    ...arrow(
      point(from * widthMm, windMm),
      point((from + 0.16) * widthMm, windMm),
      { ink: "ink", widthMm: 0.6 },
      2.4,
    ),
  ];
  switch (step) {
    case "cast":
      return wind(0.52);
    case "dip": {
      const y = surfaceMm - 3;
      const [from, to] = [(beyond - 0.03) * widthMm, (spot + 0.04) * widthMm];
      return [
        text(point((from + to) / 2, y - 1.8), words("drawing.scenes.sink.reel-in"), textMm, {
          ink: "soft",
          anchor: "middle",
        }),
        ...arrow(point(from, y), point(to, y), accent, 2.6),
      ];
    }
    case "settle":
      return wind(0.42);
  }
}
