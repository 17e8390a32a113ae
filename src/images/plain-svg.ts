import { createRequire } from "node:module";
import { Resvg } from "@resvg/resvg-js";

const resolve = createRequire(import.meta.url).resolve;

/** Words in a drawing are set in the guide's own family and become outlines. */
const fonts = {
  loadSystemFonts: false,
  fontFiles: ["400Regular/IBMPlexSans_400Regular.ttf", "600SemiBold/IBMPlexSans_600SemiBold.ttf"].map(
    (file) => resolve(`@expo-google-fonts/ibm-plex-sans/${file}`),
  ),
  defaultFontFamily: "IBM Plex Sans",
  sansSerifFamily: "IBM Plex Sans",
  serifFamily: "IBM Plex Sans",
};

/**
 * A drawing as nothing but paths, paints and pictures within it: what is left once a renderer has read it, so there is no
 * program, style or link in it.
 *
 * @throws Error where it is no SVG, or has no size
 */
export function plainSvg(svg: string): string {
  return `${new Resvg(svg, { font: fonts }).toString().trim()}\n`;
}

/** A drawing as a PNG of a width. */
export function svgToPng(svg: string, widthPx: number): Uint8Array {
  return new Resvg(svg, { font: fonts, fitTo: { mode: "width", value: widthPx } }).render().asPng();
}
