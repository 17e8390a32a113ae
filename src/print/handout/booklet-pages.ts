import { columnHeightMm, columnWidthMm, type HandoutFormat } from "../../../templates/handouts/format.ts";
import { ContentsColumn, TitlePage } from "../../../templates/handouts/front-matter.tsx";
import { first, known } from "../../core/lists.ts";
import type { Item } from "../../drawing/model.ts";
import { layOut } from "../../layout/lay-out.ts";
import type { PaperSide } from "../../layout/paper.ts";
import type { Press } from "../press.ts";
import { chunksOf, rowsOf } from "./chunks.ts";
import { composePages } from "./compose.ts";
import { handoutPage } from "./page.ts";
import { paginate } from "./paginate.ts";
import { signNotes } from "./sign-notes.ts";
import { linesToFindUs, type TextPages } from "./text-handout.ts";
import { ownersLines } from "./to-fill-in.ts";

type Column = readonly Item[];

interface BookletPages {
  readonly sides: readonly PaperSide[];
  /** Numbers, from 0, of the pages on which texts begin, by the paths of their pages on the site. */
  readonly textPages: ReadonlyMap<string, number>;
}

/** The whole guide as one run of pages: title, contents, then the texts in order, each from a page of its own. */
export async function bookletPages(texts: readonly TextPages[], press: Press): Promise<BookletPages> {
  const { guide } = press;
  const { format } = first(texts);
  const title = await titleColumn(format, press);
  // The contents take as many pages whatever the numbers in them are.
  const { length } = await contentsColumns(texts, beginnings(texts, 0), format, press);
  const textPages = beginnings(texts, 1 + length);
  const contents = await contentsColumns(texts, textPages, format, press);
  const bodies = texts.flatMap(({ text, columns }) =>
    columns.map((column) => ({ column, header: text.title })),
  );
  const headed = [
    { column: title, header: ownersLines(format, press.kit) },
    ...contents.map((column) => ({ column, header: guide.title })),
    ...bodies,
  ];
  const sides = headed.map(({ column, header }, i) =>
    handoutPage([column], format, {
      header,
      footer: i === 0 ? "" : String(i + 1),
      notes: signNotes(column, press.kit.words),
    }),
  );
  return { sides, textPages };
}

function beginnings(texts: readonly TextPages[], pagesBefore: number): Map<string, number> {
  const pages = new Map<string, number>();
  let page = pagesBefore;
  for (const { page: path, columns } of texts) {
    pages.set(path, page);
    page += columns.length;
  }
  return pages;
}

async function titleColumn(format: HandoutFormat, { guide, kit, fonts, logo }: Press): Promise<Column> {
  const { words } = kit;
  const page = TitlePage({
    format,
    title: guide.title,
    publisher: guide.publisher,
    logo,
    lines: [
      ...linesToFindUs(guide),
      words("handout.edition", { edition: guide.edition }),
      words("handout.not-a-coach"),
      words("card.caution"),
    ],
  });
  const size = { widthMm: columnWidthMm(format), heightMm: columnHeightMm(format) };
  return (await layOut(page, size, fonts)).items;
}

async function contentsColumns(
  texts: readonly TextPages[],
  textPages: BookletPages["textPages"],
  format: HandoutFormat,
  { kit: { words }, fonts }: Press,
): Promise<Column[]> {
  const entries = texts.map(({ text: { title }, page: link }) => ({
    title,
    link,
    page: known(textPages, link) + 1,
  }));
  const head = [words("handout.text"), words("handout.page")] as const;
  const tree = ContentsColumn({ format, title: words("handout.contents"), head, entries });
  const column = await layOut(tree, { widthMm: columnWidthMm(format) }, fonts);
  const pages = paginate(rowsOf(chunksOf(column.items, fonts)), columnHeightMm(format));
  return composePages(pages, "contents");
}
