import { type Float, lengthMm } from "../../src/core/float/float.ts";
import { first } from "../../src/core/lists.ts";
import { drawFloat } from "../../src/drawing/float/float-drawing.ts";
import { joinStrokes } from "../../src/drawing/join-strokes.ts";
import type { DrawingKit } from "../../src/drawing/kit.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import { drawHangPlot, hangPlotRig, hangsAt } from "../../src/drawing/plots/hang-plot.ts";
import { drawSinkPlot } from "../../src/drawing/plots/sink-plot.ts";
import { drawRig } from "../../src/drawing/rig/rig-drawing.ts";
import { drawingToSvg } from "../../src/drawing/svg.ts";
import type { SolvedDepth, SolvedRig } from "../../src/model/solved.ts";
import { keyOf } from "../../src/words/words.ts";

/** Room for a picture in a column of text: on a phone 80 mm become 320 px, so its words are read as 14 px. */
export const pictureRoom = { widthMm: 80, textMm: 3.5 };
const rigBox = { widthMm: pictureRoom.widthMm, heightMm: 120 };
const smallRigBox = { widthMm: 36, heightMm: 72 };
const plotBox = { widthMm: pictureRoom.widthMm, heightMm: 84 };
/** A float up to this long is drawn to true size, a longer one to half of it. */
const trueSizeMm = 110;
/** What stands above and below a float: room for its eye and the caption. */
const aroundFloatMm = 24;
const leastFloatMm = 80;

/** A rig at one depth, as SVG whose ids start with the prefix. */
export function rigPicture(rig: SolvedRig, depth: SolvedDepth, kit: DrawingKit, idPrefix: string): string {
  const drawing = drawRig(rig, depth, rigBox, kit, { labels: "full", textMm: pictureRoom.textMm });
  return drawingToSvg(joinStrokes(drawing), { idPrefix });
}

/** A rig without words, to tell it from others in a list, as SVG. */
export function smallRigPicture(rig: SolvedRig, kit: DrawingKit, idPrefix: string): string {
  const drawing = drawRig(rig, first(rig.depths), smallRigBox, kit, {
    labels: "none",
    textMm: pictureRoom.textMm,
  });
  return drawingToSvg(joinStrokes(drawing), { idPrefix });
}

/** A float with its parts named, as SVG. */
export function floatPicture(float: Float, kit: DrawingKit, idPrefix: string): string {
  const { widthMm } = pictureRoom;
  const drawnMm = lengthMm(float) <= trueSizeMm ? lengthMm(float) : lengthMm(float) / 2;
  const box = { widthMm, heightMm: Math.max(leastFloatMm, drawnMm + aroundFloatMm) };
  return drawingToSvg(drawFloat(float, box, kit, { ...pictureRoom, stretched: true }), { idPrefix });
}

/** How deep the bait is after how long, beside the same shot hung in another way; none where nobody reckoned it. */
export function sinkDrawing(
  { rig }: SolvedRig,
  { inWater, depthMm, overdepthMm }: SolvedDepth,
  kit: DrawingKit,
): Drawing | undefined {
  if (!inWater || inWater.sink.length === 0) return undefined;
  const label = kit.words("drawing.sink.this-rig");
  const curves = { id: rig.id, title: rig.title, label, sinks: inWater.sink, overdepthMm };
  const sister = inWater.sister && {
    id: rig.id,
    title: kit.words(`drawing.sink.sister.${keyOf(inWater.sister.arrangement)}`),
    label: kit.words(`drawing.film.way.${keyOf(inWater.sister.arrangement)}`),
    sinks: inWater.sister.sink,
  };
  return drawSinkPlot(curves, sister, depthMm, plotBox, kit, pictureRoom);
}

/** The same as SVG. */
export function sinkPicture(
  rig: SolvedRig,
  depth: SolvedDepth,
  kit: DrawingKit,
  idPrefix: string,
): string | undefined {
  const drawing = sinkDrawing(rig, depth, kit);
  return drawing && drawingToSvg(joinStrokes(drawing), { idPrefix });
}

/** The line in the first of the rig's paces, as SVG; none in still water. */
export function hangPicture(
  rig: SolvedRig,
  depth: SolvedDepth,
  kit: DrawingKit,
  idPrefix: string,
): string | undefined {
  const [first] = depth.inWater?.flow ?? [];
  if (!first) return undefined;
  const hangs = hangsAt(depth, first.paceMs);
  const drawing = drawHangPlot(hangPlotRig(rig, depth), hangs, rigBox, kit, pictureRoom);
  return drawingToSvg(joinStrokes(drawing), { idPrefix });
}
