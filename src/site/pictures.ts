import type { DrawingKit } from "../drawing/kit.ts";
import type { Drawing } from "../drawing/model.ts";
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

type Of<K extends PictureReference["picture"]> = Extract<PictureReference, { picture: K }>;

const painters: {
  readonly [K in PictureReference["picture"]]?: (reference: Of<K>, input: SiteInput) => Drawing | undefined;
} = {
  "rig-drawing": ({ rig, depthMm }, { solved, kit }) => {
    const found = solved.get(rig);
    const depth = found?.depths.find((one) => one.depthMm === depthMm);
    return found && depth && drawRig(found, depth, rigBox, kit, { labels: "full", textMm: labelMm });
  },
};

/** A picture that a text asks for, as SVG; none where it cannot be drawn. */
export function prosePicture(
  reference: PictureReference,
  input: SiteInput,
  idPrefix: string,
): string | undefined {
  const paint = painters[reference.picture] as
    | ((reference: PictureReference, input: SiteInput) => Drawing | undefined)
    | undefined;
  const drawing = paint?.(reference, input);
  return drawing && drawingToSvg(drawing, { idPrefix });
}
