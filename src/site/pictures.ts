import { pictureRoom } from "../../templates/pages/rig-picture.ts";
import { joinStrokes } from "../drawing/join-strokes.ts";
import { drawPicture } from "../drawing/pictures.ts";
import { drawingToSvg } from "../drawing/svg.ts";
import type { PictureReference } from "../solve/live/pictures.ts";
import type { SiteInput } from "./input.ts";

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
  const steps =
    reference.picture === "knot"
      ? input.library.knots.find(({ id }) => id === reference.knot)?.steps
      : undefined;
  return drawPicture(reference, input, pictureRoom, input.kit).map((drawing, at) => {
    const caption = steps?.[at]?.caption;
    const svg = drawingToSvg(joinStrokes(drawing), { idPrefix: `${idPrefix}-${at + 1}` });
    return { svg, ...(caption !== undefined && { caption }) };
  });
}
