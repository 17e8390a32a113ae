import { known } from "../core/lists.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { hyphenating } from "../layout/hyphens.ts";
import { nodeFonts } from "../layout/node-fonts.ts";
import { asPaper } from "../layout/paper.ts";
import { drawingToPng } from "../layout/png.ts";
import { printPaths, sitePaths } from "../model/addresses.ts";
import { digestOf } from "../model/digest.ts";
import { inMemory, type Keep, makeAnew } from "../model/kept.ts";
import type { Guide, LessonPlan, RigEntry } from "../model/library.ts";
import type { OwnFont } from "../model/own-font.ts";
import type { ReadyImage } from "../model/own-image.ts";
import type { SolvedRig } from "../model/solved.ts";
import { keyOf, type WordKeyIn } from "../words/words.ts";
import { type ByTheWater, layOutByTheWater } from "./by-the-water.ts";
import { type CardFormat, cardFormatsOn } from "./cards/card-formats.ts";
import { cardSides } from "./cards/card-sides.ts";
import { keptCards, type LaidOutCard } from "./cards/kept-cards.ts";
import { fits } from "./cards/what-to-shorten.ts";
import { type CardLacks, type DoesNotFit, DoesNotFitError } from "./does-not-fit.ts";
import {
  fittingHandouts,
  type HandoutInput,
  handoutFiles,
  handoutProblems,
  layOutHandouts,
} from "./handout/handout-files.ts";
import type { RigCards } from "./handout/rig-cards.ts";
import { painted } from "./painted.ts";
import { layOutPlans, planFiles, planProblems } from "./plans/plan-files.ts";
import type { Press } from "./press.ts";
import type { PaintedFile, PrintedFile } from "./printed-file.ts";
import { paperSizes } from "./sheets/paper-sizes.ts";
import { sheets, turnings } from "./sheets/sheet.ts";
import { sheetFigures, sheetNote } from "./sheets/sheet-note.ts";
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

type CardSide = "front" | "back";

/** What goes on the sheets of cards. */
export interface SheetChoice {
  /** How many of each card; one where nothing is said. */
  readonly copies?: number;
  /** Ids of the rigs; all where nothing is said. */
  readonly rigs?: readonly string[];
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
    const { svg, widthMm, heightMm } = shows;
    yield { path, content: svg };
    yield { ...file, printable: { ...printable, smallPage: { path, widthMm, heightMm } } };
  }
}

async function* paintedFiles(input: PrintInput, press: Press): AsyncIterable<PaintedFile> {
  const laid = input.rigs.flatMap((one) =>
    keptCards(one, input.markings.get(one.solved.rig.float.id), press),
  );
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
    ...laid.flatMap(doesNotFit),
    ...handoutProblems(handouts),
    ...planProblems(plans),
    ...water.problems,
    ...trueSizeProblems(trueSize),
  ].map(placedIn(input));
  if (problems.length > 0 && !input.without) throw new DoesNotFitError(problems, press.kit.words);
  input.without?.(problems);
  input.lacking?.(fitting.flatMap(cardLacks));
  // Where a page is sent on to others, the front is shown beside its public address.
  const { shownSides = input.guide.siteAddress === undefined ? [] : ["front"] } = input;
  for (const one of fitting) yield* cardFiles(one, input.dataOf(one.solved), shownSides, press);
  for (const format of cardFormatsOn[input.guide.paper]) {
    const cards = fitting.filter((one) => one.format === format);
    yield* sheetFiles(chosen(cards, input.sheets), format, press);
  }
  yield* handoutFiles(fittingHandouts(handouts), press);
  yield* planFiles(plans, press);
  yield* water.files();
  yield* trueSizeFiles(
    trueSize.filter((one) => trueSizeProblems([one]).length === 0),
    press,
  );
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

function makePress({ guide, kit, date, images, font, kept }: PrintInput): Press {
  const fonts = hyphenating(nodeFonts(font?.bytes), guide.language);
  const logo = guide.logo === undefined ? undefined : known(images, guide.logo).print;
  const logoFrom = logo && digestOf(logo.id, Buffer.from(logo.jpeg).toString("base64"));
  const fontFrom = font && digestOf(Buffer.from(font.bytes).toString("base64"));
  const { keep = makeAnew } = kept ?? {};
  return {
    keep,
    parts: inMemory(partsAtHand, keep),
    from: digestOf(guide, date, logoFrom, fontFrom, kept?.words),
    guide,
    fonts,
    ...(logo && { logo }),
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
  { format, solved, card, from }: LaidOutCard,
  data: string,
  shown: readonly CardSide[],
  press: Press,
): AsyncIterable<PaintedFile> {
  const { id: rigId, title: rig } = solved.rig;
  const { keep, kit, fonts } = press;
  const { words } = kit;
  const about = words("card.attached", { rig });
  const attached = [{ name: `${rigId}.json`, mediaType: "application/json", text: data, about }];
  const facts = { ...press.facts(words("card.document", { rig })), attached };
  yield {
    path: printPaths.card(rigId, format.name),
    ...keep("card", digestOf(from, data), () =>
      painted(cardSides(card.alone), asPaper(card.front), facts, press),
    ),
    printable: {
      kind: format.listedAs,
      rigId,
      title: words(`printable.${format.listedAs}`, { rig, format: format.name }),
    },
  };
  if (format.listedAs !== "card") return;
  for (const side of shown) {
    const content = keep(`card as PNG, ${side}`, from, () => drawingToPng(card[side], previewDpi, fonts));
    yield { path: sitePaths.preview(rigId, side), content };
  }
}

/** The rigs asked for, each as often as asked for, copies side by side. */
function chosen(cards: readonly LaidOutCard[], { copies = 1, rigs }: SheetChoice = {}): LaidOutCard[] {
  return cards
    .filter(({ solved: { rig } }) => rigs === undefined || rigs.includes(rig.id))
    .flatMap((card) => Array.from({ length: copies }, () => card));
}

async function* sheetFiles(
  cards: readonly LaidOutCard[],
  format: CardFormat,
  press: Press,
): AsyncIterable<PaintedFile> {
  const { guide, kit, fonts, facts, keep, from } = press;
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
    const duplex = turning === "fold" ? "one side" : turning;
    const title = words("card.sheet.document", { guide: guide.title });
    const made = digestOf(
      from,
      format.name,
      turning,
      cards.map(({ from: of }) => of),
    );
    const sheet = keep("sheets", made, () => {
      const faces = cards.map(({ card }) => card.onSheet);
      const sides = sheets(faces, paper, turning, format.cutting, notes);
      if (sides.length === 0) return undefined;
      // The first of halved sheets may have nothing on it but what is to be measured.
      const fullest = sides.reduce((best, side) => (side.parts.length > best.parts.length ? side : best));
      return painted(sides, fullest, { ...facts(title), duplex }, press);
    });
    if (!sheet) continue;
    yield {
      path: printPaths.sheet(format.name, turning),
      ...sheet,
      printable: {
        kind: "sheet",
        title: words(`printable.sheet.${format.listedAs}.${keyOf(turning)}`, {
          format: format.name,
        }),
      },
    };
  }
}
