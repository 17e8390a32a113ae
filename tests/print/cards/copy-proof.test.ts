import { describe, expect, test } from "vitest";
import type { Ink, Item } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { drawingToPng } from "../../../src/layout/png.ts";
import { mmPerPoint } from "../../../src/markup/boxes.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleAvon } from "../../support/sample-rig.ts";
import { copyOfACopy, misread } from "../copying/cards.ts";
import { copiedTwice, greysOf, screened } from "../copying/copier.ts";
import { dpi, FigureReader } from "../copying/reading.ts";
import { dotsOf } from "../raster.ts";
import { sampleGuide } from "../sample-print.ts";

const fonts = nodeFonts();
const reader = new FigureReader(fonts);

describe("a copy of a copy", () => {
  test("of a pocket card has every figure as it was printed", () => {
    // Its back has the smallest figures; both sides of every card are read in a slow test.
    const { back } = layOutCard(sampleAvon, cardFormats["ID-1"], sampleGuide, drawingKit, fonts);
    expect(misread(back, copyOfACopy(back, fonts), reader)).toEqual([]);
  }, 60_000);
});

const figures = "1.75 m, 3½ in, 206 cm, 4 × No 8";

function pageOf(pt: number, ink: Ink) {
  const sizeMm = pt * mmPerPoint;
  const line: Item = {
    kind: "text",
    xMm: 3,
    yMm: 7,
    text: figures,
    sizeMm,
    face: "regular",
    ink,
    anchor: "start",
  };
  return { widthMm: 80, heightMm: 12, items: [line], overflows: [] };
}

describe("the reading of copies", () => {
  test("finds figures of 8 pt in black", () => {
    const page = pageOf(8, "ink");
    expect(misread(page, copyOfACopy(page, fonts), reader)).toEqual([]);
  });

  test("notices figures too small, and such in grey, which a printer screens", () => {
    const small = pageOf(3, "ink");
    expect(misread(small, copyOfACopy(small, fonts), reader)).toHaveLength(1);
    const grey = pageOf(8, "faint");
    const printed = screened(greysOf(dotsOf(drawingToPng(grey, dpi, fonts))));
    expect(misread(grey, copiedTwice(printed), reader)).toHaveLength(1);
  });

  test("notices a point that is lost", () => {
    const page = pageOf(8, "ink");
    const without = {
      ...page,
      items: page.items.map((item) =>
        item.kind === "text" ? { ...item, text: item.text.replace(".", "") } : item,
      ),
    };
    expect(misread(page, copyOfACopy(without, fonts), reader)).toHaveLength(1);
  });
});
