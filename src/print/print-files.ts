import { known } from "../core/lists.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { nodeFonts } from "../layout/node-fonts.ts";
import { asPaper } from "../layout/paper.ts";
import { drawingToPng } from "../layout/png.ts";
import { printPaths, sitePaths } from "../model/addresses.ts";
import { type CardPart, cardNotes } from "../model/card-content.ts";
import type { Guide, RigEntry } from "../model/library.ts";
import type { ReadyImage } from "../model/own-image.ts";
import type { SolvedRig } from "../model/solved.ts";
import { keyOf, type WordKeyIn } from "../words/words.ts";
import { type CardFormat, cardFormatsOn } from "./cards/card-formats.ts";
import { cardSides } from "./cards/card-sides.ts";
import { type FinishedCard, layOutCard } from "./cards/lay-out-card.ts";
import { fits, type LayOutAs, whatToShorten } from "./cards/what-to-shorten.ts";
import { type CardLacks, type DoesNotFit, DoesNotFitError, type Shortened } from "./does-not-fit.ts";
import {
  fittingHandouts,
  type HandoutInput,
  handoutFiles,
  handoutProblems,
  layOutHandouts,
} from "./handout/handout-files.ts";
import { paintPdf } from "./pdf/pdf.ts";
import type { Press } from "./press.ts";
import type { PaintedFile, PrintedFile } from "./printed-file.ts";
import { paperSizes } from "./sheets/paper-sizes.ts";
import { type Card, sheets, turnings } from "./sheets/sheet.ts";
import { sheetFigures, sheetNote } from "./sheets/sheet-note.ts";
import { smallPageSvg } from "./small-page.ts";
import { layOutTrueSize, trueSizeFiles, trueSizeProblems } from "./true-size/true-size-files.ts";

export interface PrintInput {
  readonly guide: Guide;
  readonly rigs: readonly { readonly entry: RigEntry; readonly solved: SolvedRig }[];
  /** What is written on floats, by their ids. */
  readonly markings: ReadonlyMap<string, string>;
  readonly handouts: Omit<HandoutInput, "cards">;
  /** Photos and drawings of the guide's own, by name. */
  readonly images: ReadonlyMap<string, ReadyImage>;
  readonly kit: DrawingKit;
  /** Everything computed for a rig, as JSON, which its cards carry. */
  readonly dataOf: (solved: SolvedRig) => string;
  /** Day the files are dated, `2026-05-01`. */
  readonly date: string;
  readonly sheets?: SheetChoice;
  /** Sides of pocket cards that become pictures, too; those that a page leads to, where nothing is said. */
  readonly shownSides?: readonly CardSide[];
  /** Told of what does not fit, which is then left out; where nobody is told, nothing is made. */
  readonly without?: (problems: readonly DoesNotFit[]) => void;
  /** Told of cards that go without something that stands on every card. */
  readonly lacking?: (lacks: readonly CardLacks[]) => void;
}

type CardSide = "front" | "back";

/** What goes on the sheets of cards. */
export interface SheetChoice {
  /** How many of each card; one where nothing is said. */
  readonly copies?: number;
  /** Ids of the rigs; all where nothing is said. */
  readonly rigs?: readonly string[];
}

interface LaidOutCard {
  readonly format: CardFormat;
  readonly entry: RigEntry;
  readonly solved: SolvedRig;
  readonly card: FinishedCard;
  /** What would let it fit, where it does not. */
  readonly shorten?: Shortened;
}

/**
 * Everything that is printed: cards of every format for each rig, their pictures, sheets of them, handouts, strips and
 * gauge, each with its first page as a small picture.
 *
 * @throws DoesNotFitError before the first file, with everything that does not fit
 */
export async function* printFiles(input: PrintInput): AsyncIterable<PrintedFile> {
  const press = makePress(input);
  for await (const { shows, printable, ...file } of paintedFiles(input, press)) {
    if (!shows || !printable) {
      yield { ...file, ...(printable && { printable }) };
      continue;
    }
    const path = printPaths.smallPage(file.path);
    const { widthMm, heightMm } = shows;
    yield { path, content: smallPageSvg(shows) };
    yield { ...file, printable: { ...printable, smallPage: { path, widthMm, heightMm } } };
  }
}

async function* paintedFiles(input: PrintInput, press: Press): AsyncIterable<PaintedFile> {
  const laid = layOutCards(input, press);
  const fitting = laid.filter(({ card }) => fits(card));
  const handouts = layOutHandouts({ ...input.handouts, cards: pocketCards(fitting) }, press);
  const trueSize = layOutTrueSize(
    input.rigs.map(({ solved }) => solved),
    press,
  );
  const problems = [
    ...laid.flatMap(doesNotFit),
    ...handoutProblems(handouts),
    ...trueSizeProblems(trueSize),
  ].map(placedIn(input));
  if (problems.length > 0 && !input.without) throw new DoesNotFitError(problems, press.kit.words);
  input.without?.(problems);
  input.lacking?.(fitting.flatMap(cardLacks));
  // Where a page is sent on to others, the front is shown beside its public address.
  const { shownSides = input.guide.siteAddress === undefined ? [] : ["front"] } = input;
  for (const one of fitting) yield* cardFiles(one, input.dataOf(one.solved), shownSides, press);
  for (const format of cardFormatsOn[input.guide.paper]) {
    const cards = fitting.filter((one) => one.format === format).map(({ card }) => card.onSheet);
    yield* sheetFiles(chosen(cards, input.sheets), format, press);
  }
  yield* handoutFiles(fittingHandouts(handouts), press);
  yield* trueSizeFiles(
    trueSize.filter((one) => trueSizeProblems([one]).length === 0),
    press,
  );
}

