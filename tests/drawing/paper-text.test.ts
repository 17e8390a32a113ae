import { expect, test } from "vitest";
import { drawPictures } from "../../src/drawing/pictures.ts";
import { drawRig } from "../../src/drawing/rig/rig-drawing.ts";
import { mmPerPoint } from "../../src/markup/boxes.ts";
import type { PictureReference } from "../../src/model/pictures.ts";
import { flatItems } from "../support/drawing-checks.ts";
import { everyPicture } from "../support/every-picture.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

/** The smallest words that are read on paper at arm's length [pt]. Common practice, no source. */
const leastPt = 7.5;
/** Columns of a handout: one of two on a whole sheet, and the narrower one that steps and states stand abreast in. */
const columnMm = 80;
const abreastMm = 52.8;
const bodyMm = 11 * mmPerPoint;

const { rigs, kit, source } = shippedGuide;

const smallestPt = ({ items }: { readonly items: Parameters<typeof flatItems>[0] }) =>
  Math.min(...flatItems(items).flatMap((item) => (item.kind === "text" ? [item.sizeMm / mmPerPoint] : [])));

function expectReadable(reference: PictureReference, widthMm: number) {
  const drawn = drawPictures(source)(reference, { widthMm, textMm: bodyMm, apart: true }, kit);
  for (const { drawing } of drawn)
    expect(smallestPt(drawing), drawing.title).toBeGreaterThanOrEqual(leastPt - 1e-9);
}

/** Steps and states stand three abreast. */
const isStep = ({ picture }: PictureReference) => picture === "knot" || picture === "float-states";

test.each(Object.entries(everyPicture(shippedGuide)))("each %s is read on paper", (_, references) => {
  for (const reference of references) expectReadable(reference, isStep(reference) ? abreastMm : columnMm);
});

test.each(rigs)("$rig.id is read on a card", (rig) => {
  const card = { labels: "distances", textMm: 9 * mmPerPoint } as const;
  for (const depth of rig.depths)
    expect(smallestPt(drawRig(rig, depth, { widthMm: 48, heightMm: 78 }, kit, card))).toBeGreaterThanOrEqual(
      leastPt,
    );
});
