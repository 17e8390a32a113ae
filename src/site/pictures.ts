import { pictureRoom } from "../../templates/pages/rig-picture.ts";
import type { CaptionedPicture } from "../../templates/pages/view.ts";
import { joinStrokes } from "../drawing/join-strokes.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { drawingToSvg } from "../drawing/svg.ts";
import type { PictureReference } from "../model/pictures.ts";
import type { SiteInput } from "./input.ts";

/** The drawings of a picture that a text asks for, as SVG. */
export function prosePictures(
  reference: PictureReference,
  input: SiteInput,
  idPrefix: string,
): readonly CaptionedPicture[] {
  const { drawings, kept } = input;
  const draw = (kit: DrawingKit): readonly CaptionedPicture[] =>
    drawings(reference, pictureRoom, kit).map(({ drawing, caption }, at) => ({
      svg: drawingToSvg(joinStrokes(drawing), { idPrefix: `${idPrefix}-${at + 1}` }),
      ...(caption !== undefined && { caption }),
    }));
  return kept("picture", [drawings.from(reference), idPrefix], draw, []);
}
