import { columnHeightMm, columnWidthMm, type HandoutFormat } from "../../../templates/handouts/format.ts";
import { ContentsColumn, TitlePage } from "../../../templates/handouts/front-matter.tsx";
import type { Item } from "../../drawing/model.ts";
import { layOut } from "../../layout/lay-out.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { sitePaths } from "../../model/addresses.ts";
import type { Press } from "../press.ts";
import { chunksOf, rowsOf } from "./chunks.ts";
import { composePages } from "./compose.ts";
import type { LessonPages } from "./lesson-handout.ts";
import { handoutPage } from "./page.ts";
import { paginate } from "./paginate.ts";
import { signNotes } from "./sign-notes.ts";

type Column = readonly Item[];

interface BookletPages {
  readonly sides: readonly PaperSide[];
  /** Numbers, from 0, of the pages on which lessons begin, by the paths of their pages on the site. */
  readonly lessonPages: ReadonlyMap<string, number>;
}

/** The whole guide as one run of pages: title, contents, then the lessons in order, each from a page of its own. */
export async function bookletPages(
  lessons: readonly LessonPages[],
  format: HandoutFormat,
  press: Press,
): Promise<BookletPages> {
  const { guide } = press;
  const title = await titleColumn(format, press);
  // The contents take as many pages whatever the numbers in them are.
  const { length } = await contentsColumns(lessons, beginnings(lessons, 0), format, press);
  const lessonPages = beginnings(lessons, 1 + length);
  const contents = await contentsColumns(lessons, lessonPages, format, press);
  const bodies = lessons.flatMap(({ lesson, columns }) =>
    columns.map((column) => ({ column, header: lesson.title })),
  );
  const headed = [
    { column: title, header: "" },
    ...contents.map((column) => ({ column, header: guide.title })),
    ...bodies,
  ];
  const sides = headed.map(({ column, header }, i) =>
    handoutPage(column, format, {
      header,
      footer: i === 0 ? "" : String(i + 1),
      notes: signNotes(column, press.kit.words),
    }),
  );
  return { sides, lessonPages };
}

function beginnings(lessons: readonly LessonPages[], pagesBefore: number): Map<string, number> {
  const pages = new Map<string, number>();
  let page = pagesBefore;
  for (const { lesson, columns } of lessons) {
    pages.set(sitePaths.lesson(lesson.id), page);
    page += columns.length;
  }
  return pages;
}

async function titleColumn(format: HandoutFormat, { guide, kit, fonts }: Press): Promise<Column> {
  const { words } = kit;
  const page = TitlePage({
    format,
    title: guide.title,
    publisher: guide.publisher,
    lines: [
      words("handout.edition", { edition: guide.edition }),
      words("handout.not-a-coach"),
      words("card.caution"),
    ],
  });
  const size = { widthMm: columnWidthMm(format), heightMm: columnHeightMm(format) };
  return (await layOut(page, size, fonts)).items;
}

async function contentsColumns(
  lessons: readonly LessonPages[],
  lessonPages: BookletPages["lessonPages"],
  format: HandoutFormat,
  { kit: { words }, fonts }: Press,
): Promise<Column[]> {
  const entries = lessons.map(({ lesson: { id, title } }) => {
    const link = sitePaths.lesson(id);
    return { title, link, page: lessonPages.get(link)! + 1 };
  });
  const head = [words("handout.lesson"), words("handout.page")] as const;
  const tree = ContentsColumn({ format, title: words("handout.contents"), head, entries });
  const column = await layOut(tree, { widthMm: columnWidthMm(format) }, fonts);
  const pages = paginate(rowsOf(chunksOf(column.items, fonts)), columnHeightMm(format));
  return composePages(pages, "contents");
}
