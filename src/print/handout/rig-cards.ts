import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import { known } from "../../core/lists.ts";
import type { PaperSide, Placed, QuarterTurn } from "../../layout/paper.ts";
import { sitePaths } from "../../model/addresses.ts";
import type { FinishedCard } from "../cards/lay-out-card.ts";
import { turnedCard } from "../cards/turned-card.ts";
import type { Press } from "../press.ts";
import { paperSizes } from "../sheets/paper-sizes.ts";
import { sheets } from "../sheets/sheet.ts";
import { sheetFigures, sheetNote } from "../sheets/sheet-note.ts";
import { pageOfLink } from "./links.ts";

/** A card, and what stands for all that it is made from. */
export type KeptCard = FinishedCard & { readonly from: string };

/** The pocket cards of the guide's rigs, by the rigs' ids, in the order of the rigs. */
export type RigCards = ReadonlyMap<string, KeptCard>;

/**
 * Rigs whose cards a reader of a text on paper needs: those that it leads to.
 *
 * @param links of the text, under the names of pages
 */
export function rigsNeeded({ links }: { readonly links: readonly string[] }, cards: RigCards): string[] {
  const linked = new Set(links.map(pageOfLink));
  return [...cards.keys()].filter((id) => linked.has(sitePaths.rig(id)));
}

/** Cards of a whole guide that a booklet has; with more of them it would be a book of cards. */
const cardsInBooklet = 400;

/** The cards of a booklet: of all rigs, or in a guide of very many of those that its texts lead to. */
export function cardsOfBooklet(
  texts: readonly { readonly links: readonly string[] }[],
  cards: RigCards,
): RigCards {
  if (cards.size <= cardsInBooklet) return cards;
  const links = texts.flatMap((text) => text.links);
  return new Map(rigsNeeded({ links }, cards).map((id) => [id, known(cards, id)]));
}

/** Ways that a card lies on paper to be folded: front and back have the corner for the punch in common. */
const lies = [
  { front: 270, back: 0 },
  { front: 0, back: 270 },
] as const satisfies readonly { readonly front: QuarterTurn; readonly back: QuarterTurn }[];

/** The sheet, from 0, that a card lies on. */
export function sheetOf({ front }: FinishedCard, sides: readonly PaperSide[]): number {
  const isFront = (part: Placed) =>
    front.from === undefined ? part.items === front.items : part.from === front.from;
  return sides.findIndex(({ parts }) => parts.some(isFront));
}

/** Cards on sheets of the handout, each to be cut out and folded where only that side is printed, as few sheets as can be. */
export function cardSheets(
  cards: readonly FinishedCard[],
  format: HandoutFormat,
  use: "to cut out" | "to look at",
  { kit, fonts }: Press,
): PaperSide[] {
  if (cards.length === 0) return [];
  const { words } = kit;
  const paper = paperSizes[format.name];
  const lines =
    use === "to cut out"
      ? [words("card.sheet.scale", sheetFigures(kit.figures)), words("card.sheet.fold")]
      : [words("handout.cards-to-look-at")];
  const note = sheetNote(lines, paper, fonts, kit.figures);
  const notes = { front: note, back: note };
  return lies
    .map((turns) => cards.map((card) => turnedCard(card.alone.id, card, turns)))
    .map((turned) => sheets(turned, paper, "fold", "apart", notes))
    .filter(({ length }) => length > 0)
    .reduce((fewest, sides) => (sides.length < fewest.length ? sides : fewest));
}
