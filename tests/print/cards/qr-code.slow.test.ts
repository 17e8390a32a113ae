import { expect, test } from "vitest";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { paperToPng } from "../../../src/layout/png.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { paperSizes } from "../../../src/print/sheets/paper-sizes.ts";
import { sheets } from "../../../src/print/sheets/sheet.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { readCode } from "../../support/read-code.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";
import { sampleGuide } from "../sample-print.ts";

const fonts = nodeFonts();
const siteAddress = "https://makebelieve.example/floats/";
const address = "https://makebelieve.example/floats/rigs/waggler-strung-out.html";

test("the card's code decodes from a sheet of cards at 300 dpi, its address beside it in words", async () => {
  const { back, onSheet } = await layOutCard(
    sampleWaggler,
    cardFormats.A5,
    { ...sampleGuide, siteAddress },
    drawingKit,
    fonts,
  );
  expect(back.overflows).toEqual([]);
  expect(JSON.stringify(back.items)).toContain("makebelieve.example/floats/rigs/waggler-strung-out.html");
  const note = { widthMm: 100, heightMm: 5, items: [] };
  const sides = sheets([onSheet], paperSizes.A4, "short edge", "halving", { front: note, back: note });
  expect(readCode(paperToPng(sides.at(-1)!, 300, fonts))).toBe(address);
});
