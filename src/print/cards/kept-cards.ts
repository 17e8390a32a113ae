import { entry, paired } from "../../core/lists.ts";
import { type CardNotes, type CardPart, cardNotes } from "../../model/card-content.ts";
import { digestOf, digestOnce } from "../../model/digest.ts";
import type { RigEntry } from "../../model/library.ts";
import type { Place } from "../../model/message.ts";
import type { SolvedRig } from "../../model/solved.ts";
import { type DoesNotFit, notFitting, type Shortened } from "../does-not-fit.ts";
import { toldOf, withItems } from "../kept-page.ts";
import type { Press } from "../press.ts";
import { type CardFormat, cardFormatsOn } from "./card-formats.ts";
import { type FinishedCard, finished, layOutCard } from "./lay-out-card.ts";
import { fits, type LayOutAs, whatToShorten } from "./what-to-shorten.ts";

/** A rig's card in one format. */
export interface LaidOutCard {
  readonly format: CardFormat;
  readonly entry: RigEntry;
  readonly solved: SolvedRig;
  readonly card: FinishedCard;
  /** What would let it fit, where it does not. */
  readonly shorten?: Shortened;
  /** Stands for all that it is made from. */
  readonly from: string;
}

/**
 * What of a card is larger than its side.
 *
 * @param place of what is to be shortened
 */
export function cardProblems({ format, entry, card, shorten }: LaidOutCard, place: Place): DoesNotFit[] {
  const said = { of: entry.id, format: format.name, place, ...(shorten && { shorten }) };
  return (["front", "back"] as const).flatMap((side) => notFitting(card[side].overflows, { ...said, side }));
}

type Laid = Pick<LaidOutCard, "card" | "shorten">;

/**
 * The cards of a rig; a larger one has all that the next smaller one has. What is said of them is known at
 * once; their marks are looked up when somebody asks for them, and held no longer, as a guide may have thousands of rigs.
 *
 * @param formats from the smallest on; every one of the guide's paper where nothing is said
 */
export function keptCards(
  { entry: rig, solved }: { readonly entry: RigEntry; readonly solved: SolvedRig },
  marking: string | undefined,
  press: Press,
  formats: readonly CardFormat[] = cardFormatsOn[press.guide.paper],
): LaidOutCard[] {
  const { keep } = press;
  const notes = cardNotes(rig, marking);
  const from = digestOf(press.from, digestOnce(solved.rig), notes);
  const asked = digestOf(
    from,
    formats.map(({ name }) => name),
  );
  const layOut = () => layOutCards(solved, notes, formats, press);
  const marks = (laid = layOut) => press.marks("marks of cards", asked, () => laid().map(marksOf));
  const told = keep("cards", asked, () => {
    const laid = layOut();
    marks(() => laid);
    return laid.map(toldOfCard);
  });
  return paired(formats, told).map(([format, { front, back, shorten, ...said }], i) => {
    const sideFrom = (side: "front" | "back") => digestOf(from, format.name, side);
    const sides = {
      front: withItems({ ...front, from: sideFrom("front") }, () => entry(marks(), i).front),
      back: withItems({ ...back, from: sideFrom("back") }, () => entry(marks(), i).back),
    };
    const card = finished({ ...said, ...sides }, solved.rig.id, format);
    return {
      format,
      entry: rig,
      solved,
      card,
      ...(shorten && { shorten }),
      from: digestOf(from, format.name),
    };
  });
}

function layOutCards(
  solved: SolvedRig,
  notes: CardNotes,
  formats: readonly CardFormat[],
  { guide, kit, fonts, logo }: Press,
): Laid[] {
  let least: readonly CardPart[] = [];
  return formats.map((format) => {
    const layOut: LayOutAs = (told, as) =>
      layOutCard(told, format, guide, kit, fonts, { notes: as, least, logo });
    const card = layOut(solved, notes);
    if (!fits(card)) return { card, shorten: whatToShorten(solved, notes, layOut) };
    least = card.taken;
    return { card };
  });
}

function toldOfCard({ card: { front, back, taken, lacks, look }, shorten }: Laid) {
  return { front: toldOf(front), back: toldOf(back), taken, lacks, look, shorten };
}

const marksOf = ({ card: { front, back } }: Laid) => ({ front: front.items, back: back.items });
