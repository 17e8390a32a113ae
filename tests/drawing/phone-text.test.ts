import { expect, test } from "vitest";
import { drawPictures } from "../../src/drawing/pictures.ts";
import { drawingToSvg } from "../../src/drawing/svg.ts";
import { filmsOf } from "../../src/model/films.ts";
import { type PictureReference, scenes } from "../../src/model/pictures.ts";
import {
  floatPicture,
  hangPicture,
  pictureRoom,
  rigPicture,
  sinkPicture,
} from "../../templates/pages/rig-picture.ts";
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
  expect(drawings.length).toBeGreaterThan(0);
  for (const { drawing } of drawings)
    expect(smallestPx(drawingToSvg(drawing, { idPrefix: "p" })), drawing.title).toBeGreaterThanOrEqual(
      leastPx,
    );
}

test.each(scenes)("the scene %s is read on a phone", (scene) => {
  expectReadable({ picture: "scene", scene });
});

test.each(library.knots)("$id is read on a phone", ({ id }) => {
  expectReadable({ picture: "knot", knot: id });
});

test("floats, one by one and side by side, are read on a phone", () => {
  const ids = library.floats.map(({ id }) => id);
  for (const float of ids) expectReadable({ picture: "float-drawing", float });
  for (let first = 0; first < ids.length; first += 6)
    expectReadable({ picture: "float-chart", floats: ids.slice(first, first + 6) });
  for (const { float } of library.floats)
    expect(smallestPx(floatPicture(float, kit, "f"))).toBeGreaterThanOrEqual(leastPx);
});

test.each(rigs)("$rig.id, its float's states, its plots and its pattern are read on a phone", (rig) => {
  const [depth] = rig.depths;
  const { depthMm } = depth!;
  expectReadable({ picture: "rig-drawing", rig: rig.rig.id, depthMm, variant: "set" });
  expectReadable({ picture: "float-states", rig: rig.rig.id, show: "all" });
  expectReadable({ picture: "pattern-chart", rigs: [rig.rig.id], depthMm });
  for (const film of filmsOf(rig, depth!))
    expectReadable({ picture: "film", film, rig: rig.rig.id, depthMm });
  const drawn = [rigPicture, sinkPicture, hangPicture].map((draw) => draw(rig, depth!, kit, "r"));
  for (const svg of drawn) if (svg) expect(smallestPx(svg)).toBeGreaterThanOrEqual(leastPx);
});
