import { bench, describe } from "vitest";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { paperToPng } from "../../src/layout/png.ts";
import { cardFormats } from "../../src/print/cards/card-formats.ts";
import { cardSides } from "../../src/print/cards/card-sides.ts";
import { layOutCard } from "../../src/print/cards/lay-out-card.ts";
import { paintPdf } from "../../src/print/pdf/pdf.ts";
import { sampleGuide } from "../print/sample-print.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { sampleWaggler } from "../support/sample-rig.ts";

const fonts = nodeFonts();
const kit = { ...drawingKit, measure: fonts.measure };
const faces = await layOutCard(sampleWaggler, cardFormats["ID-1"], sampleGuide, kit, fonts);
const sides = cardSides(faces.alone);
const facts = { title: "Card", author: "Club", language: "en", date: "2026-05-01" };

/** Where the time of a pocket card goes: laying it out is the measure that the painters are held against. */
describe("a pocket card", () => {
  bench("laid out", async () => {
    await layOutCard(sampleWaggler, cardFormats["ID-1"], sampleGuide, kit, fonts);
  });

  bench("painted as PDF", async () => {
    paintPdf(sides, facts, fonts);
  });

  bench("painted as PNG at 300 dpi", () => {
    for (const side of sides) paperToPng(side, 300, fonts);
  });
});
