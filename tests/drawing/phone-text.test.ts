import { expect, test } from "vitest";
import { drawPictures } from "../../src/drawing/pictures.ts";
import { drawingToSvg } from "../../src/drawing/svg.ts";
import type { PictureReference } from "../../src/model/pictures.ts";
import {
  floatPicture,
  hangPicture,
  pictureRoom,
  rigPicture,
  sinkPicture,
} from "../../templates/pages/rig-picture.ts";
import { everyPicture } from "../support/every-picture.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

/** A phone 360 px wide leaves a picture this much between the margins of the page [px]. */
const phonePx = 328;
/** The smallest words that are read without zooming [px]. Common practice, no source. */
const leastPx = 13;

const { library, rigs, kit, source } = shippedGuide;

/** Size of the smallest words of a picture that is as wide as the phone's column [px]. */
function smallestPx(svg: string): number {
  const widthMm = Number(/viewBox="0 0 ([\d.]+)/.exec(svg)![1]);
  const sizesMm = [...svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size));
  return (Math.min(...sizesMm) / widthMm) * phonePx;
}

function expectReadable(reference: PictureReference) {
  const drawings = drawPictures(source)(reference, pictureRoom, kit);
  for (const { drawing } of drawings)
    expect(smallestPx(drawingToSvg(drawing, { idPrefix: "p" })), drawing.title).toBeGreaterThanOrEqual(
      leastPx,
    );
}

test.each(Object.entries(everyPicture(shippedGuide)))("each %s is read on a phone", (_, references) => {
  for (const reference of references) expectReadable(reference);
});

test("floats on their page are read on a phone", () => {
  for (const { float } of library.floats)
    expect(smallestPx(floatPicture(float, kit, "f"))).toBeGreaterThanOrEqual(leastPx);
});

test.each(rigs)("$rig.id and its plots are read on a phone", (rig) => {
  for (const depth of rig.depths) {
    const drawn = [rigPicture, sinkPicture, hangPicture].map((draw) => draw(rig, depth, kit, "r"));
    for (const svg of drawn) if (svg) expect(smallestPx(svg)).toBeGreaterThanOrEqual(leastPx);
  }
});
