import jsQR from "jsqr";
import { PNG } from "pngjs";
import { describe, expect, test } from "vitest";
import type { Item, TextItem } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { drawingToPng } from "../../../src/layout/png.ts";
import { mmPerPoint } from "../../../src/markup/boxes.ts";
import { cardContent } from "../../../src/print/cards/card-content.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleRigs, sampleWaggler } from "../../support/sample-rig.ts";
import { plain } from "../read-pdf.ts";
import { sampleGuide } from "../sample-print.ts";

const fonts = nodeFonts();

function linesOf(items: readonly Item[]): TextItem[] {
  return items.flatMap((item) =>
    item.kind === "text" ? [item] : item.kind === "group" ? linesOf(item.items) : [],
  );
}

const textOf = (items: readonly Item[]) =>
  plain(
    linesOf(items)
      .map((line) => line.text)
      .join(" "),
  );

/** Sources: ISO 216 for the sizes; UKAAF G003 (2019): clear print from 14 pt in ideal, large print from 16 pt. */
const expected = { A7: [74, 105, 14], A6: [105, 148, 14], A5: [148, 210, 16] } as const;

const readerFormats = [cardFormats.A7, cardFormats.A6, cardFormats.A5] as const;

describe.each(readerFormats.map((format) => [format.name, format] as const))("%s", (name, format) => {
  const [widthMm, heightMm, typePt] = expected[name];

  test.each(sampleRigs.map((solved) => [solved.rig.id, solved] as const))(
    "%s fits, in type large enough",
    async (_, solved) => {
      const { front, back } = await layOutCard(solved, format, sampleGuide, drawingKit, fonts);
      for (const face of [front, back]) {
        expect([face.widthMm, face.heightMm]).toEqual([widthMm, heightMm]);
        expect(face.overflows).toEqual([]);
        const sizes = linesOf(face.items).map((line) => line.sizeMm / mmPerPoint);
        expect(sizes.length).toBeGreaterThan(3);
        expect(Math.min(...sizes)).toBeGreaterThanOrEqual(typePt - 1e-9);
      }
      const card = cardContent(solved, sampleGuide, drawingKit);
      expect(textOf(back.items)).toContain(plain(card.caution));
      expect(textOf(back.items)).toContain(plain(card.shot));
      expect(textOf(back.items)).toContain(plain(card.mainLine));
    },
  );
});

test("a larger format never tells fewer depths, and the largest leaves nothing out", async () => {
  for (const solved of sampleRigs) {
    const cards = await Promise.all(
      readerFormats.map((format) => layOutCard(solved, format, sampleGuide, drawingKit, fonts)),
    );
    const depths = cards.map(({ taken }) => taken.filter((part) => part.endsWith("-depths")).length);
    expect(depths).toEqual([...depths].sort((a, b) => a - b));
    expect(cards[2]!.taken).toEqual(cardFormats.A5.ifItFits);
  }
});

test("codes keep modules of 0.4 mm and decode at 300 dpi", async () => {
  expect(cardFormats.A5.moduleMinMm).toBeGreaterThanOrEqual(0.4);
  const guide = { ...sampleGuide, siteAddress: "https://makebelieve.example" };
  const { back } = await layOutCard(sampleWaggler, cardFormats.A5, guide, drawingKit, fonts);
  const { data, width, height } = PNG.sync.read(Buffer.from(drawingToPng(back, 300, fonts)));
  expect(jsQR(new Uint8ClampedArray(data), width, height)?.data).toBe(
    "https://makebelieve.example/rigs/waggler-strung-out.html",
  );
});
