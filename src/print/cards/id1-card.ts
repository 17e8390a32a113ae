import { Id1Back, Id1Front, id1, id1FigureMm } from "../../../templates/cards/id1.tsx";
import type { DrawingKit } from "../../drawing/kit.ts";
import type { Fonts } from "../../layout/fonts.ts";
import { type LaidOutPage, layOut } from "../../layout/lay-out.ts";
import type { Guide } from "../../model/library.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import type { Card } from "../sheets/sheet.ts";
import { cardContent, threeDepths } from "./card-content.ts";
import { qrCode, quietModules } from "./qr-code.ts";
import { rigPicture } from "./rig-picture.ts";

/** Smallest module of a code on the pocket card [mm]: 4 dots of a 300 dpi printer; larger cards keep 0.4 mm. */
export const id1ModuleMinMm = 0.34;

/** The two faces of a pocket card as they are read: the front upright, the back lying. */
export interface Id1Faces {
  readonly front: LaidOutPage;
  readonly back: LaidOutPage;
}

/**
 * The faces of a pocket card, with as many depths as the back has room for: three, else the shallowest and the deepest,
 * else the middle one. Depths that are left out stand on the larger cards. Where even one does not fit, the overflows
 * of its faces say so.
 */
export async function layOutId1(
  solved: SolvedRig,
  guide: Guide,
  kit: DrawingKit,
  fonts: Fonts,
): Promise<Id1Faces> {
  const three = threeDepths(solved.depths);
  const middle = three[Math.floor((three.length - 1) / 2)]!;
  const choices = [three, ...(three.length > 2 ? [[three[0]!, three[2]!]] : []), [middle]];
  const front = await layOutFront(solved, middle, guide, kit, fonts);
  let back: LaidOutPage | undefined;
  for (const depths of choices) {
    back = await layOutBack({ ...solved, depths }, guide, kit, fonts);
    if (back.overflows.length === 0) break;
  }
  return { front, back: back! };
}

async function layOutFront(
  solved: SolvedRig,
  depth: SolvedDepth,
  guide: Guide,
  kit: DrawingKit,
  fonts: Fonts,
): Promise<LaidOutPage> {
  const picture = rigPicture(solved, depth, kit, id1FigureMm);
  const face = Id1Front({ card: cardContent(solved, guide, kit), picture });
  return picture.checked(await layOut(face, { widthMm: id1.heightMm, heightMm: id1.widthMm }, fonts));
}

function layOutBack(solved: SolvedRig, guide: Guide, kit: DrawingKit, fonts: Fonts): Promise<LaidOutPage> {
  const card = cardContent(solved, guide, kit);
  const code = card.address === undefined ? undefined : qrCode(card.address);
  const face = Id1Back({
    card,
    words: kit.words,
    ...(code && {
      code: {
        alt: kit.words("card.code-alt", { address: card.address! }),
        sizeMm: code.modules * id1ModuleMinMm,
        quietMm: quietModules * id1ModuleMinMm,
        draw: code.draw,
      },
    }),
  });
  return layOut(face, { widthMm: id1.widthMm, heightMm: id1.heightMm }, fonts);
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
