import type { CardCode } from "../../../templates/cards/card-back.tsx";
import { CardBack } from "../../../templates/cards/card-back.tsx";
import { CardFront } from "../../../templates/cards/card-front.tsx";
import type { BackLook, FrontLook } from "../../../templates/cards/card-look.ts";
import { placedLogo } from "../../../templates/logo.ts";
import { last } from "../../core/lists.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import type { Fonts } from "../../layout/fonts.ts";
import { layOut } from "../../layout/lay-out.ts";
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
  makersParts,
  mustParts,
} from "../../model/card-content.ts";
import type { Guide } from "../../model/library.ts";
import type { RasterImage } from "../../model/own-image.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { Card } from "../sheets/sheet.ts";
import { cardContent, drawnOf, threeDepths } from "./card-content.ts";
import type { CardFormat } from "./card-formats.ts";
import { gaugePicture, tipPicture } from "./card-pictures.ts";
import { qrCode } from "./qr-code.ts";
import { rigPicture } from "./rig-picture.ts";
import { shotTable } from "./shot-table.ts";
import { turnedCard } from "./turned-card.ts";

/** A card of one format as it is read, and as it lies on paper. */
export interface FinishedCard {
  readonly front: LaidOutPage;
  readonly back: LaidOutPage;
  /** What it has beyond what must stand on every card. */
  readonly taken: readonly CardPart[];
  /** What it had no room for of that which the rig's every card has. */
  readonly lacks: readonly CardPart[];
  readonly look: { readonly front: FrontLook; readonly back: BackLook };
  /** Alone on paper of its own size. */
  readonly alone: Card;
  readonly onSheet: Card;
}

interface CardWishes {
  readonly notes?: CardNotes;
  /** What the next smaller card has taken, and this one must therefore have. */
  readonly least?: readonly CardPart[];
  /** The mark of the guide's makers. */
  readonly logo?: RasterImage | undefined;
}

/** Lays out the two sides of one rig's card in one format. */
interface Composer {
  readonly card: CardContent;
  readonly front: (look: FrontLook, parts: Parts, lack?: "measured" | "noticed") => LaidOutPage;
  readonly back: (look: BackLook, parts: Parts, tackle: boolean) => LaidOutPage;
}

type Parts = readonly CardPart[];

/** A side with what it has taken. */
interface Side<L> {
  readonly look: L;
  readonly page: LaidOutPage;
  readonly taken: Parts;
}

interface Sides {
  readonly front: Side<FrontLook>;
  readonly back: Side<BackLook>;
}

/** Parts of the front; all others stand on the back. */
const onFront: ReadonlySet<CardPart> = new Set(["true-tip"]);

/**
 * A rig's card: either side as its format likes it best among those in which all that must stand on it fits, with as
 * much besides as there is room for. Where not all that must stand fits, it is in `lacks`; where the card cannot be had
 * at all, the overflows of its sides say so.
 */
export function layOutCard(
  solved: SolvedRig,
  format: CardFormat,
  guide: Guide,
  kit: DrawingKit,
  fonts: Fonts,
  { notes = {}, least = [], logo }: CardWishes = {},
): FinishedCard {
  const short = { ...kit, figures: kit.figures.compact };
  const composer = makeComposer(solved, format, cardContent(solved, guide, short, notes), kit, fonts, logo);
  const has = (part: CardPart) =>
    part === "logo" ? logo !== undefined && format.logoMm !== undefined : hasPart(composer.card, part);
  const must: Parts = mustParts.filter(has);
  const needed = [...must, ...least.filter((part) => !isMakers(part)), ...format.least];
  const asked = cardParts.filter((part) => has(part) && needed.includes(part));
  const all = cardParts.filter(has);
  const bare = filled(withAll(format, composer, asked) ?? withSome(format, composer, asked), all, composer);
  const { front, back } = withMakers(format, composer, all, bare) ?? bare;
  const taken = [...front.taken, ...back.taken];
  const lacks = asked.filter((part) => !taken.includes(part));
  const look = { front: front.look, back: back.look };
  return finished({ front: front.page, back: back.page, taken, lacks, look }, solved.rig.id, format);
}

/** The same sides with all further parts on the back that fit. */
function filled({ front, back }: Sides, parts: Parts, composer: Composer): Sides {
  const compose = (taken: Parts) => composer.back(back.look, taken, tackleOnBack(front.look));
  return { front, back: fits(back.page) ? fuller(back, parts.filter(isOfBack), compose) : back };
}

/** All that the sides have and the makers' own besides, in smaller type; undefined where that has no room. */
function withMakers(format: CardFormat, composer: Composer, all: Parts, bare: Sides): Sides | undefined {
  const has = [...bare.front.taken, ...bare.back.taken];
  const wished = format.wished.filter((part) => all.includes(part) && !has.includes(part));
  const sides = wished.length > 0 ? withAll(format, composer, [...has, ...wished]) : undefined;
  return sides && filled(sides, all, composer);
}

