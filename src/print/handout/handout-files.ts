import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import type { PictureSource } from "../../drawing/pictures.ts";
import { handoutSizes, printPaths } from "../../model/addresses.ts";
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
import { type LessonPages, lessonPages } from "./lesson-handout.ts";
import { linksOn } from "./links.ts";
import { handoutPage } from "./page.ts";
import { signNotes } from "./sign-notes.ts";

/** What handouts are made from besides the press. */
export interface HandoutInput {
  readonly lessons: readonly Lesson[];
  readonly pictures: PictureSource;
  /** The text of a lesson with its live figures put in. */
  readonly liveBody: (prose: Prose) => Prose["body"];
}

/** The lessons laid out on the pages of a format. */
interface LaidHandouts {
  readonly format: HandoutFormat;
  readonly lessons: readonly LessonPages[];
}

export async function layOutHandouts(input: HandoutInput, press: Press): Promise<LaidHandouts> {
  const format = handoutFormats[press.guide.paper];
  const lessons: LessonPages[] = [];
  for (const lesson of [...input.lessons].sort((a, b) => a.order - b.order)) {
    const body = input.liveBody(lesson);
    lessons.push(await lessonPages(lesson, body, format, input.pictures, press.kit, press.fonts));
  }
  return { format, lessons };
}

export function handoutProblems({ format, lessons }: LaidHandouts): DoesNotFit[] {
  return lessons.flatMap(({ lesson, overflows }) =>
    overflows.map((overflow) => ({ ...overflow, of: lesson.id, format: format.name, side: "handout" })),
  );
}

/**
 * Each lesson on half a sheet and enlarged to a whole one, and the whole guide as a booklet: page after page, and laid
 * out to fold.
 */
export async function* handoutFiles(
  { format, lessons }: LaidHandouts,
  press: Press,
): AsyncIterable<PrintedFile> {
  const { words } = press.kit;
  const { paper } = press.guide;
  for (const { lesson, columns } of lessons) {
    const facts = press.facts(lesson.title);
    const sides = columns.map((column, i) =>
      handoutPage(column, format, {
        header: press.guide.title,
        notes: signNotes(column, words),
        footer: words("handout.page-of", { page: i + 1, pages: columns.length }),
      }),
    );
    const large = sides.map((side) => enlarged(side, paperSizes[paper]));
    const sizes = [
      [format.name, sides],
      [paper, large],
    ] as const;
    const links = linksOn(sides, linkContext(press));
    for (const [size, pages] of sizes) {
      const name = handoutSizes[size];
      yield {
        path: printPaths.handout(lesson.id, name),
        content: await paintPdf(pages, { ...facts, links }, press.fonts),
        printable: { kind: "handout", title: words(`printable.lesson.${name}`, { lesson: lesson.title }) },
      };
    }
  }
  if (lessons.length > 0) yield* bookletFiles(lessons, format, press);
}

async function* bookletFiles(
  lessons: readonly LessonPages[],
  format: HandoutFormat,
  press: Press,
): AsyncIterable<PrintedFile> {
  const { words } = press.kit;
  const { sides, lessonPages } = await bookletPages(lessons, format, press);
  const links = linksOn(sides, { ...linkContext(press), pages: lessonPages });
  const facts = press.facts(words("handout.booklet", { guide: press.guide.title }));
  yield {
    path: printPaths.booklet,
    content: await paintPdf(sides, { ...facts, links }, press.fonts),
    printable: { kind: "booklet", title: words("printable.booklet") },
  };
  const sections = sectionsOf(sides.length);
  const folded = { ...facts, duplex: "short edge", forFolding: true } as const;
  yield {
    path: printPaths.bookletToFold,
    content: await paintPdf(imposeBooklet(sides), folded, press.fonts),
    printable: {
      kind: "booklet",
      title: words("printable.booklet-to-fold", { sections: sections.length, sheets: sections[0]!.sheets }),
    },
  };
}

function linkContext({ kit: { words }, guide: { siteAddress } }: Press) {
  return { words, siteAddress };
}
