import { createRequire } from "node:module";
import { once } from "../model/kept.ts";

const require = createRequire(import.meta.url);

/** Loaded once something is rendered, which few guides need. */
const renderer = once((): typeof import("@resvg/resvg-js") => require("@resvg/resvg-js"));

/** Words in a drawing are set in the guide's own family and become outlines. */
const fonts = {
  loadSystemFonts: false,
  fontFiles: ["400Regular/IBMPlexSans_400Regular.ttf", "600SemiBold/IBMPlexSans_600SemiBold.ttf"].map(
    (file) => require.resolve(`@expo-google-fonts/ibm-plex-sans/${file}`),
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
  return `${new (renderer().Resvg)(svg, { font: fonts }).toString().trim()}\n`;
}

/** A drawing as a PNG of a width. */
export function svgToPng(svg: string, widthPx: number): Uint8Array {
  return new (renderer().Resvg)(svg, { font: fonts, fitTo: { mode: "width", value: widthPx } })
    .render()
    .asPng();
}
