import { pictureRoom } from "../../templates/pages/rig-picture.ts";
import type { CaptionedPicture } from "../../templates/pages/view.ts";
import { joinStrokes } from "../drawing/join-strokes.ts";
import { drawPicture } from "../drawing/pictures.ts";
import { drawingToSvg } from "../drawing/svg.ts";
import type { PictureReference } from "../solve/live/pictures.ts";
import type { SiteInput } from "./input.ts";

/** The drawings of a picture that a text asks for; one shown in steps has what to do as the caption of each. */
export function prosePictures(
  reference: PictureReference,
  input: SiteInput,
  idPrefix: string,
): readonly CaptionedPicture[] {
  const steps =
    reference.picture === "knot"
      ? input.library.knots.find(({ id }) => id === reference.knot)?.steps
      : undefined;
  const drawings = drawPicture(reference, input, pictureRoom, input.kit);
  const told = reference.picture === "scene" && drawings.length > 1;
  return drawings.map((drawing, at) => {
    const caption = steps?.[at]?.caption ?? (told ? drawing.description : undefined);
    const svg = drawingToSvg(joinStrokes(drawing), { idPrefix: `${idPrefix}-${at + 1}` });
    return { svg, ...(caption !== undefined && { caption }) };
  });
}
