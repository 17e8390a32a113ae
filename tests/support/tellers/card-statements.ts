import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import type { SolvedRig } from "../../../src/model/solved.ts";
import type { CardFormat } from "../../../src/print/cards/card-formats.ts";
import { cardSides } from "../../../src/print/cards/card-sides.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { paintPdf } from "../../../src/print/pdf/pdf.ts";
import type { SiteInput } from "../../../src/site/input.ts";
import { readPdf } from "../../print/read-pdf.ts";
import { readCard } from "./read-card.ts";
import type { Statement } from "./statement.ts";

const fonts = nodeFonts();
const facts = { title: "card", author: "club", language: "en", date: "2026-05-01" };

/** What a rig's card says once it is printed and read by an independent reader. */
export async function cardStatements(
  solved: SolvedRig,
  format: CardFormat,
  { kit, library }: Pick<SiteInput, "kit" | "library">,
): Promise<Statement[]> {
  const card = await layOutCard(solved, format, library.guide, { ...kit, measure: fonts.measure }, fonts);
  const pdf = await readPdf(paintPdf(cardSides(card.alone), facts, fonts));
  return readCard(pdf, `card ${format.name}`);
}
