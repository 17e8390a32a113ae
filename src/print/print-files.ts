import { known } from "../core/lists.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { hyphenating } from "../layout/hyphens.ts";
import { nodeFonts } from "../layout/node-fonts.ts";
import { printPaths } from "../model/addresses.ts";
import { digestOf } from "../model/digest.ts";
import { linesToFindUs } from "../model/find-us.ts";
import { movedTo } from "../model/fingerprint.ts";
import { asTheyStand, type InOrder } from "../model/in-order.ts";
import { inMemory, type Keep, makeAnew } from "../model/kept.ts";
import type { Guide, LessonPlan, RigEntry } from "../model/library.ts";
import type { OwnFont } from "../model/own-font.ts";
import type { ReadyImage } from "../model/own-image.ts";
import type { SolvedRig } from "../model/solved.ts";
import { guideOffPages } from "../words/off-pages.ts";
import { type ByTheWater, layOutByTheWater } from "./by-the-water.ts";
import { type CardSide, cardFiles, chosen, type SheetChoice, sheetFiles } from "./card-files.ts";
import { cardFormatsOn } from "./cards/card-formats.ts";
import { cardProblems, keptCards, type LaidOutCard } from "./cards/kept-cards.ts";
import { fits } from "./cards/what-to-shorten.ts";
import { type CardLacks, type DoesNotFit, DoesNotFitError } from "./does-not-fit.ts";
import {
  fittingHandouts,
  type HandoutInput,
  handoutPieces,
  handoutProblems,
  layOutHandouts,
} from "./handout/handout-files.ts";
import type { RigCards } from "./handout/rig-cards.ts";
import { layOutPlans, planFiles, planProblems } from "./plans/plan-files.ts";
import type { Press } from "./press.ts";
import type { PaintedFile, PrintedFile, PrintPiece } from "./printed-file.ts";
import { soundingsFile } from "./swims/soundings-file.ts";
import { layOutTrueSize, trueSizeFiles, trueSizeProblems } from "./true-size/true-size-files.ts";

export interface PrintInput extends ByTheWater {
  readonly guide: Guide;
  readonly rigs: readonly { readonly entry: RigEntry; readonly solved: SolvedRig }[];
  readonly handouts: Omit<HandoutInput, "cards">;
  readonly plans: readonly LessonPlan[];
  /** Photos and drawings of the guide's own, by name. */
  readonly images: ReadonlyMap<string, ReadyImage>;
  /** A font of the guide's own, for signs that ours lack. */
  readonly font?: OwnFont;
  readonly kit: DrawingKit;
  /** Everything computed for a rig, as JSON, which its cards carry. */
  readonly dataOf: (solved: SolvedRig) => string;
  /** Day the files are dated, `2026-05-01`. */
  readonly date: string;
  readonly sheets?: SheetChoice;
  /** Sides of pocket cards that become pictures, too; those that a page leads to, where nothing is said. */
  readonly shownSides?: readonly CardSide[];
  /** Where what is laid out and painted is kept, and what the kit's words are, as text; where nothing is said, nowhere. */
  readonly kept?: { readonly keep: Keep; readonly words: string };
  /** Told of what does not fit, which is then left out; where nobody is told, nothing is made. */
  readonly without?: (problems: readonly DoesNotFit[]) => void;
  /** Told of cards that go without something that stands on every card. */
  readonly lacking?: (lacks: readonly CardLacks[]) => void;
}

/**
 * Everything that is printed: cards of every format for each rig, their pictures, sheets of them, handouts, strips and
 * gauge, each with its first page as a small picture.
 *
 * @throws DoesNotFitError before the first file, with everything that does not fit
 */
export async function* printFiles(input: PrintInput): AsyncIterable<PrintedFile> {
  const press = makePress(input);
  for await (const file of paintedFiles(input, press)) {
    const { shows, printable } = file;
    if (!shows || !printable) {
      yield Object.assign(movedTo(file.path, file), printable && { printable });
      continue;
    }
    const path = printPaths.smallPage(file.path);
    const { known, widthMm, heightMm } = shows;
    yield {
      path,
      ...(known && { known }),
      get content() {
        return shows.svg;
      },
    };
    const smallPage = { path, widthMm, heightMm };
    yield Object.assign(movedTo(file.path, file), { printable: { ...printable, smallPage } });
  }
}

/** Makes what is printed for what is kept of it alone, in an order of its own; nothing where something does not fit. */
export async function printAhead(input: PrintInput, inOrder: InOrder): Promise<void> {
  const press = { ...makePress(input), inOrder };
  for (const rig of inOrder(input.rigs))
    for (const card of cardsOf(rig, input, press))
      if (fits(card.card)) for await (const _ of cardPiece(card, input, press)());
  for (const piece of inOrder(printPieces(input, press))) for await (const _ of piece());
}

async function* paintedFiles(input: PrintInput, press: Press): AsyncIterable<PaintedFile> {
  for (const piece of printPieces(input, press)) yield* piece();
}

