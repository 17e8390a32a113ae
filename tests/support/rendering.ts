import { createRequire } from "node:module";
import { Resvg } from "@resvg/resvg-js";
import type { Drawing } from "../../src/drawing/model.ts";
import type { Theme } from "../../src/drawing/palette.ts";
import { drawingToSvg, fontFamily } from "../../src/drawing/svg.ts";

const folder = createRequire(import.meta.url)
  .resolve("@expo-google-fonts/ibm-plex-sans/package.json")
  .replace(/package\.json$/, "");
const fontFiles = [
  "400Regular/IBMPlexSans_400Regular.ttf",
  "600SemiBold/IBMPlexSans_600SemiBold.ttf",
  "400Regular_Italic/IBMPlexSans_400Regular_Italic.ttf",
].map((file) => folder + file);

/** A grey picture: how dark each dot is, 0 white to 1 black. */
export interface GreyPicture {
  readonly width: number;
  readonly height: number;
  readonly dotsPerMm: number;
  readonly darkness: (xMm: number, yMm: number) => number;
}

/** Renders a drawing on white paper in greys. */
export function renderGrey(
  drawing: Drawing,
  dpi: number,
  theme: Exclude<Theme, "page"> = "print",
): GreyPicture {
  const dotsPerMm = dpi / 25.4;
  const image = new Resvg(
    drawingToSvg(drawing, { idPrefix: "r", theme }).replace(
      /width="([\d.]+)mm" height="([\d.]+)mm"/,
      'width="$1" height="$2"',
    ),
    {
      fitTo: { mode: "zoom", value: dotsPerMm },
      background: "#ffffff",
      font: { fontFiles, loadSystemFonts: false, defaultFontFamily: fontFamily },
    },
  ).render();
  const { pixels, width, height } = image;
  return {
    width,
    height,
    dotsPerMm,
    darkness: (xMm, yMm) => {
      const x = Math.min(width - 1, Math.max(0, Math.floor(xMm * dotsPerMm)));
      const y = Math.min(height - 1, Math.max(0, Math.floor(yMm * dotsPerMm)));
      const at = 4 * (y * width + x);
      const grey = 0.2126 * pixels[at]! + 0.7152 * pixels[at + 1]! + 0.0722 * pixels[at + 2]!;
      return 1 - grey / 255;
    },
  };
}
