import type { LaidOutPage } from "../../layout/page-of.ts";
import type { QuarterTurn } from "../../layout/paper.ts";
import type { Card, CardFace } from "../sheets/sheet.ts";
import type { CardFormat } from "./card-formats.ts";

/** A card as it lies on paper: both its faces fill one rectangle, each turned by as much as is said. */
export function turnedCard(
  id: string,
  { front, back }: { readonly front: LaidOutPage; readonly back: LaidOutPage },
  turns: CardFormat["turns"]["alone"],
): Card {
  const lies = turns.front % 180 !== 0;
  return {
    id,
    widthMm: lies ? front.heightMm : front.widthMm,
    heightMm: lies ? front.widthMm : front.heightMm,
    front: turnedFace(front, turns.front),
    back: turnedFace(back, turns.back),
  };
}

function turnedFace(page: LaidOutPage, turn: QuarterTurn): CardFace {
  const { widthMm, heightMm, from } = page;
  return {
    widthMm,
    heightMm,
    turn,
    ...(from !== undefined && { from }),
    get items() {
      return page.items;
    },
  };
}
