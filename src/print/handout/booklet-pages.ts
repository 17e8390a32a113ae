import { columnHeightMm, columnWidthMm, type HandoutFormat } from "../../../templates/handouts/format.ts";
import { ContentsColumn, TitlePage } from "../../../templates/handouts/front-matter.tsx";
import type { Guide } from "../../content/library.ts";
import type { Item } from "../../drawing/model.ts";
import type { Fonts } from "../../layout/fonts.ts";
import { layOut } from "../../layout/lay-out.ts";
import type { PaperSide } from "../../layout/paper.ts";
import type { Words } from "../../report/words.ts";
import { chunksOf, rowsOf } from "./chunks.ts";
import { composePages } from "./compose.ts";
import type { LessonPages } from "./lesson-handout.ts";
import { handoutPage } from "./page.ts";
import { paginate } from "./paginate.ts";

type Column = readonly Item[];

/** The whole guide as one run of pages: title, contents, then the lessons in order, each from a page of its own. */
export async function bookletPages(
  lessons: readonly LessonPages[],
  guide: Guide,
  format: HandoutFormat,
  words: Words,
  fonts: Fonts,
): Promise<PaperSide[]> {
  const title = await titleColumn(guide, format, words, fonts);
  // The contents take as many pages whatever the numbers in them are.
  const { length } = await contentsColumns(lessons, 0, format, words, fonts);
  const contents = await contentsColumns(lessons, 1 + length, format, words, fonts);
  const bodies = lessons.flatMap(({ lesson, columns }) =>
    columns.map((column) => ({ column, header: lesson.title })),
  );
  const headed = [
    { column: title, header: "" },
    ...contents.map((column) => ({ column, header: guide.title })),
    ...bodies,
  ];
  return headed.map(({ column, header }, i) =>
    handoutPage(column, format, { header, footer: i === 0 ? "" : String(i + 1) }),
  );
}

async function titleColumn(guide: Guide, format: HandoutFormat, words: Words, fonts: Fonts): Promise<Column> {
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
  pagesBefore: number,
  format: HandoutFormat,
  words: Words,
  fonts: Fonts,
): Promise<Column[]> {
  let page = pagesBefore + 1;
  const entries = lessons.map(({ lesson, columns }) => {
    const entry = { title: lesson.title, page };
    page += columns.length;
    return entry;
  });
  const head = [words("handout.lesson"), words("handout.page")] as const;
  const tree = ContentsColumn({ format, title: words("handout.contents"), head, entries });
  const column = await layOut(tree, { widthMm: columnWidthMm(format) }, fonts);
  const pages = paginate(rowsOf(chunksOf(column.items, fonts)), columnHeightMm(format));
  return composePages(pages, "contents");
}
