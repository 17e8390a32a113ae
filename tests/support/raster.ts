import { Resvg } from "@resvg/resvg-js";
import type { Drawing } from "../../src/drawing/model.ts";
import { drawingToSvg } from "../../src/drawing/svg.ts";

/** A drawing as printed in black and white: pixels row by row, and how many there are to the millimetre. */
export interface Raster {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerMm: number;
  /** Red, green, blue and opacity of each pixel. */
  readonly rgba: Uint8Array;
}

/** Renders a drawing in its print colours on white. */
export function raster(drawing: Drawing, dpi: number): Raster {
  const pxPerMm = dpi / 25.4;
  const svg = drawingToSvg(drawing, { idPrefix: "raster", theme: "print" });
  const image = new Resvg(svg, {
    background: "#ffffff",
    fitTo: { mode: "width", value: Math.round(drawing.widthMm * pxPerMm) },
    font: { loadSystemFonts: false },
  }).render();
  return { widthPx: image.width, heightPx: image.height, pxPerMm, rgba: image.pixels };
}

/** Whether the pixel at a place is black once every grey is made black or white at the half. */
export function inked({ widthPx, pxPerMm, rgba }: Raster, xMm: number, yMm: number): boolean {
  const at = 4 * (Math.floor(yMm * pxPerMm) * widthPx + Math.floor(xMm * pxPerMm));
  return (rgba[at]! + rgba[at + 1]! + rgba[at + 2]!) / 3 < 128;
}
