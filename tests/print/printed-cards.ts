import { expect } from "vitest";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { drawingToPng } from "../../src/layout/png.ts";
import { once } from "../../src/model/kept.ts";
import { cardFormats } from "../../src/print/cards/card-formats.ts";
import { cardSides } from "../../src/print/cards/card-sides.ts";
import { layOutCard } from "../../src/print/cards/lay-out-card.ts";
import { paintPdf } from "../../src/print/pdf/pdf.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { sampleAvon, sampleWaggler } from "../support/sample-rig.ts";
import { type Dots, difference, dotsOf } from "./raster.ts";
import { sampleGuide } from "./sample-print.ts";

/** Whole dots to a tenth of a millimetre, so that both painters put their grid in the same place. */
export const dpi = 508;
/** Letters cover at least this share of a card, or nothing was compared. */
const inkMin = 0.02;

const rigs = [sampleWaggler, sampleAvon];

/** A card as it is printed, and the pictures of its sides that pages show. */
interface PrintedCard {
  readonly id: string;
  readonly pdf: Uint8Array;
  readonly previews: readonly Dots[];
}

export const printedCards = once((): readonly PrintedCard[] => {
  const fonts = nodeFonts();
  return rigs.map((solved) => {
    const faces = layOutCard(solved, cardFormats["ID-1"], sampleGuide, drawingKit, fonts);
    const { id, title } = solved.rig;
    const facts = { title, author: "Makebelieve", language: "en", date: "2026-05-01" };
    const previews = [faces.front, faces.back].map((face) => dotsOf(drawingToPng(face, dpi, fonts)));
    return { id, previews, pdf: paintPdf(cardSides(faces.alone), facts, fonts) };
  });
});

/** Holds what another program makes of each page against the preview. */
export async function compare(draw: (pdf: Uint8Array, page: number) => Promise<Dots>, shareMax: number) {
  for (const { id, pdf, previews } of printedCards()) {
    for (const [n, preview] of previews.entries()) {
      const { share, ink } = difference(preview, await draw(pdf, n + 1));
      expect(ink, `${id}, page ${n + 1}`).toBeGreaterThan(inkMin);
      expect(share, `${id}, page ${n + 1}`).toBeLessThan(shareMax);
    }
  }
}
