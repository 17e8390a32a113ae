import { measureText } from "./labels/font-metrics.ts";
import type { Drawing, Item, TextItem } from "./model.ts";
import type { Theme } from "./palette.ts";
import { escaped, itemToSvg, round } from "./svg-items.ts";

interface SvgOptions {
  /** Starts every id, so that several drawings can stand in one page. */
  readonly idPrefix: string;
  readonly theme?: Theme;
}

/** The family's name for style sheets and font look-up. */
export const fontFamily = "IBM Plex Sans";

/**
 * A drawing as SVG with real text, a title and a description. Only presentation attributes, so that a page with a
 * strict content security policy may hold it.
 */
export function drawingToSvg(drawing: Drawing, { idPrefix, theme = "page" }: SvgOptions): string {
  const width = round(drawing.widthMm);
  const height = round(drawing.heightMm);
  const title = escaped(`${idPrefix}-1`);
  const description = escaped(`${idPrefix}-2`);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"`,
    ` role="img" aria-labelledby="${title}" aria-describedby="${description}" font-family="${fontFamily}, sans-serif"${theme === "page" ? ' fill="none"' : ""}>`,
    `<title id="${title}">${escaped(drawing.title)}</title>`,
    `<desc id="${description}">${escaped(drawing.description)}</desc>`,
    ...drawing.items.map((item) => itemToSvg(item, theme, theme === "page" ? widthOf : undefined)),
    "</svg>",
  ].join("\n");
}

/** Marks alone, to stand within an SVG that fills nothing by itself: words as wide as in the guide's own face, whatever face shows them. */
export function marksToSvg(items: readonly Item[], theme: Theme = "page"): string {
  return items.map((item) => itemToSvg(item, theme, widthOf)).join("");
}

/** Until the font is there, or without it, labels keep clear of each other. */
function widthOf(item: TextItem): string {
  const width = round(measureText(item.text, item.sizeMm, item.face));
  return item.text.length > 1 ? ` textLength="${width}" lengthAdjust="spacingAndGlyphs"` : "";
}
