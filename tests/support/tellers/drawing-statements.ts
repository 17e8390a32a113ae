import { variantsOf } from "../../../src/core/float/moved-float.ts";
import type { DrawingKit } from "../../../src/drawing/kit.ts";
import { drawRig } from "../../../src/drawing/rig/rig-drawing.ts";
import type { SolvedDepth, SolvedRig } from "../../../src/model/solved.ts";
import { readDescription, readDrawing } from "./read-drawing.ts";
import type { Statement } from "./statement.ts";

/** Room for a picture as pages, handouts and cards give it. */
export const rooms = [
  { widthMm: 80, heightMm: 120, labels: "full", textMm: 3.5 },
  { widthMm: 150, heightMm: 195, labels: "full", textMm: 4.2 },
  { widthMm: 66, heightMm: 85, labels: "distances", textMm: 4.94 },
] as const;

/** What the pictures of a rig in a room tell by labels, captions and marks, and in words to those who do not see them. */
export function drawingStatements(
  solved: SolvedRig,
  depth: SolvedDepth,
  { widthMm, heightMm, labels, textMm }: (typeof rooms)[number],
  kit: DrawingKit,
): readonly Statement[] {
  const box = { widthMm, heightMm };
  return variantsOf(depth, solved.rig.water).flatMap((variant) => {
    const drawing = drawRig(solved, depth, box, kit, { labels, textMm, variant });
    return [
      ...(variant === "set" ? readDrawing(drawing, "drawing") : []),
      ...readDescription(drawing.description, `words for the drawing, ${variant}`),
    ];
  });
}