/** The cards of every rig in every format; a larger one has all that the next smaller one has. */
function layOutCards({ rigs, markings }: PrintInput, press: Press): LaidOutCard[] {
  return rigs.flatMap(({ entry, solved }) => {
    let least: readonly CardPart[] = [];
    const notes = cardNotes(entry, markings.get(solved.rig.float.id));
    return cardFormatsOn[press.guide.paper].map((format): LaidOutCard => {
      const layOut: LayOutAs = (told, as) =>
        layOutCard(told, format, press.guide, press.kit, press.fonts, { notes: as, least });
      const card = layOut(solved, notes);
      const laid = { format, entry, solved, card };
      if (!fits(card)) return { ...laid, shorten: whatToShorten(solved, notes, layOut) };
      least = card.taken;
      return laid;
    });
  });
}

function cardLacks({ format, entry, card }: LaidOutCard): CardLacks[] {
  return card.lacks.length > 0
    ? [{ of: entry.id, format: format.name, parts: card.lacks, place: entry.placeOf([]) }]
    : [];
}

/** The smallest cards, which handouts have room for. */
function pocketCards(laid: readonly LaidOutCard[]): ReadonlyMap<string, FinishedCard> {
  const pocket = laid.filter(({ format }) => format.listedAs === "card");
  return new Map(pocket.map(({ solved, card }) => [solved.rig.id, card]));
}

/** Finds the rig's file for what stands on a card: at the key of that name, if there is one, or at the top. */
function placedIn({ rigs }: PrintInput): (problem: DoesNotFit) => DoesNotFit {
  const entries = new Map(rigs.map(({ entry }) => [entry.id, entry]));
  return (problem) => {
    const place = problem.place ?? entries.get(problem.of)?.placeOf([problem.field]);
    return place ? { ...problem, place } : problem;
  };
}

function makePress({ guide, kit, date, images }: PrintInput): Press {
  const fonts = nodeFonts();
  return {
    guide,
    fonts,
    ...(guide.logo !== undefined && { logo: known(images, guide.logo).print }),
    kit: { ...kit, measure: fonts.measure },
    facts: (title) => ({ title, author: guide.publisher, language: guide.language, date }),
  };
}

function doesNotFit({ format, entry, card, shorten }: LaidOutCard): DoesNotFit[] {
  const place = entry.placeOf([shorten ?? ""]);
  return (["front", "back"] as const).flatMap((side) =>
    card[side].overflows.map((overflow) => ({
      ...overflow,
      of: entry.id,
      format: format.name,
      side,
      place,
      ...(shorten && { shorten }),
    })),
  );
}

const previewDpi = 300;

async function* cardFiles(
  { format, solved, card }: LaidOutCard,
  data: string,
  shown: readonly CardSide[],
  press: Press,
): AsyncIterable<PaintedFile> {
  const { id: rigId, title: rig } = solved.rig;
  const { words } = press.kit;
  const about = words("card.attached", { rig });
  const attached = [{ name: `${rigId}.json`, mediaType: "application/json", text: data, about }];
  const facts = { ...press.facts(words("card.document", { rig })), attached };
  yield {
    path: printPaths.card(rigId, format.name),
    content: paintPdf(cardSides(card.alone), facts, press.fonts),
    printable: {
      kind: format.listedAs,
      rigId,
      title: words(`printable.${format.listedAs}`, { rig, format: format.name }),
    },
    shows: asPaper(card.front),
  };
  if (format.listedAs !== "card") return;
  for (const side of shown) {
    yield {
      path: sitePaths.preview(rigId, side),
      content: drawingToPng(card[side], previewDpi, press.fonts),
    };
  }
}

/** The rigs asked for, each as often as asked for, copies side by side. */
function chosen(cards: readonly Card[], { copies = 1, rigs }: SheetChoice = {}): Card[] {
  return cards
    .filter(({ id }) => rigs === undefined || rigs.includes(id))
    .flatMap((card) => Array.from({ length: copies }, () => card));
}

async function* sheetFiles(
  cards: readonly Card[],
  format: CardFormat,
  { guide, kit, fonts, facts }: Press,
): AsyncIterable<PaintedFile> {
  const { words } = kit;
  const paper = paperSizes[guide.paper];
  const note = (...keys: WordKeyIn<"card.sheet">[]) =>
    sheetNote(
      keys.map((key) => words(`card.sheet.${key}`, sheetFigures(kit.figures))),
      paper,
      fonts,
      kit.figures,
    );
  for (const turning of turnings) {
    const first = format.cutting === "halving" ? (["first"] as const) : [];
    const light = turning === "fold" ? [] : (["light"] as const);
    const notes = {
      front: note(...first, "scale", keyOf(turning), ...light),
      back: note("scale", "back"),
    };
    const sides = sheets(cards, paper, turning, format.cutting, notes);
    if (sides.length === 0) continue;
    // The first of halved sheets may have nothing on it but what is to be measured.
    const fullest = sides.reduce((best, side) => (side.parts.length > best.parts.length ? side : best));
    const duplex = turning === "fold" ? "one side" : turning;
    const title = words("card.sheet.document", { guide: guide.title });
    yield {
      path: printPaths.sheet(format.name, turning),
      content: paintPdf(sides, { ...facts(title), duplex }, fonts),
      printable: {
        kind: "sheet",
        title: words(`printable.sheet.${format.listedAs}.${keyOf(turning)}`, {
          format: format.name,
        }),
      },
      shows: fullest,
    };
  }
}
