import { first } from "../../core/lists.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { madeInOrder } from "../../model/in-order.ts";
import type { SessionSpot, SolvedSession } from "../../model/solved-session.ts";
import { hazardLines } from "../../words/swim-hazards.ts";
import { cardFormatsOn } from "../cards/card-formats.ts";
import { keptCards, type LaidOutCard } from "../cards/kept-cards.ts";
import type { Press } from "../press.ts";
import { paperSizes } from "../sheets/paper-sizes.ts";
import { sheets } from "../sheets/sheet.ts";
import { sheetFigures, sheetNote } from "../sheets/sheet-note.ts";

/** The pocket cards of a spot's rigs, and of those that lessons want there, made up for its depth. */
export interface SpotCards {
  readonly spot: SessionSpot;
  readonly cards: readonly { readonly laid: LaidOutCard; readonly copies: number }[];
}

/** @param markings what is written on floats, by their ids */
export function layOutSpotCards(
  { spots, lessonRigs }: Pick<SolvedSession, "spots" | "lessonRigs">,
  markings: ReadonlyMap<string, string>,
  press: Press,
): readonly SpotCards[] {
  const pocket = cardFormatsOn[press.guide.paper].filter(({ listedAs }) => listedAs === "card");
  return madeInOrder(press.inOrder, spots, (spot) => {
    const rigs = new Map(
      spot.rigs.map(({ entry, solved }) => [entry.id, { entry, solved, copies: spot.learners }]),
    );
    for (const { entry, solved, count } of lessonRigs.filter((rig) => rig.spot === spot))
      rigs.set(entry.id, { entry, solved, copies: count + (rigs.get(entry.id)?.copies ?? 0) });
    return {
      spot,
      cards: [...rigs.values()].map(({ entry, solved, copies }) => ({
        laid: first(keptCards({ entry, solved }, markings.get(solved.rig.float.id), press, pocket)),
        copies,
      })),
    };
  });
}

/** A card for each rig that is made up for the spots of a swim, front and back, with its hazards at the foot. */
export function swimCardSides(spots: readonly SpotCards[], press: Press): PaperSide[] {
  const { guide, kit, fonts } = press;
  const paper = paperSizes[guide.paper];
  const { swim } = first(spots).spot;
  const cards = spots.flatMap((at) => at.cards);
  const cutting = cards[0]?.laid.format.cutting ?? "apart";
  const title = spots
    .map(({ spot }) => kit.words("session.run.spot-of", { swim: swim.title, spot: spot.spot.title }))
    .join("; ");
  const lines = [
    title,
    ...hazardLines(swim, guide, kit),
    kit.words("card.sheet.scale", sheetFigures(kit.figures)),
  ];
  const front = sheetNote([...lines, kit.words("card.sheet.long-edge")], paper, fonts, kit.figures);
  const back = sheetNote([title], paper, fonts, kit.figures);
  const copies = cards.flatMap(({ laid, copies }) => Array.from({ length: copies }, () => laid.card.onSheet));
  return sheets(copies, paper, "long edge", cutting, { front, back });
}

/** Spots of one swim together, whose cards share their sheets. */
export function bySwim(spots: readonly SpotCards[]): readonly (readonly SpotCards[])[] {
  const swims = new Map<string, SpotCards[]>();
  for (const at of spots) {
    const { id } = at.spot.swim;
    swims.set(id, [...(swims.get(id) ?? []), at]);
  }
  return [...swims.values()];
}
