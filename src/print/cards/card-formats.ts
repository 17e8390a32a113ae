import type { DrawingKit } from "../../drawing/kit.ts";
import type { Fonts } from "../../layout/fonts.ts";
import type { LaidOutPage } from "../../layout/lay-out.ts";
import type { cardSuffixes } from "../../model/addresses.ts";
import type { Guide } from "../../model/library.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { Card, Cutting } from "../sheets/sheet.ts";
import { id1Card, layOutId1 } from "./id1-card.ts";
import { layOutReader, readerCard, readerFormats } from "./reader-card.ts";

/** A card of one format as it is read, and as it lies on paper. */
export interface FinishedCard {
  readonly front: LaidOutPage;
  readonly back: LaidOutPage;
  /** Alone on paper of its own size. */
  readonly alone: Card;
  readonly onSheet: Card;
}

export interface CardFormat {
  readonly name: keyof typeof cardSuffixes;
  readonly cutting: Cutting;
  layOut(solved: SolvedRig, guide: Guide, kit: DrawingKit, fonts: Fonts): Promise<FinishedCard>;
}

/** Every format of card, smallest first. */
export const cardFormats: readonly CardFormat[] = [
  {
    name: "ID-1",
    cutting: "apart",
    layOut: async (solved, guide, kit, fonts) => {
      const faces = await layOutId1(solved, guide, kit, fonts);
      const card = id1Card(solved.rig.id, faces);
      return { ...faces, alone: card, onSheet: card };
    },
  },
  ...readerFormats.map(
    (format): CardFormat => ({
      name: format.name,
      cutting: format.name === "A7" ? "apart" : "halving",
      layOut: async (solved, guide, kit, fonts) => {
        const faces = await layOutReader(solved, format, guide, kit, fonts);
        const { id } = solved.rig;
        return {
          ...faces,
          alone: readerCard(id, faces, false),
          onSheet: readerCard(id, faces, format.name === "A5"),
        };
      },
    }),
  ),
];
