import { bold, italic, regular } from "card-fonts";
import type { DrawingKit } from "../drawing/kit.ts";
import { makeFonts } from "../layout/fonts.ts";
import type { SolvedRig } from "../model/solved.ts";
import { cardFormats } from "../print/cards/card-formats.ts";
import { cardSides } from "../print/cards/card-sides.ts";
import { layOutCard } from "../print/cards/lay-out-card.ts";
import { DoesNotFitError } from "../print/does-not-fit.ts";
import { paintPdf } from "../print/pdf/pdf.ts";

type Guide = Parameters<typeof layOutCard>[2];

const pocket = cardFormats["ID-1"];

/** Makes the pocket card of a rig; the page calls it once this script is loaded. */
export type MakeCard = (solved: SolvedRig, guide: Guide, kit: DrawingKit) => Promise<Uint8Array>;

const makeCard: MakeCard = async (solved, guide, pageKit) => {
  const fonts = makeFonts({ regular, bold, italic });
  const kit = { ...pageKit, measure: fonts.measure };
  const { id, title } = solved.rig;
  const card = await layOutCard(solved, pocket, guide, kit, fonts);
  const problems = (["front", "back"] as const).flatMap((side) =>
    card[side].overflows.map((overflow) => ({ ...overflow, of: id, format: pocket.name, side })),
  );
  if (problems.length > 0) throw new DoesNotFitError(problems, kit.words);
  const { publisher, language, edition } = guide;
  const facts = {
    title: kit.words("card.document", { rig: title }),
    author: publisher,
    language,
    date: edition,
  };
  return paintPdf(cardSides(card.alone), facts, fonts);
};

Object.assign(globalThis, { dotdownCard: makeCard });
