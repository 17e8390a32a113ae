import jsQR from "jsqr";
import type { FileFonts } from "../../../src/layout/font-file.ts";
import type { LaidOutPage } from "../../../src/layout/page-of.ts";
import { drawingToPng } from "../../../src/layout/png.ts";
import { dotsOf } from "../raster.ts";
import { copiedTwice, type Greys, greysOf } from "./copier.ts";
import { dpi, type FigureReader, linesOn } from "./reading.ts";

/** A copy of a copy of a page that was printed. */
export function copyOfACopy(page: LaidOutPage, fonts: FileFonts): Greys {
  return copiedTwice(greysOf(dotsOf(drawingToPng(page, dpi, fonts))));
}

/** The lines whose figures a copy has otherwise than the page, each with what is read of it. */
export function misread(page: LaidOutPage, copy: Greys, reader: FigureReader): string[] {
  return linesOn(page.items)
    .filter(({ text }) => /\d/.test(text))
    .map((line) => [plain(line.text), plain(reader.read(copy, line))] as const)
    .filter(([set, read]) => set !== read)
    .map(([set, read]) => `${set} → ${read}`);
}

/** A minus sign is a dash, which is hardly narrower. */
const plain = (text: string) => text.replaceAll("\u00A0", " ").replaceAll("\uFEFF", "").replaceAll("−", "–");

/** What the code on a copy says. */
export function codeOn({ width, height, values }: Greys): string | undefined {
  const rgba = new Uint8ClampedArray(4 * values.length);
  values.forEach((value, i) => {
    rgba.fill(255 * value, 4 * i, 4 * i + 3);
    rgba[4 * i + 3] = 255;
  });
  return jsQR(rgba, width, height)?.data;
}
