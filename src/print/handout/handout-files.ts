import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import { first, paired } from "../../core/lists.ts";
import type { Drawings } from "../../drawing/pictures.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { type HandoutSize, handoutSizes, printPaths, sitePaths } from "../../model/addresses.ts";
import type { Lesson, Prose } from "../../model/library.ts";
import type { DoesNotFit } from "../does-not-fit.ts";
import { paintPdf } from "../pdf/pdf.ts";
import type { Press } from "../press.ts";
import type { PrintedFile } from "../printed-file.ts";
import { imposeBooklet, sectionsOf } from "./booklet.ts";
import { bookletPages } from "./booklet-pages.ts";
import { handoutFormats } from "./handout-formats.ts";
import { linksOn } from "./links.ts";
import { handoutPage } from "./page.ts";
import { signNotes } from "./sign-notes.ts";
import { type HandoutText, type TextPages, textPages } from "./text-handout.ts";
import { ownersLines } from "./to-fill-in.ts";

/** What handouts are made from besides the press. */
export interface HandoutInput {
  readonly lessons: readonly Lesson[];
  /** Single pages such as safety; they come after the lessons. */
  readonly pages: readonly Prose[];
  readonly drawings: Drawings;
  /** A text with its live figures put in. */
  readonly liveBody: (prose: Prose) => Prose["body"];
}

/** The texts laid out on half sheets and on whole ones. */
interface LaidHandouts {
  readonly half: readonly TextPages[];
  readonly whole: readonly TextPages[];
}

export async function layOutHandouts(input: HandoutInput, press: Press): Promise<LaidHandouts> {
  const formats = handoutFormats[press.guide.paper];
  const laid: { half: TextPages[]; whole: TextPages[] } = { half: [], whole: [] };
  for (const handout of handoutTexts(input)) {
    const body = input.liveBody(handout.text);
    const on = (format: HandoutFormat) => textPages(handout, body, format, input.drawings, press);
    laid.half.push(await on(formats.half));
    const whole = await on(formats.whole);
    laid.whole.push(whole.overflows.length === 0 ? whole : await on(formats.wide));
  }
  return laid;
}

function handoutTexts({ lessons, pages }: HandoutInput): readonly HandoutText[] {
  return [
    ...[...lessons]
      .sort((a, b) => a.order - b.order)
      .map((text) => ({
        text,
        page: sitePaths.lesson(text.id),
        path: (size: HandoutSize) => printPaths.handout(text.id, size),
      })),
    ...pages.map((text) => ({
      text,
      page: sitePaths.page(text.id),
      path: (size: HandoutSize) => printPaths.pageHandout(text.id, size),
    })),
  ];
}

export function handoutProblems({ half, whole }: LaidHandouts): DoesNotFit[] {
  return [...half, ...whole].flatMap(({ text, format, overflows }) =>
    overflows.map((overflow) => ({
      ...overflow,
      of: text.id,
      format: format.name,
      side: "handout",
      place: { file: text.path, ...(overflow.at ?? { line: 1, column: 1 }) },
    })),
  );
}

/** Each text on half sheets and on whole ones, and the whole guide as a booklet: page after page, and laid out to fold. */
export async function* handoutFiles(laid: LaidHandouts, press: Press): AsyncIterable<PrintedFile> {
  for (const [half, whole] of paired(laid.half, laid.whole)) {
    yield handoutFile(half, press);
    yield handoutFile(whole, press);
  }
  if (laid.half.length > 0) yield* bookletFiles(laid.half, press);
}

function handoutFile(pages: TextPages, press: Press): PrintedFile {
  const { text, path, format } = pages;
  const size = handoutSizes[format.name];
  const sides = handoutSides(pages, press);
  const facts = { ...press.facts(text.title), links: linksOn(sides, linkContext(press)) };
  return {
    path: path(size),
    content: paintPdf(sides, facts, press.fonts),
    printable: {
      kind: "handout",
      title: press.kit.words(`printable.lesson.${size}`, { lesson: text.title }),
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

async function* bookletFiles(texts: readonly TextPages[], press: Press): AsyncIterable<PrintedFile> {
  const { words } = press.kit;
  const { sides, textPages } = await bookletPages(texts, press);
  const links = linksOn(sides, { ...linkContext(press), pages: textPages });
  const facts = press.facts(words("handout.booklet", { guide: press.guide.title }));
  yield {
    path: printPaths.booklet,
    content: paintPdf(sides, { ...facts, links }, press.fonts),
    printable: { kind: "booklet", title: words("printable.booklet") },
  };
  const sections = sectionsOf(sides.length);
  const folded = { ...facts, duplex: "short edge", forFolding: true } as const;
  yield {
    path: printPaths.bookletToFold,
    content: paintPdf(imposeBooklet(sides), folded, press.fonts),
    printable: {
      kind: "booklet",
      title: words("printable.booklet-to-fold", {
        sections: sections.length,
        sheets: first(sections).sheets,
      }),
    },
  };
}

function linkContext({ kit: { words }, guide: { siteAddress } }: Press) {
  return { words, siteAddress };
}
