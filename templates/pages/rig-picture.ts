import type { Float } from "../../src/core/float.ts";
import { drawFloat } from "../../src/drawing/float-drawing.ts";
import { joinStrokes } from "../../src/drawing/join-strokes.ts";
import type { DrawingKit } from "../../src/drawing/kit.ts";
import { drawRig } from "../../src/drawing/rig-drawing.ts";
import { drawingToSvg } from "../../src/drawing/svg.ts";
import type { SolvedDepth, SolvedRig } from "../../src/solve/solved.ts";

/** Room for a picture in a column of text: on a phone 80 mm become 320 px, so its words are read as 14 px. */
export const pictureRoom = { widthMm: 80, textMm: 3.5 };
const rigBox = { widthMm: pictureRoom.widthMm, heightMm: 120 };
const floatBox = { widthMm: pictureRoom.widthMm, heightMm: 150 };

/** A rig at one depth, as SVG whose ids start with the prefix. */
export function rigPicture(rig: SolvedRig, depth: SolvedDepth, kit: DrawingKit, idPrefix: string): string {
  const drawing = drawRig(rig, depth, rigBox, kit, { labels: "full", textMm: pictureRoom.textMm });
  return drawingToSvg(joinStrokes(drawing), { idPrefix });
}

/** A float with its parts named, as SVG. */
export function floatPicture(float: Float, kit: DrawingKit, idPrefix: string): string {
  return drawingToSvg(drawFloat(float, floatBox, kit, pictureRoom), { idPrefix });
}
