import { asPaper } from "../layout/paper.ts";
import { drawingToPng } from "../layout/png.ts";
import { printPaths, sitePaths } from "../model/addresses.ts";
import { digestOf } from "../model/digest.ts";
import { keyOf, type WordKeyIn } from "../words/words.ts";
import type { CardFormat } from "./cards/card-formats.ts";
import { cardSides } from "./cards/card-sides.ts";
import type { LaidOutCard } from "./cards/kept-cards.ts";
import { painted } from "./painted.ts";
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
 * @param data all that was computed for its rig, which it carries
 * @param shown sides that become pictures, where the card is of the smallest format
 */
export async function* cardFiles(
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
export function chosen(cards: readonly LaidOutCard[], { copies = 1, rigs }: SheetChoice = {}): LaidOutCard[] {
  return cards
    .filter(({ solved: { rig } }) => rigs === undefined || rigs.includes(rig.id))
    .flatMap((card) => Array.from({ length: copies }, () => card));
}

/** The sheets of the cards of a format, one for each way of turning the paper. */
export async function* sheetFiles(
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