/** A card as it lies on paper of its own, and on sheets. */
export function finished(
  card: Omit<FinishedCard, "alone" | "onSheet">,
  id: string,
  { turns }: CardFormat,
): FinishedCard {
  return { ...card, alone: turnedCard(id, card, turns.alone), onSheet: turnedCard(id, card, turns.onSheet) };
}

const fits = ({ overflows }: LaidOutPage) => overflows.length === 0;
const tackleOnBack = ({ tackleOn }: FrontLook) => tackleOn === "back";
const isMakers = (part: CardPart) => makersParts.some((makers) => makers === part);
const isOfFront = (part: CardPart) => onFront.has(part);
const isOfBack = (part: CardPart) => !onFront.has(part);

/** Both sides with all that is asked for; undefined where that fits in no look. */
function withAll({ fronts, backs }: CardFormat, composer: Composer, asked: Parts): Sides | undefined {
  const backWith = (tackle: boolean) => {
    const taken = asked.filter(isOfBack);
    return firstThatFits(backs, taken, (look) => composer.back(look, taken, tackle));
  };
  const triedBacks = new Map<boolean, Side<BackLook> | undefined>();
  for (const look of fronts) {
    const taken = asked.filter(isOfFront);
    const page = composer.front(look, taken);
    if (!fits(page)) continue;
    const tackle = tackleOnBack(look);
    if (!triedBacks.has(tackle)) triedBacks.set(tackle, backWith(tackle));
    const back = triedBacks.get(tackle);
    if (back) return { front: { look, page, taken }, back };
  }
  return undefined;
}

/** Both sides with as much of what is asked for as fits, in the smallest type. */
function withSome({ fronts, backs }: CardFormat, composer: Composer, asked: Parts): Sides {
  const bare =
    firstThatFits(fronts, [], (look) => composer.front(look, [])) ??
    only(last(fronts), (look) => composer.front(look, [], "measured"));
  const front = fuller(bare, asked.filter(isOfFront), (parts) => composer.front(bare.look, parts));
  const tackle = tackleOnBack(front.look);
  const back = only(last(backs), (look) => composer.back(look, [], tackle));
  return {
    front,
    back: fuller(back, asked.filter(isOfBack), (parts) => composer.back(back.look, parts, tackle)),
  };
}

function firstThatFits<L>(
  looks: readonly L[],
  taken: Parts,
  compose: (look: L) => LaidOutPage,
): Side<L> | undefined {
  for (const look of looks) {
    const page = compose(look);
    if (fits(page)) return { look, page, taken };
  }
  return undefined;
}

const only = <L>(look: L, compose: (look: L) => LaidOutPage): Side<L> => ({
  look,
  page: compose(look),
  taken: [],
});

/** The same side with each further part, in turn, that fits. */
function fuller<L>(side: Side<L>, parts: Parts, compose: (parts: Parts) => LaidOutPage): Side<L> {
  let best = side;
  let moreDepths = true;
  for (const part of parts) {
    if (best.taken.includes(part)) continue;
    // More depths never fit where fewer did not.
    if (isDepths(part) && !moreDepths) continue;
    const taken = [...best.taken, part];
    const page = compose(taken);
    if (fits(page)) best = { ...best, page, taken };
    else if (isDepths(part)) moreDepths = false;
  }
  return best;
}

const isDepths = (part: CardPart) => depthParts.some((depths) => depths === part);

/** Whether there is anything to say of it; a whip has no other depth, a guide without an address no code. */
function hasPart(card: CardContent, part: CardPart): boolean {
  switch (part) {
    case "other-depth":
      return card.otherDepth !== undefined;
    case "change-first":
      return card.changeFirst !== undefined;
    case "float-says":
      return card.floatSays.length > 0;
    case "findings":
      return card.findings.length > 0;
    case "two-depths":
      return card.depths.length > 1;
    case "three-depths":
      return card.depths.length > 2;
    case "every-depth":
      return card.depths.length > 3;
    case "code":
      return card.address !== undefined;
    case "find-us":
      return card.findUs !== undefined;
    case "gauge":
      return card.shotSizes > 1;
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
  logo: RasterImage | undefined,
): Composer {
  const drawn = drawnOf(solved.depths);
  const code = codeOf(card, format, kit);
  const mark = logo && format.logoMm && placedLogo(logo, format.logoMm);
  return {
    card,
    front: (look, parts, lack = "noticed") => {
      const picture = rigPicture(solved, drawn, kit, look.figurePt * mmPerPoint, look.shared, lack);
      const tip = parts.includes("true-tip") ? { tip: tipPicture(solved, kit, look) } : {};
      return picture.checked(
        layOut(CardFront({ card, look, scale: kit.figures.ruler, picture, ...tip }), format.front, fonts),
      );
    },
    back: (look, parts, tackle) => {
      const choice = choiceOf(card, parts);
      const table = shotTable(card, choice.depths, look, format.back.widthMm, kit);
      const gauge = choice.parts.has("gauge") ? gaugePicture(solved, format, look, kit) : undefined;
      const props = { card, choice, words: kit.words, look, table, tackle, code, gauge, mark };
      return layOut(CardBack(props), format.back, fonts);
    },
  };
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
