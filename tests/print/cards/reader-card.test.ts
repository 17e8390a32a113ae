import { describe, expect, test } from "vitest";
import type { Item, TextItem } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { drawingToPng } from "../../../src/layout/png.ts";
import { mmPerPoint } from "../../../src/markup/boxes.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { readCode } from "../../support/read-code.ts";
import { sampleRigs, sampleWaggler } from "../../support/sample-rig.ts";
import { sampleGuide } from "../sample-print.ts";

const fonts = nodeFonts();

function linesOf(items: readonly Item[]): TextItem[] {
  return items.flatMap((item) =>
    item.kind === "text" ? [item] : item.kind === "group" ? linesOf(item.items) : [],
  );
}

/** Sources: ISO 216 for the sizes; UKAAF G003 (2019): clear print from 14 pt in ideal, large print from 16 pt,
 * which cards have where all that must stand on them leaves room for it. */
const expected = { A7: [74, 105, 8, 12], A6: [105, 148, 10, 14], A5: [148, 210, 12, 16] } as const;

const readerFormats = [cardFormats.A7, cardFormats.A6, cardFormats.A5] as const;

describe.each(readerFormats.map((format) => [format.name, format] as const))("%s", (name, format) => {
  const [widthMm, heightMm, leastPt, mostPt] = expected[name];

  test.each(sampleRigs.map((solved) => [solved.rig.id, solved] as const))(
    "%s fits, in type large enough",
    async (_, solved) => {
      const { front, back, look } = await layOutCard(solved, format, sampleGuide, drawingKit, fonts);
      for (const face of [front, back]) {
        expect([face.widthMm, face.heightMm]).toEqual([widthMm, heightMm]);
        expect(face.overflows).toEqual([]);
        const sizes = linesOf(face.items).map((line) => line.sizeMm / mmPerPoint);
        expect(sizes.length).toBeGreaterThan(3);
        expect(Math.min(...sizes)).toBeGreaterThanOrEqual(8 - 1e-9);
      }
      for (const { wordPt } of [look.front, look.back]) {
        expect(wordPt).toBeGreaterThanOrEqual(leastPt);
        expect(wordPt).toBeLessThanOrEqual(mostPt);
      }
    },
  );
});

test("codes keep modules of 0.4 mm and decode at 300 dpi", async () => {
  // 0.4 mm for telephones is from memory; a pocket card has the 4 dots of a 300 dpi printer, to the hundredth.
  expect(cardFormats.A5.moduleMinMm).toBe(0.4);
  expect(cardFormats["ID-1"].moduleMinMm).toBeCloseTo((4 * 25.4) / 300, 2);
  const guide = { ...sampleGuide, siteAddress: "https://makebelieve.example" };
  const { back } = await layOutCard(sampleWaggler, cardFormats.A5, guide, drawingKit, fonts);
  expect(readCode(drawingToPng(back, 300, fonts))).toBe(
    "https://makebelieve.example/rigs/waggler-strung-out.html",
  );
});
