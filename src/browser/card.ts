import { bold, italic, regular } from "card-fonts";
import type { DrawingKit } from "../drawing/kit.ts";
import { makeFonts } from "../layout/fonts.ts";
import type { SolvedRig } from "../model/solved.ts";
import { cardSides } from "../print/cards/card-sides.ts";
import { id1Card, layOutId1 } from "../print/cards/id1-card.ts";
import { DoesNotFitError } from "../print/does-not-fit.ts";
import { paintPdf } from "../print/pdf/pdf.ts";

type Guide = Parameters<typeof layOutId1>[1];

/** Makes the pocket card of a rig; the page calls it once this script is loaded. */
export type MakeCard = (solved: SolvedRig, guide: Guide, kit: DrawingKit) => Promise<Uint8Array>;

const makeCard: MakeCard = async (solved, guide, pageKit) => {
  const fonts = makeFonts({ regular, bold, italic });
  const kit = { ...pageKit, measure: fonts.measure };
  const { id, title } = solved.rig;
  const faces = await layOutId1(solved, guide, kit, fonts);
  const problems = (["front", "back"] as const).flatMap((side) =>
    faces[side].overflows.map((overflow) => ({ ...overflow, of: id, format: "ID-1", side })),
  );
  if (problems.length > 0) throw new DoesNotFitError(problems, kit.words);
  const { publisher, language, edition } = guide;
  const facts = {
    title: kit.words("card.document", { rig: title }),
    author: publisher,
    language,
    date: edition,
  };
  return paintPdf(cardSides(id1Card(id, faces)), facts, fonts);
};

Object.assign(globalThis, { dotdownCard: makeCard });
