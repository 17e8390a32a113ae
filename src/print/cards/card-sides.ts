import type { PaperSide, QuarterTurn } from "../../layout/paper.ts";
import type { Card, CardFace } from "../sheets/sheet.ts";

/** A card alone: two pages of its own size, each shown the right way up. */
export function cardSides(card: Card): PaperSide[] {
  const alone = (face: CardFace): PaperSide => ({
    widthMm: card.widthMm,
    heightMm: card.heightMm,
    viewTurn: ((360 - face.turn) % 360) as QuarterTurn,
    parts: [{ ...face, xMm: 0, yMm: 0 }],
  });
  return [alone(card.front), alone(card.back)];
}
