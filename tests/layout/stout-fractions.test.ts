import { expect, test } from "vitest";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { drawingToPng } from "../../src/layout/png.ts";
import { mmPerPoint } from "../../src/markup/boxes.ts";
import { copiedTwice, type Greys, greysOf } from "../print/copying/copier.ts";
import { dotsOf } from "../print/raster.ts";

const fonts = nodeFonts();

/** A sign alone on paper, off the dots by so much, as a printer of 300 dpi makes it. */
function printed(text: string, offMm: number): Greys {
  const at = { xMm: 3 + offMm, yMm: 5 + offMm, anchor: "start" } as const;
  const line = { kind: "text", ...at, text, sizeMm: 8 * mmPerPoint, face: "regular", ink: "ink" } as const;
  return greysOf(dotsOf(drawingToPng({ widthMm: 10, heightMm: 8, items: [line] }, 300, fonts)));
}

const ink = ({ values }: Greys) => values.reduce((sum, value) => sum + 1 - value, 0);

test.each([..."¼½¾"])("a copy of a copy of %s in thin type of 8 pt keeps most of its ink", (sign) => {
  for (const offMm of [0, 0.02, 0.04, 0.06]) {
    const page = printed(sign, offMm);
    expect(ink(copiedTwice(page)) / ink(page)).toBeGreaterThan(0.75);
  }
});

test.each([..."¼½¾"])("%s is as wide as in its own face and has the outline of the stouter one", (sign) => {
  const { regular, bold } = fonts.files;
  const [own, stout] = [regular, bold].map((face) => face.glyphOf(sign.codePointAt(0)!)!);
  expect(regular.path(own!)).toEqual(bold.path(stout!));
  expect(regular.outline(own!).length).toBeGreaterThan(0);
  expect(fonts.faces.regular.width(sign)).toBe(regular.advance(own!));
});
