import type { BackLook, FrontLook } from "../../../templates/cards/card-look.ts";
import { last } from "../../core/lists.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import type { Fonts } from "../../layout/fonts.ts";
import type { LaidOutPage } from "../../layout/page-of.ts";
import {
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
import { type Composer, hasPart, makeComposer, type Parts } from "./card-composer.ts";
import { cardContent } from "./card-content.ts";
import type { CardFormat } from "./card-formats.ts";
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

interface Looks {
  readonly fronts: readonly FrontLook[];
  readonly backs: readonly BackLook[];
}

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
const onFront: readonly CardPart[] = ["true-tip"];
/** Such as go to the front where the back has no room for them. */
const elseOnFront: readonly CardPart[] = ["set-depth"];

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
  const must: Parts = [
    ...mustParts.filter(has),
    ...(composer.card.isUpInWater ? ["set-depth" as const] : []),
  ];
  const needed = [...must, ...least.filter((part) => !isMakers(part)), ...format.least];
  const asked = cardParts.filter((part) => has(part) && needed.includes(part));
  const all = cardParts.filter(has);
  const wished = format.wished.filter((part) => has(part) && !asked.includes(part));
  const { front, back } = filled(withWished(format, composer, asked, wished), all, composer);
  const taken = [...front.taken, ...back.taken];
  const lacks = asked.filter((part) => !taken.includes(part));
  const look = { front: front.look, back: back.look };
  return finished({ front: front.page, back: back.page, taken, lacks, look }, solved.rig.id, format);
}

/** The same sides with all further parts on the back that fit. */
function filled({ front, back }: Sides, parts: Parts, composer: Composer): Sides {
  if (!fits(back.page)) return { front, back };
  const further = parts.filter((part) => isOfBack(part) && !front.taken.includes(part));
  return { front, back: fuller(back, further, ofBack(back.look, front.look, composer)) };
}

/** How a back is filled. */
function ofBack(look: BackLook, front: FrontLook, composer: Composer): Filling {
  const tackle = tackleOnBack(front);
  return {
    compose: (parts) => composer.back(look, parts, tackle),
    takes: (part, taken) => composer.takes(look, part, taken, tackle),
  };
}

/** All that is asked for and as much of what is wished for as fits in any type; without any where not all is to be had. */
function withWished(format: CardFormat, composer: Composer, asked: Parts, wished: Parts): Sides {
  const sides = withAll(format, composer, [...asked, ...wished]);
  if (sides) return sides;
  return wished.length > 0
    ? withWished(format, composer, asked, wished.slice(0, -1))
    : withSome(format, composer, asked);
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
const isOfFront = (part: CardPart) => onFront.includes(part);
const isOfBack = (part: CardPart) => !isOfFront(part);

/** Both sides with all that is asked for; undefined where that fits in no look. */
function withAll(format: CardFormat, composer: Composer, asked: Parts): Sides | undefined {
  const sides = parted(format, composer, asked, onFront);
  if (sides || !asked.some((part) => elseOnFront.includes(part))) return sides;
  // Not at the cost of what the front says by itself.
  const fronts = format.fronts.filter(
    ({ shared, tackleOn }) => (shared === "none" || shared === "brief") && tackleOn === "front",
  );
  return parted({ ...format, fronts }, composer, asked, [...onFront, ...elseOnFront]);
}

/** The same, with some parts on the front and all others on the back. */
function parted(
  { fronts, backs }: Looks,
  composer: Composer,
  asked: Parts,
  ofFront: Parts,
): Sides | undefined {
  const taken = asked.filter((part) => ofFront.includes(part));
  const ofBack = asked.filter((part) => !ofFront.includes(part));
  const triedBacks = new Map<boolean, Side<BackLook> | undefined>();
  const backWith = (tackle: boolean) => {
    if (!triedBacks.has(tackle))
      triedBacks.set(
        tackle,
        largestThatFits(backs, ofBack, (look) => composer.back(look, ofBack, tackle)),
      );
    return triedBacks.get(tackle);
  };
  // What no back has room for by itself, none has room for with the tackle as well.
  if (!backWith(false)) return undefined;
  for (const look of fronts) {
    // Its drawing is the dearest part of a card: none is made for a front without a back.
    const back = backWith(tackleOnBack(look));
    if (!back) continue;
    const page = composer.front(look, taken);
    if (fits(page)) return { front: { look, page, taken }, back };
  }
  return undefined;
}

/** Both sides with as much of what is asked for as fits, in the smallest type. */
function withSome({ fronts, backs }: CardFormat, composer: Composer, asked: Parts): Sides {
  const bare =
    firstThatFits(fronts, [], (look) => composer.front(look, [])) ??
    only(last(fronts), (look) => composer.front(look, [], "measured"));
  const front = fuller(bare, asked.filter(isOfFront), {
    compose: (parts) => composer.front(bare.look, parts),
    takes: () => 0,
  });
  const back = only(last(backs), (look) => composer.back(look, [], tackleOnBack(front.look)));
  return {
    front,
    back: fuller(back, asked.filter(isOfBack), ofBack(back.look, front.look, composer)),
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

/** The same from the last look up, each of which takes more room than the next: most cards need the smallest type. */
function largestThatFits<L>(
  looks: readonly L[],
  taken: Parts,
  compose: (look: L) => LaidOutPage,
): Side<L> | undefined {
  let best: Side<L> | undefined;
  for (const look of looks.toReversed()) {
    const page = compose(look);
    if (!fits(page)) break;
    best = { look, page, taken };
  }
  return best;
}

const only = <L>(look: L, compose: (look: L) => LaidOutPage): Side<L> => ({
  look,
  page: compose(look),
  taken: [],
});

interface Filling {
  readonly compose: (parts: Parts) => LaidOutPage;
  readonly takes: (part: CardPart, taken: Parts) => number;
}

/** What a side may stick out by and still fit, with something for sums of heights [mm]. */
const unseenMm = 0.1;

/** The same side with each further part, in turn, that fits. */
function fuller<L>(side: Side<L>, parts: Parts, { compose, takes }: Filling): Side<L> {
  let best = side;
  let moreDepths = true;
  for (const part of parts) {
    if (best.taken.includes(part)) continue;
    // More depths never fit where fewer did not.
    if (isDepths(part) && !moreDepths) continue;
    const { spareMm } = best.page;
    if (spareMm !== undefined && takes(part, best.taken) > spareMm + unseenMm) continue;
    const taken = [...best.taken, part];
    const page = compose(taken);
    if (fits(page)) best = { ...best, page, taken };
    else if (isDepths(part)) moreDepths = false;
  }
  return best;
}

const isDepths = (part: CardPart) => depthParts.some((depths) => depths === part);
