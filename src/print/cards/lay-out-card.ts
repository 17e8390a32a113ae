import type { CardCode } from "../../../templates/cards/card-back.tsx";
import { CardBack } from "../../../templates/cards/card-back.tsx";
import { CardFront } from "../../../templates/cards/card-front.tsx";
import type { CardLook, SizedPicture } from "../../../templates/cards/card-look.ts";
import { last } from "../../core/lists.ts";
import { drawTrueTip } from "../../drawing/float/true-tip.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import type { Fonts } from "../../layout/fonts.ts";
import { layOutBoxes } from "../../layout/lay-out-boxes.ts";
import type { LaidOutPage } from "../../layout/page-of.ts";
import { mmPerPoint } from "../../markup/boxes.ts";
import {
  type CardChoice,
  type CardContent,
  type CardDepth,
  type CardNotes,
  type CardPart,
  cardParts,
  depthParts,
} from "../../model/card-content.ts";
import type { Guide } from "../../model/library.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { Card } from "../sheets/sheet.ts";
import { cardContent, drawnOf, threeDepths } from "./card-content.ts";
import type { CardFormat } from "./card-formats.ts";
import { qrCode } from "./qr-code.ts";
import { rigPicture } from "./rig-picture.ts";

/** A card of one format as it is read, and as it lies on paper. */
export interface FinishedCard {
  readonly front: LaidOutPage;
  readonly back: LaidOutPage;
  /** What it has beyond what must stand on every card. */
  readonly taken: readonly CardPart[];
  readonly look: CardLook;
  /** Alone on paper of its own size. */
  readonly alone: Card;
  readonly onSheet: Card;
}

interface CardWishes {
  readonly notes?: CardNotes;
  /** What the next smaller card has taken, and this one must therefore have. */
  readonly least?: readonly CardPart[];
}

/** Lays out the two sides of one rig's card in one format. */
interface Composer {
  readonly card: CardContent;
  readonly front: (
    look: CardLook,
    parts: readonly CardPart[],
    lack?: "measured" | "noticed",
  ) => Promise<LaidOutPage>;
  readonly back: (look: CardLook, parts: readonly CardPart[]) => Promise<LaidOutPage>;
}

/** Both sides, with what they have taken. */
interface Sides {
  readonly front: LaidOutPage;
  readonly back: LaidOutPage;
  readonly taken: readonly CardPart[];
}

/** Parts of the front; all others stand on the back. */
const onFront: ReadonlySet<CardPart> = new Set(["true-tip"]);

/**
 * A rig's card: in the largest type in which all that must stand on it fits, with as much besides as there is room for.
 * Where even what must stand does not fit, the overflows of its sides say so.
 */
export async function layOutCard(
  solved: SolvedRig,
  format: CardFormat,
  guide: Guide,
  kit: DrawingKit,
  fonts: Fonts,
  { notes = {}, least = [] }: CardWishes = {},
): Promise<FinishedCard> {
  const composer = makeComposer(solved, format, cardContent(solved, guide, kit, notes), kit, fonts);
  const asked = cardParts.filter(
    (part) => (least.includes(part) || format.least.includes(part)) && hasPart(composer.card, part),
  );
  const { look, sides } = await largestType(format, composer, asked);
  const full = fits(sides) ? await fullest(look, sides, composer) : sides;
  const { alone, onSheet } = format.turns;
  const { id } = composer.card;
  return { ...full, look, alone: lyingCard(id, full, alone), onSheet: lyingCard(id, full, onSheet) };
}

/** The first look that fits with all that was asked for, else the smallest with what must stand alone. */
async function largestType(
  { looks }: CardFormat,
  composer: Composer,
  least: readonly CardPart[],
): Promise<{ look: CardLook; sides: Sides }> {
  for (const taken of least.length > 0 ? [least, []] : [least]) {
    for (const look of looks) {
      const back = await composer.back(look, taken);
      if (back.overflows.length > 0) continue;
      const sides = { front: await composer.front(look, taken), back, taken };
      if (fits(sides)) return { look, sides };
    }
  }
  const look = last(looks);
  const sides = {
    front: await composer.front(look, [], "measured"),
    back: await composer.back(look, []),
    taken: [],
  };
  return { look, sides };
}

