import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import { first, known, paired } from "../../core/lists.ts";
import type { Drawings } from "../../drawing/pictures.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { type HandoutSize, handoutSizes, printPaths, sitePaths } from "../../model/addresses.ts";
import { digestOf } from "../../model/digest.ts";
import { madeInOrder } from "../../model/in-order.ts";
import { once } from "../../model/kept.ts";
import type { Lesson, Prose } from "../../model/library.ts";
import type { DoesNotFit } from "../does-not-fit.ts";
import { documentFile, type Painted, painted, paintedOnce, toldOfDocument } from "../painted.ts";
import type { Press } from "../press.ts";
import type { PaintedFile, PrintPiece } from "../printed-file.ts";
import { imposeBooklet, sectionsOf } from "./booklet.ts";
import { bookletPages } from "./booklet-pages.ts";
import { handoutFormats } from "./handout-formats.ts";
import { linksTo, pageOfLink, pagesLedTo, withPageNumbers } from "./links.ts";
import { handoutPage, laterPage, numbered } from "./page.ts";
import {
  cardSheets,
  cardsOfBooklet,
  type KeptCard,
  type RigCards,
  rigsNeeded,
  sheetOf,
} from "./rig-cards.ts";
import { signNotes } from "./sign-notes.ts";
import {
  type HandoutPages,
  type HandoutText,
  named,
  textPages,
  textProblems,
  withPagesOf,
} from "./text-handout.ts";
import { ownersLines } from "./to-fill-in.ts";

/** What handouts are made from besides the press. */
export interface HandoutInput {
  readonly lessons: readonly Lesson[];
  /** Single pages such as safety; they come after the lessons. */
  readonly pages: readonly Prose[];
  readonly drawings: Drawings;
  /** A text with its live figures put in. */
  readonly liveBody: (prose: Prose) => Prose["body"];
  readonly cards: RigCards;
}

/** The texts laid out on half sheets and on whole ones, and on half sheets for the booklet, with its page numbers. */
interface LaidHandouts {
  readonly half: readonly HandoutPages[];
  readonly whole: readonly HandoutPages[];
  readonly booklet: readonly HandoutPages[];
  readonly cards: RigCards;
}

export function layOutHandouts(input: HandoutInput, press: Press): LaidHandouts {
  const { half, whole, wide } = handoutFormats[press.guide.paper];
  const { cards, drawings } = input;
  const texts = handoutTexts(input);
  const rigPages = [...cards.keys()].map(sitePaths.rig);
  const within = new Set([...texts.map(({ page }) => page), ...rigPages]);
  const besides = [...rigPages, sitePaths.safety].filter((page) => within.has(page));
  const all = madeInOrder(press.inOrder, texts, (plain) => {
    const text = withPagesOf(plain, new Set(besides.filter((page) => page !== plain.page)), press);
    const inBooklet = withPagesOf(plain, within, press);
    const onHalf = textPages(text, half, drawings, press);
    const onWhole = textPages(text, whole, drawings, press);
    return {
      half: onHalf,
      whole: onWhole.overflows.length === 0 ? onWhole : textPages(text, wide, drawings, press),
      booklet: inBooklet === plain ? onHalf : textPages(inBooklet, half, drawings, press),
    };
  });
  return {
    half: all.map((one) => one.half),
    whole: all.map((one) => one.whole),
    booklet: all.map((one) => one.booklet),
    cards,
  };
}

function handoutTexts({ lessons, pages, liveBody }: HandoutInput): readonly HandoutText[] {
  return [
    ...[...lessons]
      .sort((a, b) => a.order - b.order)
      .map((text) => ({
        ...named(text, liveBody(text)),
        page: sitePaths.lesson(text.id),
        path: (size: HandoutSize) => printPaths.handout(text.id, size),
      })),
    ...pages.map((text) => ({
      ...named(text, liveBody(text)),
      page: sitePaths.page(text.id),
      path: (size: HandoutSize) => printPaths.pageHandout(text.id, size),
    })),
  ];
}

/** What does not fit, once for each format: the booklet's pages are as wide as half sheets. */
export function handoutProblems({ half, whole, booklet }: LaidHandouts): DoesNotFit[] {
  const problems = [...half, ...whole, ...booklet].flatMap((text) => textProblems(text, "handout"));
  return [...new Map(problems.map((problem) => [JSON.stringify(problem), problem])).values()];
}

