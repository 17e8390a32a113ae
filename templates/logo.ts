import type { Item } from "../src/drawing/model.ts";
import type { RasterImage } from "../src/model/own-image.ts";

/** The mark of a guide's makers on paper, as large as its room allows, from the top left corner. */
export interface PlacedLogo {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly draw: () => readonly Item[];
}

export function placedLogo(
  image: RasterImage,
  room: { readonly widthMm: number; readonly heightMm: number },
): PlacedLogo {
  const shape = image.widthPx / image.heightPx;
  const widthMm = Math.min(room.widthMm, room.heightMm * shape);
  const heightMm = widthMm / shape;
  return { widthMm, heightMm, draw: () => [{ kind: "image", xMm: 0, yMm: 0, widthMm, heightMm, image }] };
}
