import { bench, describe } from "vitest";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { paperToPng } from "../../src/layout/png.ts";
import { cardSides } from "../../src/print/cards/card-sides.ts";
import { id1Card, layOutId1 } from "../../src/print/cards/id1-card.ts";
import { paintPdf } from "../../src/print/pdf/pdf.ts";
import { sampleGuide } from "../print/sample-print.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { sampleWaggler } from "../support/sample-rig.ts";

const fonts = nodeFonts();
const kit = { ...drawingKit, measure: fonts.measure };
const faces = await layOutId1(sampleWaggler, sampleGuide, kit, fonts);
const sides = cardSides(id1Card(sampleWaggler.rig.id, faces));
const facts = { title: "Card", author: "Club", language: "en", date: "2026-05-01" };

/** Where the time of a pocket card goes: laying it out is the measure that the painters are held against. */
describe("a pocket card", () => {
  bench("laid out", async () => {
    await layOutId1(sampleWaggler, sampleGuide, kit, fonts);
  });

  bench("painted as PDF", async () => {
    await paintPdf(sides, facts, fonts);
  });

  bench("painted as PNG at 300 dpi", () => {
    for (const side of sides) paperToPng(side, 300, fonts);
  });
});
