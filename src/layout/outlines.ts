import type { Item } from "../drawing/model.ts";
import { colourOf, type Theme } from "../drawing/palette.ts";
import { imageToSvg, paint, pathData } from "../drawing/svg-items.ts";
import type { FileFonts } from "./font-file.ts";
import { type PaperSide, placing } from "./paper.ts";
import { lineOutlines } from "./shape-line.ts";

/**
 * A side of paper as SVG with every letter as its outline, so that it looks the same wherever it is painted. The
 * ground is the palette's paper.
 */
export function paperToOutlineSvg(side: PaperSide, fonts: FileFonts, theme: Theme = "print"): string {
  const { widthMm, heightMm } = side;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}">`,
    `<rect width="${widthMm}" height="${heightMm}" fill="${colourOf("paper", theme)}"/>`,
    ...side.parts.map(
      (part) =>
        `<g transform="matrix(${placing(part).map(fine).join(" ")})">${paintAll(part.items, fonts, theme)}</g>`,
    ),
    "</svg>",
  ].join("\n");
}

function paintAll(items: readonly Item[], fonts: FileFonts, theme: Theme): string {
  return items.map((item) => itemToSvg(item, fonts, theme)).join("\n");
}

function itemToSvg(item: Item, fonts: FileFonts, theme: Theme): string {
  switch (item.kind) {
    case "path":
      return `<path d="${pathData(item.steps, fine)}"${paint(item, theme, fine)}/>`;
    case "circle":
      return `<circle cx="${fine(item.cxMm)}" cy="${fine(item.cyMm)}" r="${fine(item.radiusMm)}"${paint(item, theme, fine)}/>`;
    case "text":
      return `<path d="${pathData(lineOutlines(item, fonts), fine)}" fill="${colourOf(item.ink, theme)}"/>`;
    case "image":
      return imageToSvg(item);
    case "group":
      return `<g transform="translate(${fine(item.xMm)} ${fine(item.yMm)})">${paintAll(item.items, fonts, theme)}</g>`;
  }
}

/** A tenth of a micrometre: letters keep their shape at any size they are looked at. */
function fine(value: number): string {
  return String(Math.round(value * 1e4) / 1e4 || 0);
}
