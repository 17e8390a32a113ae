import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import { first, known, paired } from "../../core/lists.ts";
import type { Drawings } from "../../drawing/pictures.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { type HandoutSize, handoutSizes, printPaths, sitePaths } from "../../model/addresses.ts";
import { digestOf } from "../../model/digest.ts";
import type { Lesson, Prose } from "../../model/library.ts";
import type { DoesNotFit } from "../does-not-fit.ts";
import { type Painted, painted } from "../painted.ts";
import type { Press } from "../press.ts";
import type { PaintedFile } from "../printed-file.ts";
import { imposeBooklet, sectionsOf } from "./booklet.ts";
import { bookletPages } from "./booklet-pages.ts";
import { handoutFormats } from "./handout-formats.ts";
import { linksOn, linksTo, linksWithin, withPageMarks } from "./links.ts";
import { handoutPage } from "./page.ts";
import { cardSheets, type RigCards, rigsNeeded } from "./rig-cards.ts";
import { signNotes } from "./sign-notes.ts";
import { type HandoutText, named, type TextPages, textPages } from "./text-handout.ts";
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
  readonly half: readonly TextPages[];
  readonly whole: readonly TextPages[];
  readonly booklet: readonly TextPages[];
  readonly cards: RigCards;
}

export function layOutHandouts(input: HandoutInput, press: Press): LaidHandouts {
  const { half, whole, wide } = handoutFormats[press.guide.paper];
  const { cards, drawings } = input;
  const texts = handoutTexts(input);
  const within = new Set([...texts.map(({ page }) => page), ...[...cards.keys()].map(sitePaths.rig)]);
  const laid: Record<"half" | "whole" | "booklet", TextPages[]> = { half: [], whole: [], booklet: [] };
  for (const text of texts) {
    const onHalf = textPages(text, half, drawings, press);
    const onWhole = textPages(text, whole, drawings, press);
    const marked = linksWithin(onHalf.links, within);
    laid.half.push(onHalf);
    laid.whole.push(onWhole.overflows.length === 0 ? onWhole : textPages(text, wide, drawings, press));
    const inBooklet = {
      ...text,
      body: () => withPageMarks(text.body(), within, press.kit.words),
      bodyFrom: digestOf(text.bodyFrom, "with page marks", marked),
    };
    laid.booklet.push(marked.length > 0 ? textPages(inBooklet, half, drawings, press) : onHalf);
  }
  return { ...laid, cards };
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
  const problems = new Map<string, DoesNotFit>();
  for (const { text, format, overflows } of [...half, ...whole, ...booklet]) {
    for (const overflow of overflows) {
      const place = { file: text.path, ...(overflow.at ?? { line: 1, column: 1 }) };
      const problem = { ...overflow, of: text.id, format: format.name, side: "handout", place } as const;
      problems.set(JSON.stringify(problem), problem);
    }
  }
  return [...problems.values()];
}

/** The texts that fit wherever they are printed. */
export function fittingHandouts(laid: LaidHandouts): LaidHandouts {
  const unfit = new Set(handoutProblems(laid).map(({ of }) => of));
  const fitting = (texts: readonly TextPages[]) => texts.filter(({ text }) => !unfit.has(text.id));
  return {
    ...laid,
    half: fitting(laid.half),
    whole: fitting(laid.whole),
    booklet: fitting(laid.booklet),
  };
}

/** Each text on half sheets, on whole ones, and with its half sheets on whole ones to be folded; and the whole guide as a booklet: page after page, and laid out to fold. */
export async function* handoutFiles(laid: LaidHandouts, press: Press): AsyncIterable<PaintedFile> {
  for (const [half, whole] of paired(laid.half, laid.whole)) {
    yield handoutFile(half, laid.cards, press);
    yield handoutFile(whole, laid.cards, press);
    if (half.length > 1) yield foldedFile(half, whole.format, laid.cards, press);
  }
  if (laid.booklet.length > 0) yield* bookletFiles(laid, press);
}

