import { expect, test } from "vitest";
import { rigVariants } from "../../src/core/float/moved-float.ts";
import { drawPictures } from "../../src/drawing/pictures.ts";
import { drawRig } from "../../src/drawing/rig/rig-drawing.ts";
import { drawShotGauge } from "../../src/drawing/shot-gauge.ts";
import { type PictureReference, scenes } from "../../src/model/pictures.ts";
import { pictureRoom } from "../../templates/pages/rig-picture.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

/** What is listened to at one go; a number with its unit is one word. Common practice, no source. */
const mostWords = 60;

const { library, rigs, kit, source } = shippedGuide;

const countWords = (told: string) => told.replace(/(?<=\d) (?=\D)/g, "\u00A0").split(" ").length;

/** What is wrong with the words for those who do not see a picture. */
function faults({ title, description }: { readonly title: string; readonly description: string }): string[] {
  return [
    ...(description.trim() === "" ? [`${title}: nothing is told`] : []),
    ...(countWords(description) > mostWords
      ? [`${title}: ${countWords(description)} words: ${description}`]
      : []),
    ...(/\bNo[ \u00A0]\d|×/.test(description)
      ? [`${title}: no voice says this as it is meant: ${description}`]
      : []),
  ];
}

function expectShort(reference: PictureReference, { apart } = { apart: true }) {
  const drawn = drawPictures(source)(reference, { ...pictureRoom, apart }, kit);
  expect(drawn.flatMap(({ drawing }) => faults(drawing))).toEqual([]);
  const twice = drawn.filter(({ drawing, caption }) => caption && drawing.description.includes(caption));
  expect(twice.map(({ caption }) => caption)).toEqual([]);
}

test.each(rigs)("$rig.id is told in few words at every depth, in every variant", (rig) => {
  const box = { widthMm: 80, heightMm: 120 };
  for (const depth of rig.depths)
    for (const variant of rigVariants)
      expect(faults(drawRig(rig, depth, box, kit, { labels: "full", textMm: 3.5, variant }))).toEqual([]);
});

test.each(rigs)(
  "$rig.id: each state of its float is told in few words, and so is its pattern",
  ({ rig, depths }) => {
    const { depthMm } = depths[0]!;
    expectShort({ picture: "float-states", rig: rig.id, show: "all" });
    expectShort({ picture: "pattern-chart", rigs: [rig.id], depthMm });
    for (const show of ["load", "depth", "bites"] as const)
      expectShort({ picture: "float-states", rig: rig.id, show }, { apart: false });
    if (rig.water === "flowing") expectShort({ picture: "hang-plot", rig: rig.id, depthMm });
  },
);

test.each(scenes)("the scene %s is told in few words, and no caption twice", (scene) => {
  expectShort({ picture: "scene", scene });
});

test.each(library.knots)("$id is told in few words, and no caption twice", ({ id }) => {
  expectShort({ picture: "knot", knot: id });
});

test("floats, fish and baits are told in few words", () => {
  for (const { id } of library.floats) expectShort({ picture: "float-drawing", float: id });
  expectShort({ picture: "float-chart", floats: library.floats.map(({ id }) => id) });
  for (const { id } of library.species) expectShort({ picture: "fish", fish: id });
  for (const { bait } of library.baits) expectShort({ picture: "bait", bait: bait.id });
});

test("the gauge of each scale of shot is told in few words", () => {
  for (const { sizes } of library.scales)
    expect(
      faults(drawShotGauge(sizes, ["lead", "tin", "tungsten"], { widthMm: 130, heightMm: 270 }, kit)),
    ).toEqual([]);
});
