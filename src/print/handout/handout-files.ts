import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import { first } from "../../core/lists.ts";
import type { PictureSource } from "../../drawing/pictures.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { type HandoutSize, handoutSizes, printPaths, sitePaths } from "../../model/addresses.ts";
import type { Lesson, Prose } from "../../model/library.ts";
import type { DoesNotFit } from "../does-not-fit.ts";
import { paintPdf } from "../pdf/pdf.ts";
import type { Press } from "../press.ts";
import type { PrintedFile } from "../printed-file.ts";
import { paperSizes } from "../sheets/paper-sizes.ts";
import { imposeBooklet, sectionsOf } from "./booklet.ts";
import { bookletPages } from "./booklet-pages.ts";
import { enlarged } from "./enlarge.ts";
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
  readonly pictures: PictureSource;
  /** A text with its live figures put in. */
  readonly liveBody: (prose: Prose) => Prose["body"];
}

/** The texts laid out on the pages of a format. */
interface LaidHandouts {
  readonly format: HandoutFormat;
  readonly texts: readonly TextPages[];
}

export async function layOutHandouts(input: HandoutInput, press: Press): Promise<LaidHandouts> {
  const format = handoutFormats[press.guide.paper];
  const texts: TextPages[] = [];
  for (const handout of handoutTexts(input)) {
    const body = input.liveBody(handout.text);
    texts.push(await textPages(handout, body, format, input.pictures, press));
  }
  return { format, texts };
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

export function handoutProblems({ format, texts }: LaidHandouts): DoesNotFit[] {
  return texts.flatMap(({ text, overflows }) =>
    overflows.map((overflow) => ({
      ...overflow,
      of: text.id,
      format: format.name,
      side: "handout",
      place: { file: text.path, ...(overflow.at ?? { line: 1, column: 1 }) },
    })),
  );
}

/**
 * Each text on half a sheet and enlarged to a whole one, and the whole guide as a booklet: page after page, and laid
 * out to fold.
 */
export async function* handoutFiles(
  { format, texts }: LaidHandouts,
  press: Press,
): AsyncIterable<PrintedFile> {
  const { words } = press.kit;
  const { paper } = press.guide;
  for (const { text, path, columns } of texts) {
    const facts = press.facts(text.title);
    const sides = handoutSides(columns, format, press);
    const large = sides.map((side) => enlarged(side, paperSizes[paper]));
    const sizes = [
      [format.name, sides],
      [paper, large],
    ] as const;
    const links = linksOn(sides, linkContext(press));
    for (const [size, pages] of sizes) {
      const name = handoutSizes[size];
      yield {
        path: path(name),
        content: paintPdf(pages, { ...facts, links }, press.fonts),
        printable: { kind: "handout", title: words(`printable.lesson.${name}`, { lesson: text.title }) },
      };
    }
  }
  if (texts.length > 0) yield* bookletFiles(texts, format, press);
}

/** The first page has lines for its owner in place of the guide's name, which then stands at its foot. */
function handoutSides(
  columns: TextPages["columns"],
  format: HandoutFormat,
  { guide, kit }: Press,
): PaperSide[] {
  const { words } = kit;
  return columns.map((column, i) => {
    const pageOf = words("handout.page-of", { page: i + 1, pages: columns.length });
    return handoutPage(column, format, {
      header: i === 0 ? ownersLines(format, kit) : guide.title,
      notes: signNotes(column, words),
      footer: i === 0 ? words("handout.first-page", { guide: guide.title, pageOf }) : pageOf,
    });
  });
}

async function* bookletFiles(
  texts: readonly TextPages[],
  format: HandoutFormat,
  press: Press,
): AsyncIterable<PrintedFile> {
  const { words } = press.kit;
  const { sides, textPages } = await bookletPages(texts, format, press);
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