/** A text, and after it the cards of the rigs that it draws and leads to. */
function handoutFile(pages: TextPages, cards: RigCards, press: Press): PaintedFile {
  const { text, path, format } = pages;
  const size = handoutSizes[format.name];
  const needed = rigsNeeded(pages, cards).map((id) => known(cards, id));
  const from = digestOf(
    pages.from,
    needed.map(({ from: of }) => of),
  );
  return {
    path: path(size),
    ...press.keep("handout as PDF", from, () => {
      const sides = [...handoutSides(pages, press), ...cardSheets(needed, format, "to cut out", press)];
      const facts = { ...press.facts(text.title), links: linksOn(sides, linkContext(press)) };
      return painted(sides, first(sides), facts, press);
    }),
    printable: {
      kind: "handout",
      title: press.kit.words(`printable.lesson.${size}`, { lesson: text.title }),
    },
  };
}

/**
 * The half sheets of a text two to a side of a whole one, to be folded, and after them its cards on sheets of their own whose
 * backs are blank.
 */
function foldedFile(pages: TextPages, sheet: HandoutFormat, cards: RigCards, press: Press): PaintedFile {
  const { text, path, format } = pages;
  const needed = rigsNeeded(pages, cards).map((id) => known(cards, id));
  const from = digestOf(
    pages.from,
    needed.map(({ from: of }) => of),
    "to fold",
  );
  return {
    path: path(`${handoutSizes[format.name]}-to-fold`),
    ...press.keep("handout as PDF", from, () => {
      const imposed = imposeBooklet(handoutSides(pages, press));
      const withCards = cardSheets(needed, sheet, "to cut out", press).flatMap((side, i) => [
        { ...side, parts: side.parts.map((part) => ({ ...part, reading: pages.length + i })) },
        { ...side, parts: [] },
      ]);
      const facts = { ...press.facts(text.title), duplex: "short edge" } as const;
      return painted([...imposed, ...withCards], first(imposed), facts, press);
    }),
    printable: {
      kind: "handout",
      title: press.kit.words("printable.lesson-to-fold", {
        lesson: text.title,
        page: format.name,
        sheet: sheet.name,
      }),
    },
  };
}

/** The first page has lines for its owner in place of the guide's name, which then stands at its foot. */
function handoutSides({ columns, format }: TextPages, { guide, kit }: Press): PaperSide[] {
  const { words } = kit;
  const pages = abreast(columns, format.columns);
  return pages.map((page, i) => {
    const pageOf = words("handout.page-of", { page: i + 1, pages: pages.length });
    return handoutPage(page, format, {
      header: i === 0 ? ownersLines(format, kit) : guide.title,
      notes: signNotes(page.flat(), words),
      footer: i === 0 ? words("handout.first-page", { guide: guide.title, pageOf }) : pageOf,
    });
  });
}

/** The columns of each page. */
function abreast<T>(columns: readonly T[], count: number): (readonly T[])[] {
  return Array.from({ length: Math.ceil(columns.length / count) }, (_, page) =>
    columns.slice(page * count, (page + 1) * count),
  );
}

/** The booklet, and the same to fold. */
interface Booklets {
  readonly plain: Painted;
  readonly folded: Painted;
  readonly sections: number;
  readonly sheets: number;
}

async function* bookletFiles({ booklet, cards }: LaidHandouts, press: Press): AsyncIterable<PaintedFile> {
  const { words } = press.kit;
  const texts = booklet.map(({ page, from }) => [page, from]);
  const from = digestOf(
    press.from,
    texts,
    [...cards].map(([id, card]) => [id, card.from]),
  );
  const { plain, folded, sections, sheets } = press.keep("booklet", from, () =>
    makeBooklets(booklet, cards, press),
  );
  yield {
    path: printPaths.booklet,
    ...plain,
    printable: { kind: "booklet", title: words("printable.booklet") },
  };
  yield {
    path: printPaths.bookletToFold,
    ...folded,
    printable: { kind: "booklet", title: words("printable.booklet-to-fold", { sections, sheets }) },
  };
}

function makeBooklets(booklet: readonly TextPages[], cards: RigCards, press: Press): Booklets {
  const { guide, kit } = press;
  const { sides, pages, links: named } = bookletPages(booklet, cards, press);
  const links = linksTo(named, { ...linkContext(press), pages });
  const facts = press.facts(kit.words("handout.booklet", { guide: guide.title }));
  const sections = sectionsOf(sides.length);
  const imposed = imposeBooklet(sides);
  return {
    plain: painted(sides, first(sides), { ...facts, links }, press),
    folded: painted(imposed, first(imposed), { ...facts, duplex: "short edge" }, press),
    sections: sections.length,
    sheets: first(sections).sheets,
  };
}

function linkContext({ kit: { words }, guide: { siteAddress } }: Press) {
  return { words, siteAddress };
}
