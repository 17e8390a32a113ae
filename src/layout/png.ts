import { createRequire } from "node:module";
import type { Item } from "../drawing/model.ts";
import type { Theme } from "../drawing/palette.ts";
import type { FileFonts } from "./font-file.ts";
import { paperToOutlineSvg } from "./outlines.ts";
import { asPaper, type PaperSide } from "./paper.ts";

/** Loaded once something is rendered, which few commands do. */
let renderer: typeof import("@resvg/resvg-js") | undefined;

/**
 * A side of paper as a PNG.
 *
 * @param dpi dots to the inch, 72–1200; the picture is rounded up to whole dots
 */
export function paperToPng(
  side: PaperSide,
  dpi: number,
  fonts: FileFonts,
  theme: Theme = "print",
): Uint8Array {
  const svg = paperToOutlineSvg(side, fonts, theme);
  renderer ??= createRequire(import.meta.url)("@resvg/resvg-js") as typeof import("@resvg/resvg-js");
  const picture = new renderer.Resvg(svg, {
    font: { loadSystemFonts: false },
    fitTo: { mode: "width", value: Math.ceil((side.widthMm / 25.4) * dpi - 1e-6) },
  });
  return picture.render().asPng();
}

/** A drawing or a laid-out page as a PNG; see `paperToPng`. */
export function drawingToPng(
  page: { readonly widthMm: number; readonly heightMm: number; readonly items: readonly Item[] },
  dpi: number,
  fonts: FileFonts,
  theme: Theme = "print",
): Uint8Array {
  return paperToPng(asPaper(page), dpi, fonts, theme);
}
