import { expect, test } from "vitest";
import { drawPictures } from "../../src/drawing/pictures.ts";
import { pictureRoom, sinkDrawing } from "../../templates/pages/rig-picture.ts";
import { drawnApart, pictures } from "../support/drawn-pictures.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

/** What is listened to at one go; a number with its unit is one word. Common practice, no source. */
const mostWords = 60;

const { rigs, kit, source } = shippedGuide;

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

test.each(Object.entries(pictures))("each %s is told in few words, and no caption twice", (_, references) => {
  for (const reference of references) {
    // All that a float says is a picture for each state; a few of them may stand in one.
    const apart = reference.picture !== "float-states" || reference.show === "all";
    const drawn = apart ? drawnApart(reference) : drawPictures(source)(reference, pictureRoom, kit);
    expect(drawn.flatMap(({ drawing }) => faults(drawing))).toEqual([]);
    const twice = drawn.filter(({ drawing, caption }) => caption && drawing.description.includes(caption));
    expect(twice.map(({ caption }) => caption)).toEqual([]);
  }
});

test.each(rigs)("how the bait of $rig.id sinks is told in few words", (rig) => {
  for (const depth of rig.depths)
    expect([sinkDrawing(rig, depth, kit)].flatMap((drawing) => (drawing ? faults(drawing) : []))).toEqual([]);
});
