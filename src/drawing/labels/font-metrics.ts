import { known } from "../../core/lists.ts";
import type { Face, MeasureText } from "../model.ts";
import { advanceWidths } from "./font-widths.ts";

const widthOf = new Map<Face, Map<string, number>>(
  (["regular", "bold", "italic"] as const).map((face) => [
    face,
    new Map(advanceWidths[face].flatMap(([width, text]) => [...text].map((character) => [character, width]))),
  ]),
);

/** A character that the table lacks counts as one em, more than any letter, so that nothing is cut off. */
const unknownWidth = 1000;

/**
 * Width of a line of text in IBM Plex Sans [mm] from its advance widths; kerning is left out (the tests bound what
 * that costs).
 */
export const measureText: MeasureText = (text, sizeMm, face) => {
  const widths = known(widthOf, face);
  let sum = 0;
  for (const character of text) sum += widths.get(character) ?? unknownWidth;
  return (sum * sizeMm) / 1000;
};