/** The same sides with each further part, in turn, that fits. */
async function fullest(look: CardLook, sides: Sides, composer: Composer): Promise<Sides> {
  let best = sides;
  let moreDepths = true;
  for (const part of cardParts) {
    if (best.taken.includes(part) || !hasPart(composer.card, part)) continue;
    // More depths never fit where fewer did not.
    if (isDepths(part) && !moreDepths) continue;
    const taken = [...best.taken, part];
    const side = onFront.has(part) ? "front" : "back";
    const fuller = { ...best, taken, [side]: await composer[side](look, taken) };
    if (fits(fuller)) best = fuller;
    else if (isDepths(part)) moreDepths = false;
  }
  return best;
}

const isDepths = (part: CardPart) => depthParts.some((depths) => depths === part);

const fits = ({ front, back }: Sides) => front.overflows.length + back.overflows.length === 0;

/** Whether there is anything to say of it; a whip has no other depth, a guide without an address no code. */
function hasPart(card: CardContent, part: CardPart): boolean {
  switch (part) {
    case "other-depth":
      return card.otherDepth !== undefined;
    case "change-first":
      return card.changeFirst !== undefined;
    case "code":
      return card.address !== undefined;
    default:
      return true;
  }
}

function makeComposer(
  solved: SolvedRig,
  format: CardFormat,
  card: CardContent,
  kit: DrawingKit,
  fonts: Fonts,
): Composer {
  const drawn = drawnOf(solved.depths);
  const code = codeOf(card, format, kit);
  return {
    card,
    front: async (look, parts, lack = "noticed") => {
      const picture = rigPicture(solved, drawn, kit, look.figurePt * mmPerPoint, lack);
      const tip = tipPicture(solved, kit, look);
      const tree = CardFront({ card, choice: choiceOf(card, parts), look, picture, tip });
      return picture.checked(layOutBoxes(tree, format.front, fonts));
    },
    back: async (look, parts) => {
      const props = { card, choice: choiceOf(card, parts), words: kit.words, look };
      return layOutBoxes(CardBack({ ...props, ...(code && { code }) }), format.back, fonts);
    },
  };
}

function tipPicture({ rig, depths }: SolvedRig, kit: DrawingKit, { wordPt }: CardLook): SizedPicture {
  const { tipAsSetMm } = drawnOf(depths);
  const { widthMm, heightMm, items } = drawTrueTip(rig.float, tipAsSetMm, wordPt * mmPerPoint);
  const alt = kit.words("drawing.rig.spoken-tip", { tip: kit.figures.tip(tipAsSetMm) });
  return { alt, widthMm, heightMm, draw: () => items };
}

/** What stands on a card that has taken these parts. */
function choiceOf({ depths, drawn }: CardContent, taken: readonly CardPart[]): CardChoice {
  const parts = new Set(taken);
  return { depths: depthsTold(depths, drawn, parts), parts };
}

function depthsTold(
  depths: readonly CardDepth[],
  drawn: CardDepth,
  parts: ReadonlySet<CardPart>,
): readonly CardDepth[] {
  if (parts.has("every-depth")) return depths;
  if (parts.has("three-depths")) return threeDepths(depths);
  if (!parts.has("two-depths")) return [drawn];
  return depths.length < 3 ? depths : [drawn, last(threeDepths(depths))];
}

function codeOf(card: CardContent, { moduleMinMm }: CardFormat, { words }: DrawingKit): CardCode | undefined {
  if (card.address === undefined) return undefined;
  const code = qrCode(card.address);
  return {
    alt: words("card.code-alt", { address: card.address }),
    address: card.address.replace(/^https?:\/\//, ""),
    sizeMm: code.modules * moduleMinMm,
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
