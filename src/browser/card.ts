import type { DrawingKit } from "../drawing/kit.ts";
import { type Fonts, makeFonts } from "../layout/fonts.ts";
import { type PackedFaces, unpackedFaces } from "../layout/glyph-table.ts";
import type { LaidOutPage } from "../layout/page-of.ts";
import type { CardNotes, CardPart } from "../model/card-content.ts";
import type { SolvedRig } from "../model/solved.ts";
import { cardFormats } from "../print/cards/card-formats.ts";
import { cardSides } from "../print/cards/card-sides.ts";
import { layOutCard } from "../print/cards/lay-out-card.ts";
import { DoesNotFitError } from "../print/does-not-fit.ts";
import { paintPdf } from "../print/pdf/pdf.ts";

type Guide = Parameters<typeof layOutCard>[2];

/** The faces with the signs of this guide, which the build writes in front of this script. */
declare const dotdownFaces: PackedFaces;
/** The words of this guide that lines may part, by themselves. */
declare const dotdownHyphens: Readonly<Record<string, readonly string[]>> | undefined;

const pocket = cardFormats["ID-1"];

/** Both sides of a card, to be shown, and the card as a file, to be kept or printed. */
interface MadeCard {
  readonly front: LaidOutPage;
  readonly back: LaidOutPage;
  /** What should stand on it and had no room. */
  readonly lacks: readonly CardPart[];
  pdf(): Promise<Uint8Array>;
}

/**
 * Makes the pocket card of a rig; the page calls it once this script is loaded.
 *
 * @throws DoesNotFitError where the card has not room enough
 */
export type MakeCard = (
  solved: SolvedRig,
  guide: Guide,
  kit: DrawingKit,
  notes: CardNotes,
) => Promise<MadeCard>;

const hyphens = typeof dotdownHyphens === "undefined" ? undefined : dotdownHyphens;
const fonts: Fonts = {
  ...makeFonts(unpackedFaces(dotdownFaces)),
  ...(hyphens && { hyphenate: (word) => hyphens[word] ?? [word] }),
};

const makeCard: MakeCard = async (solved, guide, pageKit, notes) => {
  const kit = { ...pageKit, measure: fonts.measure };
  const { id, title } = solved.rig;
  const card = layOutCard(solved, pocket, guide, kit, fonts, { notes });
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
  return {
    front: card.front,
    back: card.back,
    lacks: card.lacks,
    pdf: async () => paintPdf(cardSides(card.alone), facts, fonts),
  };
};

Object.assign(globalThis, { dotdownCard: makeCard });
