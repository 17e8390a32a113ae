import { Id1Back, Id1Front, id1, id1FigureMm } from "../../templates/cards/id1.tsx";
import type { Guide } from "../content/library.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { drawRig } from "../drawing/rig-drawing.ts";
import type { Fonts } from "../layout/fonts.ts";
import { type LaidOutPage, layOut } from "../layout/lay-out.ts";
import type { SolvedRig } from "../solve/solved.ts";
import { cardContent, threeDepths } from "./card-content.ts";
import { qrCode } from "./qr-code.ts";
import type { Card } from "./sheet.ts";

/** Smallest module of a code on the pocket card [mm]: 4 dots of a 300 dpi printer; larger cards keep 0.4 mm. */
export const id1ModuleMinMm = 0.34;

/** The two faces of a pocket card as they are read: the front upright, the back lying. */
export interface Id1Faces {
  readonly front: LaidOutPage;
  readonly back: LaidOutPage;
}

export async function layOutId1(
  solved: SolvedRig,
  guide: Guide,
  kit: DrawingKit,
  fonts: Fonts,
): Promise<Id1Faces> {
  const depths = threeDepths(solved.depths);
  const card = cardContent({ ...solved, depths }, guide, kit);
  const drawn = depths[Math.floor((depths.length - 1) / 2)]!;
  const picture = (widthMm: number, heightMm: number) =>
    drawRig(solved, drawn, { widthMm, heightMm }, kit, { labels: "distances", textMm: id1FigureMm });
  const front = Id1Front({
    card,
    picture: {
      alt: picture(id1.heightMm - 2 * id1.marginMm, id1.widthMm * 0.85).description,
      draw: (widthMm, heightMm) => picture(widthMm, heightMm).items,
    },
  });
  const code = card.address === undefined ? undefined : qrCode(card.address);
  const back = Id1Back({
    card,
    words: kit.words,
    ...(code && {
      code: {
        alt: kit.words("card.code-alt", { address: card.address! }),
        sizeMm: code.modules * id1ModuleMinMm,
        draw: code.draw,
      },
    }),
  });
  return {
    front: await layOut(front, { widthMm: id1.heightMm, heightMm: id1.widthMm }, fonts),
    back: await layOut(back, { widthMm: id1.widthMm, heightMm: id1.heightMm }, fonts),
  };
}

/**
 * The card as it lies on paper. The upright front lies with its head to the left: its top right corner and the back's
 * are the same corner of the card, which is kept clear for a punch.
 */
export function id1Card(id: string, { front, back }: Id1Faces): Card {
  return {
    id,
    widthMm: id1.widthMm,
    heightMm: id1.heightMm,
    front: { ...front, turn: 270 },
    back: { ...back, turn: 0 },
  };
}
