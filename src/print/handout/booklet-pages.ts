import { columnHeightMm, columnWidthMm, type HandoutFormat } from "../../../templates/handouts/format.ts";
import { ContentsColumn, TitlePage } from "../../../templates/handouts/front-matter.tsx";
import { first, known } from "../../core/lists.ts";
import type { Item } from "../../drawing/model.ts";
import { layOut } from "../../layout/lay-out.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { sitePaths } from "../../model/addresses.ts";
import type { Press } from "../press.ts";
import { chunksOf, rowsOf } from "./chunks.ts";
import { composePages } from "./compose.ts";
import { withPageNumbers } from "./links.ts";
import { handoutPage, numbered } from "./page.ts";
import { paginate } from "./paginate.ts";
import { cardSheets, type RigCards, sheetOf } from "./rig-cards.ts";
import { signNotes } from "./sign-notes.ts";
import { linesToFindUs, type TextPages } from "./text-handout.ts";
import { ownersLines } from "./to-fill-in.ts";

type Column = readonly Item[];

interface BookletPages {
  readonly sides: readonly PaperSide[];
  /** Numbers, from 0, of the pages on which texts begin and cards lie, by the paths of their pages on the site. */
  readonly pages: ReadonlyMap<string, number>;
}

/** The whole guide as one run of pages: title, contents, the texts in order, each from a page of its own, and the cards. */
export async function bookletPages(
  texts: readonly TextPages[],
  cards: RigCards,
  press: Press,
): Promise<BookletPages> {
  const { guide, kit } = press;
  const { format } = first(texts);
  const title = await titleColumn(format, press);
  const withCards = await cardSheets([...cards.values()], format, "to look at", press);
  // The contents take as many pages whatever the numbers in them are.
  const { length } = await contentsColumns(texts, pagesOf(texts, 0), undefined, format, press);
  const before = 1 + length;
  const cardsFrom = before + texts.reduce((sum, { columns }) => sum + columns.length, 0);
  const pages = new Map([...pagesOf(texts, before), ...pagesOfCards(cards, withCards, cardsFrom)]);
  const contents = await contentsColumns(
    texts,
    pages,
    withCards.length > 0 ? cardsFrom : undefined,
    format,
    press,
  );
  const bodies = texts.flatMap(({ text, columns }) =>
    columns.map((column) => ({ column: withPageNumbers(column, pages, kit.words), header: text.title })),
  );
  const headed = [
    { column: title, header: ownersLines(format, kit) },
    ...contents.map((column) => ({ column, header: guide.title })),
    ...bodies,
  ];
  const sides = headed.map(({ column, header }, i) =>
    handoutPage([column], format, {
      header,
      footer: i === 0 ? "" : String(i + 1),
      notes: signNotes(column, kit.words),
    }),
  );
  return { sides: [...sides, ...withCards.map((side, i) => numbered(side, cardsFrom + i + 1))], pages };
}

function pagesOfCards(
  cards: RigCards,
  sides: readonly PaperSide[],
  from: number,
): (readonly [string, number])[] {
  return [...cards].map(([id, card]) => [sitePaths.rig(id), from + sheetOf(card, sides)] as const);
}

function pagesOf(texts: readonly TextPages[], pagesBefore: number): Map<string, number> {
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
  pages: BookletPages["pages"],
  cardsFrom: number | undefined,
  format: HandoutFormat,
  { kit: { words }, fonts }: Press,
): Promise<Column[]> {
  const entries = texts.map(({ text: { title }, page: link }) => ({
    title,
    link,
    page: known(pages, link) + 1,
  }));
  if (cardsFrom !== undefined) {
    entries.push({ title: words("handout.cards"), link: "", page: cardsFrom + 1 });
  }
  const head = [words("handout.text"), words("handout.page")] as const;
  const tree = ContentsColumn({ format, title: words("handout.contents"), head, entries });
  const column = await layOut(tree, { widthMm: columnWidthMm(format) }, fonts);
  const cut = paginate(rowsOf(chunksOf(column.items, fonts)), columnHeightMm(format));
  return composePages(cut, "contents");
}
