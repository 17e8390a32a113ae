import type { DrawingKit } from "../drawing/kit.ts";
import { drawPicture } from "../drawing/pictures.ts";
import { drawRig } from "../drawing/rig-drawing.ts";
import { drawingToSvg } from "../drawing/svg.ts";
import type { PictureReference } from "../solve/live/pictures.ts";
import type { SolvedDepth, SolvedRig } from "../solve/solved.ts";
import type { SiteInput } from "./input.ts";

/** The picture of a rig: as wide as a phone held upright, tall enough for a label at every shot. */
const rigBox = { widthMm: 90, heightMm: 130 };
const labelMm = 3.2;

/** A rig at one depth, as SVG. */
export function rigPicture(rig: SolvedRig, depth: SolvedDepth, kit: DrawingKit, idPrefix: string): string {
  const drawing = drawRig(rig, depth, rigBox, kit, { labels: "full", textMm: labelMm });
  return drawingToSvg(drawing, { idPrefix });
}

/** A picture of a text: its drawings as SVG, each with what stands below it. */
export interface ProsePicture {
  readonly svg: string;
  readonly caption?: string;
}

/** The drawings of a picture that a text asks for; a knot has one a step, with what to do as its caption. */
export function prosePictures(
  reference: PictureReference,
  input: SiteInput,
  idPrefix: string,
): readonly ProsePicture[] {
  const room = { widthMm: rigBox.widthMm, textMm: labelMm };
  const steps =
    reference.picture === "knot"
      ? input.library.knots.find(({ id }) => id === reference.knot)?.steps
      : undefined;
  return drawPicture(reference, input, room, input.kit).map((drawing, at) => {
    const caption = steps?.[at]?.caption;
    const svg = drawingToSvg(drawing, { idPrefix: `${idPrefix}-${at + 1}` });
    return { svg, ...(caption !== undefined && { caption }) };
  });
}