/** The texts that fit wherever they are printed. */
export function fittingHandouts(laid: LaidHandouts): LaidHandouts {
  const unfit = new Set(handoutProblems(laid).map(({ of }) => of));
  const fitting = (texts: readonly HandoutPages[]) => texts.filter(({ text }) => !unfit.has(text.id));
  return {
    ...laid,
    half: fitting(laid.half),
    whole: fitting(laid.whole),
    booklet: fitting(laid.booklet),
  };
}

/** Each text on half sheets, on whole ones, and with its half sheets on whole ones to be folded; and the whole guide as a booklet: page after page, and laid out to fold. */
export function handoutPieces(laid: LaidHandouts, press: Press): readonly PrintPiece[] {
  const ofTexts = paired(laid.half, laid.whole).map(
    ([half, whole]): PrintPiece =>
      () =>
        filesOfText(half, whole, laid, press),
  );
  return laid.booklet.length > 0 ? [...ofTexts, () => bookletFiles(laid, press)] : ofTexts;
}

function* filesOfText(
  half: HandoutPages,
  whole: HandoutPages,
  laid: LaidHandouts,
  press: Press,
): Iterable<PaintedFile> {
  const onHalf = handoutOf(half, laid.half, laid.cards);
  yield handoutFile(onHalf, press);
  yield handoutFile(handoutOf(whole, laid.whole, laid.cards), press);
  if (onHalf.texts.length > 1 || half.length > 1) yield foldedFile(onHalf, whole.format, press);
}

/** A text with what it leads to. */
interface Handout {
  /** The text itself, and the safety page where it leads there. */
  readonly texts: readonly [HandoutPages, ...HandoutPages[]];
  /** Of the rigs that they lead to. */
  readonly cards: readonly KeptCard[];
}

function handoutOf(text: HandoutPages, all: readonly HandoutPages[], cards: RigCards): Handout {
  const ledTo = new Set(text.links.map(pageOfLink));
  const added = all.filter(
    (other) => other !== text && other.page === sitePaths.safety && ledTo.has(other.page),
  );
  const needed = [text, ...added].flatMap((one) => rigsNeeded(one, cards));
  return { texts: [text, ...added], cards: [...new Set(needed)].map((id) => known(cards, id)) };
}

/** Stands for all that a handout is made from. */
const sourceOf = ({ texts, cards }: Handout, use: string) =>
  digestOf(
    use,
    [...texts, ...cards].map(({ from }) => from),
  );

/** A text, and after it what it leads to. */
function handoutFile(handout: Handout, press: Press): PaintedFile {
  const [{ text, path, format }] = handout.texts;
  const size = handoutSizes[format.name];
  const paint = () => {
    const { sides, cards, pages } = handoutSides(handout, format, press);
    const all = [...sides, ...cards];
    const names = handout.texts.flatMap((one) => one.links);
    const links = linksTo(names, { ...linkContext(press), pages });
    return painted(all, first(all), { ...press.facts(text.title), links, sides: press.keep }, press);
  };
  const title = press.kit.words(`printable.lesson.${size}`, { lesson: text.title });
  const about = { path: path(size), printable: { kind: "handout", title } } as const;
  return paintedOnce(about, "handout as PDF", sourceOf(handout, "flat"), paint, press);
}

/**
 * The half sheets of a handout two to a side of a whole one, to be folded, and after them its cards on sheets of their own
 * whose backs are blank.
 */
function foldedFile(handout: Handout, sheet: HandoutFormat, press: Press): PaintedFile {
  const [{ text, path, format }] = handout.texts;
  const paint = () => {
    const { sides, cards } = handoutSides(handout, sheet, press);
    const imposed = imposeBooklet(sides);
    const withBacks = cards.flatMap((side, i) => [
      { ...side, parts: side.parts.map((part) => ({ ...part, reading: sides.length + i })) },
      { ...side, parts: [] },
    ]);
    const facts = { ...press.facts(text.title), duplex: "short edge", sides: press.keep } as const;
    return painted([...imposed, ...withBacks], first(imposed), facts, press);
  };
  const title = press.kit.words("printable.lesson-to-fold", {
    lesson: text.title,
    page: format.name,
    sheet: sheet.name,
  });
  const about = {
    path: path(`${handoutSizes[format.name]}-to-fold`),
    printable: { kind: "handout", title },
  } as const;
  return paintedOnce(about, "handout as PDF", sourceOf(handout, "to fold"), paint, press);
}

