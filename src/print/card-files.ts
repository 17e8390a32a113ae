import { first } from "../core/lists.ts";
import { asPaper } from "../layout/paper.ts";
import { drawingToPng } from "../layout/png.ts";
import { printPaths, sitePaths } from "../model/addresses.ts";
import { digestOf } from "../model/digest.ts";
import { once } from "../model/kept.ts";
import { keyOf, type WordKeyIn } from "../words/words.ts";
import type { CardFormat } from "./cards/card-formats.ts";
import { cardSides } from "./cards/card-sides.ts";
import type { LaidOutCard } from "./cards/kept-cards.ts";
import { documentFile, type Painted, painted, paintedOnce, toldOfDocument } from "./painted.ts";
import type { Press } from "./press.ts";
import type { PaintedFile } from "./printed-file.ts";
import { paperSizes } from "./sheets/paper-sizes.ts";
import { sheets, turnings } from "./sheets/sheet.ts";
import { sheetFigures, sheetNote } from "./sheets/sheet-note.ts";

export type CardSide = "front" | "back";

/** What goes on the sheets of cards. */
export interface SheetChoice {
  /** How many of each card; one where nothing is said. */
  readonly copies?: number;
  /** Ids of the rigs; all where nothing is said. */
  readonly rigs?: readonly string[];
}

const previewDpi = 300;

/**
 * A card by itself, and its sides as pictures.
 *
 * @param data all that was computed for its rig, which it carries; it follows from the rig
 * @param shown sides that become pictures, where the card is of the smallest format
 */
export async function* cardFiles(
  { format, solved, card, from }: LaidOutCard,
  data: () => string,
  shown: readonly CardSide[],
  press: Press,
): AsyncIterable<PaintedFile> {
  const { id: rigId, title: rig } = solved.rig;
  const { keep, kit, fonts } = press;
  const { words } = kit;
  const about = words("card.attached", { rig });
  const paint = () => {
    const attached = [{ name: `${rigId}.json`, mediaType: "application/json", text: data(), about }];
    const facts = { ...press.facts(words("card.document", { rig })), attached };
    return painted(cardSides(card.alone), asPaper(card.front), facts, press);
  };
  const title = words(`printable.${format.listedAs}`, { rig, format: format.name });
  const path = printPaths.card(rigId, format.name);
  yield paintedOnce({ path, printable: { kind: format.listedAs, rigId, title } }, "card", from, paint, press);
  if (format.listedAs !== "card") return;
  for (const side of shown) {
    const content = keep(`card as PNG, ${side}`, from, () => drawingToPng(card[side], previewDpi, fonts));
    yield { path: sitePaths.preview(rigId, side), content };
  }
}

/** The rigs asked for, each as often as asked for, copies side by side. */
export function chosen(cards: readonly LaidOutCard[], { copies = 1, rigs }: SheetChoice = {}): LaidOutCard[] {
  return cards
    .filter(({ solved: { rig } }) => rigs === undefined || rigs.includes(rig.id))
    .flatMap((card) => Array.from({ length: copies }, () => card));
}

/** Cards in one file of sheets: nobody prints more at once, and where a card changes its file is put together anew. */
const cardsInFile = 100;

/** The sheets of the cards of a format, in files of so many cards, one of each for each way of turning the paper. */
export async function* sheetFiles(
  cards: readonly LaidOutCard[],
  format: CardFormat,
  press: Press,
): AsyncIterable<PaintedFile> {
  const parts = Math.ceil(cards.length / cardsInFile);
  for (let part = 1; part <= parts; part++) {
    const some = cards.slice((part - 1) * cardsInFile, part * cardsInFile);
    for (const turning of turnings) {
      const file = sheetFile({ cards: some, format, turning, part, parts }, press);
      if (file) yield file;
    }
  }
}

interface Sheets {
  readonly cards: readonly LaidOutCard[];
  readonly format: CardFormat;
  readonly turning: (typeof turnings)[number];
  /** Which of the format's files it is, from 1. */
  readonly part: number;
  readonly parts: number;
}

function sheetFile(asked: Sheets, press: Press): PaintedFile | undefined {
  const { cards, format, turning, part, parts } = asked;
  const { kit, keep, from } = press;
  const made = digestOf(
    from,
    format.name,
    turning,
    cards.map(({ from: of }) => of),
  );
  const document = once(() => keep("sheets", made, () => paintSheets(asked, press)));
  const [told] = keep("sheets, told", made, () => document().map(toldOfDocument));
  if (!told) return undefined;
  const all = kit.words(`printable.sheet.${format.listedAs}.${keyOf(turning)}`, { format: format.name });
  const title = parts === 1 ? all : kit.words("printable.sheet-part", { sheet: all, part, parts });
  const about = {
    path: printPaths.sheet(format.name, turning, part),
    printable: { kind: "sheet", title },
  } as const;
  return documentFile(about, told, () => first(document()));
}

/** Nothing where the paper is too small for a card. */
function paintSheets({ cards, format, turning }: Sheets, press: Press): readonly Painted[] {
  const { guide, kit, fonts, facts, keep } = press;
  const { words } = kit;
  const paper = paperSizes[guide.paper];
  const note = (...keys: WordKeyIn<"card.sheet">[]) =>
    sheetNote(
      keys.map((key) => words(`card.sheet.${key}`, sheetFigures(kit.figures))),
      paper,
      fonts,
      kit.figures,
    );
  const before = format.cutting === "halving" ? (["first"] as const) : [];
  // A sheet to fold has no side for the backs.
  const rest = turning === "fold" ? (["signs"] as const) : (["light"] as const);
  const notes = {
    front: note(...before, "scale", keyOf(turning), ...rest),
    back: note("scale", "back", "signs"),
  };
  const faces = cards.map(({ card }) => card.onSheet);
  const sides = sheets(faces, paper, turning, format.cutting, notes);
  if (sides.length === 0) return [];
  // The first of halved sheets may have nothing on it but what is to be measured.
  const fullest = sides.reduce((best, side) => (side.parts.length > best.parts.length ? side : best));
  const title = words("card.sheet.document", { guide: guide.title });
  const duplex = turning === "fold" ? "one side" : turning;
  return [painted(sides, fullest, { ...facts(title), duplex, sides: keep }, press)];
}
