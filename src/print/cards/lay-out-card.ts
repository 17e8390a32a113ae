import type { CardCode } from "../../../templates/cards/card-faces.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import type { Fonts } from "../../layout/fonts.ts";
import { type LaidOutPage, layOut } from "../../layout/lay-out.ts";
import {
  type BackDepths,
  type BackPart,
  type BackParts,
  backDepths,
  backExtras,
  type CardContent,
  type CardDepth,
} from "../../model/card-content.ts";
import type { Guide } from "../../model/library.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { Card } from "../sheets/sheet.ts";
import { cardContent, threeDepths } from "./card-content.ts";
import type { CardFormat } from "./card-formats.ts";
import { qrCode, quietModules } from "./qr-code.ts";
import { rigPicture } from "./rig-picture.ts";

/** A card of one format as it is read, and as it lies on paper. */
export interface FinishedCard {
  readonly front: LaidOutPage;
  readonly back: LaidOutPage;
  /** What of the format's `ifItFits` the back has taken. */
  readonly taken: readonly BackPart[];
  /** Alone on paper of its own size. */
  readonly alone: Card;
  readonly onSheet: Card;
}

/** A rig's card. Where even what must stand on it does not fit, the overflows of its sides say so. */
export async function layOutCard(
  solved: SolvedRig,
  format: CardFormat,
  guide: Guide,
  kit: DrawingKit,
  fonts: Fonts,
): Promise<FinishedCard> {
  const drawn = drawnOf(solved.depths);
  const card = cardContent(solved, guide, kit);
  const picture = rigPicture(solved, drawn, kit, format.labelMm);
  const front = picture.checked(await layOut(format.faces.front(card, picture), format.front, fonts));
  const { back, taken } = await fullestBack(card, format, kit, fonts);
  const { alone, onSheet } = format.turns;
  const sides = { front, back };
  return {
    ...sides,
    taken,
    alone: lyingCard(card.id, sides, alone),
    onSheet: lyingCard(card.id, sides, onSheet),
  };
}

/** The depth that the front draws: the middle one of those that a small card carries. */
function drawnOf<D extends { readonly depthMm: number }>(depths: readonly D[]): D {
  const three = threeDepths(depths);
  return three[Math.floor((three.length - 1) / 2)]!;
}

/** The back with everything that fits, each part taken in turn; with none where even the barest does not. */
async function fullestBack(
  card: CardContent,
  format: CardFormat,
  kit: DrawingKit,
  fonts: Fonts,
): Promise<{ back: LaidOutPage; taken: readonly BackPart[] }> {
  const code = codeOf(card, format, kit);
  const layOutWith = async (taken: readonly BackPart[]) => {
    const parts = partsOf(card, [...format.always, ...taken]);
    const tree = format.faces.back({ card, parts, words: kit.words, ...(code && { code }) });
    return { taken, back: await layOut(tree, format.back, fonts) };
  };
  const everything = await layOutWith(format.ifItFits);
  if (fits(everything)) return everything;
  let best = await layOutWith([]);
  if (!fits(best)) return best;
  let allDepthsTaken = true;
  for (const part of format.ifItFits) {
    // More depths never fit where fewer did not.
    if (isDepths(part) && !allDepthsTaken) continue;
    const fuller = await layOutWith([...best.taken, part]);
    if (fits(fuller)) best = fuller;
    else if (isDepths(part)) allDepthsTaken = false;
    // Setting and shot come before all else.
    if (best.taken.length === 0) break;
  }
  return best;
}

const fits = ({ back }: { back: LaidOutPage }) => back.overflows.length === 0;

const isDepths = (part: BackPart): part is BackDepths => backDepths.some((depths) => depths === part);

const depthsTold: Readonly<Record<BackDepths, (depths: readonly CardDepth[]) => readonly CardDepth[]>> = {
  "drawn-depth": (depths) => [drawnOf(depths)],
  "two-depths": (depths) => (depths.length < 3 ? depths : [depths[0]!, depths.at(-1)!]),
  "three-depths": threeDepths,
  "every-depth": (depths) => depths,
};

/** What stands on a back that has taken these parts. */
function partsOf({ depths }: CardContent, parts: readonly BackPart[]): BackParts {
  const most = backDepths.findLast((step) => parts.includes(step));
  const told = most ? depthsTold[most](depths) : [drawnOf(depths)];
  const drawnAlone = told.length === 1;
  return {
    depths: told,
    shot: !most ? "on the front" : drawnAlone ? "counted" : "placed",
    extras: new Set(backExtras.filter((extra) => parts.includes(extra))),
  };
}

function codeOf(card: CardContent, { moduleMinMm }: CardFormat, { words }: DrawingKit): CardCode | undefined {
  if (card.address === undefined) return undefined;
  const code = qrCode(card.address);
  return {
    alt: words("card.code-alt", { address: card.address }),
    sizeMm: code.modules * moduleMinMm,
    quietMm: quietModules * moduleMinMm,
    draw: code.draw,
  };
}

/** A card as it lies on paper with its sides turned. */
function lyingCard(
  id: string,
  { front, back }: Pick<FinishedCard, "front" | "back">,
  turns: CardFormat["turns"]["alone"],
): Card {
  const lies = turns.front % 180 !== 0;
  return {
    id,
    widthMm: lies ? front.heightMm : front.widthMm,
    heightMm: lies ? front.widthMm : front.heightMm,
    front: { ...front, turn: turns.front },
    back: { ...back, turn: turns.back },
  };
}
