import { withId } from "../../core/lists.ts";
import type { PaperSide } from "../../layout/paper.ts";
import type { SessionSpot } from "../../model/solved-session.ts";
import { hazardLines } from "../../words/swim-hazards.ts";
import { keptCards, type LaidOutCard } from "../cards/kept-cards.ts";
import type { Press } from "../press.ts";
import { paperSizes } from "../sheets/paper-sizes.ts";
import { sheets } from "../sheets/sheet.ts";
import { sheetFigures, sheetNote } from "../sheets/sheet-note.ts";

/** The pocket cards of a spot's rigs, made up for its depth. */
export interface SpotCards {
  readonly spot: SessionSpot;
  readonly cards: readonly LaidOutCard[];
}

/** @param markings what is written on floats, by their ids */
export function layOutSpotCards(
  spots: readonly SessionSpot[],
  markings: ReadonlyMap<string, string>,
  press: Press,
): readonly SpotCards[] {
  return spots.map((spot) => ({
    spot,
    cards: spot.rigs.map(({ entry, solved }) => {
      const laid = keptCards({ entry, solved }, markings.get(solved.rig.float.id), press);
      return pocketOf(laid);
    }),
  }));
}

const pocketOf = (laid: readonly LaidOutCard[]): LaidOutCard =>
  withId(
    laid.map((card) => ({ ...card, id: card.format.listedAs })),
    "card",
  );

/** A card for each learner of a spot and each of its rigs, front and back, with the hazards of the swim at the foot. */
export function spotCardSides(
  { spot: { swim, spot, learners }, cards }: SpotCards,
  press: Press,
): PaperSide[] {
  const { guide, kit, fonts } = press;
  const paper = paperSizes[guide.paper];
  const cutting = cards[0]?.format.cutting ?? "apart";
  const title = kit.words("session.run.spot-of", { swim: swim.title, spot: spot.title });
  const lines = [
    title,
    ...hazardLines(swim, guide, kit),
    kit.words("card.sheet.scale", sheetFigures(kit.figures)),
  ];
  const front = sheetNote([...lines, kit.words("card.sheet.long-edge")], paper, fonts, kit.figures);
  const back = sheetNote([title], paper, fonts, kit.figures);
  const copies = cards.flatMap(({ card }) => Array.from({ length: learners }, () => card.onSheet));
  return sheets(copies, paper, "long edge", cutting, { front, back });
}