/** The pages of a handout, and the sheets of its cards. */
interface HandoutSides {
  readonly sides: readonly PaperSide[];
  readonly cards: readonly PaperSide[];
  /** Numbers, from 0, of what links within it lead to, by the paths of their pages on the site. */
  readonly pages: ReadonlyMap<string, number>;
}

/** The first page has lines for its owner in place of the guide's name, which then stands at its foot. */
function handoutSides({ texts, cards }: Handout, cardPaper: HandoutFormat, press: Press): HandoutSides {
  const { guide, kit } = press;
  const { words } = kit;
  const leaves = texts.flatMap((text) =>
    Array.from({ length: Math.ceil(text.length / text.format.columns) }, (_, leaf) => ({ text, leaf })),
  );
  const sheets = cardSheets(cards, cardPaper, "to cut out", press);
  const pages = new Map([
    ...texts.slice(1).map((text) => [text.page, leaves.findIndex((leaf) => leaf.text === text)] as const),
    ...cards.map((card) => [sitePaths.rig(card.alone.id), leaves.length + sheetOf(card, sheets)] as const),
  ]);
  const count = leaves.length + sheets.length;
  const sides = leaves.map(({ text, leaf }, i) => {
    const { format } = text;
    const pageOf = words("handout.page-of", { page: i + 1, pages: count });
    const from = digestOf(text.from, leaf, i, pageOf, pagesLedTo(text.links, pages));
    return laterPage(format, from, () => {
      const inColumns = text.columns.slice(leaf * format.columns, (leaf + 1) * format.columns);
      const columns = inColumns.map((column) => withPageNumbers(column, pages, press));
      return handoutPage(columns, format, {
        header: i === 0 ? ownersLines(format, kit) : guide.title,
        notes: signNotes(columns.flat(), words),
        footer: i === 0 ? words("handout.first-page", { guide: guide.title, pageOf }) : pageOf,
      });
    });
  });
  return { sides, cards: sheets.map((side, i) => numbered(side, leaves.length + i + 1)), pages };
}

/** The booklet, and the same to fold. */
interface Booklets {
  readonly plain: Painted;
  readonly folded: Painted;
  readonly sections: number;
  readonly sheets: number;
}

async function* bookletFiles(
  { booklet, cards: all }: LaidHandouts,
  press: Press,
): AsyncIterable<PaintedFile> {
  const cards = cardsOfBooklet(booklet, all);
  const { words } = press.kit;
  const texts = booklet.map(({ page, from }) => [page, from]);
  const from = digestOf(
    press.from,
    texts,
    [...cards].map(([id, card]) => [id, card.from]),
  );
  const made = once(() => press.keep("booklet", from, () => makeBooklets(booklet, cards, press)));
  const told = press.keep("booklet, told", from, () => {
    const { plain, folded, ...counted } = made();
    return { plain: toldOfDocument(plain), folded: toldOfDocument(folded), ...counted };
  });
  const { sections, sheets } = told;
  const asFile = (path: string, title: string, which: "plain" | "folded") =>
    documentFile({ path, printable: { kind: "booklet", title } }, told[which], () => made()[which]);
  yield asFile(printPaths.booklet, words("printable.booklet"), "plain");
  yield asFile(printPaths.bookletToFold, words("printable.booklet-to-fold", { sections, sheets }), "folded");
}

function makeBooklets(booklet: readonly HandoutPages[], cards: RigCards, press: Press): Booklets {
  const { guide, kit } = press;
  const { sides, pages, links: named } = bookletPages(booklet, cards, press);
  const links = linksTo(named, { ...linkContext(press), pages });
  const facts = press.facts(kit.words("handout.booklet", { guide: guide.title }));
  const sections = sectionsOf(sides.length);
  const imposed = imposeBooklet(sides);
  return {
    plain: painted(sides, first(sides), { ...facts, links, sides: press.keep }, press),
    folded: painted(imposed, first(imposed), { ...facts, duplex: "short edge", sides: press.keep }, press),
    sections: sections.length,
    sheets: first(sections).sheets,
  };
}

function linkContext({ kit: { words }, guide: { siteAddress } }: Press) {
  return { words, siteAddress };
}