const cardsOf = (rig: PrintInput["rigs"][number], { markings }: PrintInput, press: Press) =>
  keptCards(rig, markings.get(rig.solved.rig.float.id), press);

const cardPiece =
  (card: LaidOutCard, { dataOf, guide, shownSides }: PrintInput, press: Press): PrintPiece =>
  () => {
    // Where a page is sent on to others, the front is shown beside its public address.
    const shown = shownSides ?? (guide.siteAddress === undefined ? [] : ["front"]);
    return cardFiles(card, () => dataOf(card.solved), shown, press);
  };

/**
 * What is printed in its order, each piece by itself: none needs that another was made.
 *
 * @throws DoesNotFitError
 */
function printPieces(input: PrintInput, press: Press): readonly PrintPiece[] {
  const laid = input.rigs.flatMap((rig) => cardsOf(rig, input, press));
  const fitting = laid.filter(({ card }) => fits(card));
  const handouts = layOutHandouts({ ...input.handouts, cards: pocketCards(fitting) }, press);
  const single = layOutTrueSize(
    input.rigs.map(({ solved }) => solved),
    press,
  );
  const trueSize = [...single, ...(input.swims.length > 0 ? [soundingsFile(press)] : [])];
  const plans = layOutPlans({ ...input.handouts, plans: input.plans }, press);
  const water = layOutByTheWater(input, plans, input.handouts.drawings, press);
  const problems = [
    ...laid.flatMap((one) => cardProblems(one, one.entry.placeOf([one.shorten ?? ""]))),
    ...handoutProblems(handouts),
    ...planProblems(plans),
    ...water.problems,
    ...trueSizeProblems(trueSize),
  ].map(placedIn(input));
  if (problems.length > 0 && !input.without) throw new DoesNotFitError(problems, press.kit.words);
  input.without?.(problems);
  input.lacking?.(fitting.flatMap(cardLacks));
  const whole = trueSize.filter((one) => trueSizeProblems([one]).length === 0);
  return [
    ...fitting.map((card) => cardPiece(card, input, press)),
    ...cardFormatsOn[input.guide.paper].map((format) => {
      const cards = fitting.filter((one) => one.format === format);
      return () => sheetFiles(chosen(cards, input.sheets), format, press);
    }),
    ...handoutPieces(fittingHandouts(handouts), press),
    () => planFiles(plans, press),
    () => water.files(),
    () => trueSizeFiles(whole, press),
  ];
}

function cardLacks({ format, entry, card }: LaidOutCard): CardLacks[] {
  return card.lacks.length > 0
    ? [{ of: entry.id, format: format.name, parts: card.lacks, place: entry.placeOf([]) }]
    : [];
}

/** The smallest cards, which handouts have room for. */
function pocketCards(laid: readonly LaidOutCard[]): RigCards {
  const pocket = laid.filter(({ format }) => format.listedAs === "card");
  return new Map(pocket.map(({ solved, card, from }) => [solved.rig.id, { ...card, from }]));
}

/** Finds the rig's file for what stands on a card: at the key of that name, if there is one, or at the top. */
function placedIn({ rigs }: PrintInput): (problem: DoesNotFit) => DoesNotFit {
  const entries = new Map(rigs.map(({ entry }) => [entry.id, entry]));
  return (problem) => {
    const place = problem.place ?? entries.get(problem.of)?.placeOf([problem.field]);
    return place ? { ...problem, place } : problem;
  };
}

/** A sheet's cards, and those of the sheets around it; each takes some 50 kB. */
const partsAtHand = 400;
/** The pictures of a long text; each takes some 20 kB. */
const picturesAtHand = 40;
/** Cards of rigs, and texts, whose files are made one after the other. */
const marksAtHand = 30;

function makePress({ guide: shown, kit, date, images, font, kept }: PrintInput): Press {
  const guide = guideOffPages(shown);
  const fonts = hyphenating(nodeFonts(font?.bytes), guide.language);
  const logo = guide.logo === undefined ? undefined : known(images, guide.logo).print;
  const logoFrom = logo && digestOf(logo.id, Buffer.from(logo.jpeg).toString("base64"));
  const fontFrom = font && digestOf(Buffer.from(font.bytes).toString("base64"));
  const { keep = makeAnew } = kept ?? {};
  const { units, language } = guide;
  const textsFrom = digestOf(units, language, linesToFindUs(guide), logoFrom, fontFrom, kept?.words);
  return {
    keep,
    parts: inMemory(partsAtHand, keep),
    pictures: inMemory(picturesAtHand, keep),
    // What is not kept elsewhere would be laid out again.
    marks: inMemory(kept ? marksAtHand : Number.POSITIVE_INFINITY, keep),
    textsFrom,
    from: digestOf(textsFrom, guide, date),
    guide,
    inOrder: asTheyStand,
    fonts,
    ...(logo && { logo }),
    kit: { ...kit, measure: fonts.measure },
    facts: (title) => ({ title, author: guide.publisher, language: guide.language, date }),
  };
}
