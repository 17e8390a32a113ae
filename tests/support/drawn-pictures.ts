import { drawPictures } from "../../src/drawing/pictures.ts";
import type { PictureReference } from "../../src/model/pictures.ts";
import { pictureRoom } from "../../templates/pages/rig-picture.ts";
import { everyPicture } from "./every-picture.ts";
import { shippedGuide } from "./shipped-guide.ts";

const { kit, source } = shippedGuide;
const draw = drawPictures(source);
const drawn = new Map<PictureReference, ReturnType<typeof draw>>();

/** Every picture that texts can ask for of the shipped guide. */
export const pictures = everyPicture(shippedGuide);

/** One of them as a page has it, each of its parts a drawing of its own; drawn once for all the tests that share their modules. */
export function drawnApart(reference: PictureReference): ReturnType<typeof draw> {
  const made = drawn.get(reference) ?? draw(reference, { ...pictureRoom, apart: true }, kit);
  drawn.set(reference, made);
  return made;
}
