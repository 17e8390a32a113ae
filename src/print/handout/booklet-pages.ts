import { columnHeightMm, columnWidthMm, type HandoutFormat } from "../../../templates/handouts/format.ts";
import { ContentsColumn, TitlePage } from "../../../templates/handouts/front-matter.tsx";
import { entry, first, last } from "../../core/lists.ts";
import type { GroupItem, Item } from "../../drawing/model.ts";
import { layOut } from "../../layout/lay-out.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { sitePaths } from "../../model/addresses.ts";
import { digestOf } from "../../model/digest.ts";
import { linesToFindUs } from "../../model/find-us.ts";
import type { Words } from "../../words/words.ts";
import type { Press } from "../press.ts";
import { chunksOf, rowsOf } from "./chunks.ts";
import { composePages } from "./compose.ts";
import { pagesLedTo, withPageNumbers } from "./links.ts";
import { handoutPage, laterPage, numbered } from "./page.ts";
import { paginate } from "./paginate.ts";
import { cardSheets, type RigCards, sheetOf } from "./rig-cards.ts";
import { signNotes } from "./sign-notes.ts";
import type { HandoutPages } from "./text-handout.ts";
import { ownersLines } from "./to-fill-in.ts";

type Column = readonly Item[];

interface BookletPages {
  readonly sides: readonly PaperSide[];
  /** Numbers, from 0, of the pages on which texts begin and cards lie, by the paths of their pages on the site. */
  readonly pages: ReadonlyMap<string, number>;
  /** Names of all links on them. */
  readonly links: readonly string[];
}

/** The whole guide as one run of pages: title, contents, the texts in order, each from a page of its own, and the cards. */
export function bookletPages(texts: readonly HandoutPages[], cards: RigCards, press: Press): BookletPages {
  const { guide, kit } = press;
  const { format } = first(texts);
  const title = titleColumn(format, press);
  const withCards = cardSheets([...cards.values()], format, "to look at", press);
  const entriesFrom = (before: number) => entriesOf(texts, [...cards.keys()], before, kit.words);
  // The contents take as many pages whatever the numbers in them are.
  const { length } = contentsColumns(entriesFrom(0), format, press);
  const entries = entriesFrom(1 + length);
  const contents = contentsColumns(entries, format, press);
  const cardsFrom = last(entries).page;
  const pages = new Map([
    ...entries.map(({ link, page }) => [link, page] as const),
    ...[...cards].map(([id, card]) => [sitePaths.rig(id), cardsFrom + sheetOf(card, withCards)] as const),
  ]);
  const page = (column: Column, header: string | GroupItem, footer: string) =>
    handoutPage([column], format, { header, footer, notes: signNotes(column, kit.words) });
  const sides = [
    page(title, ownersLines(format, kit), ""),
    ...contents.map((column, i) => page(column, guide.title, String(i + 2))),
  ];
  for (const text of texts) sides.push(...textSides(text, sides.length, pages, page, press));
  return {
    sides: [...sides, ...withCards.map((side, i) => numbered(side, cardsFrom + i + 1))],
    pages,
    links: [...entries.map(({ link }) => link), ...texts.flatMap(({ links }) => links)],
  };
}

/** The pages of a text, which are made once somebody asks for their marks. */
function textSides(
  text: HandoutPages,
  before: number,
  pages: ReadonlyMap<string, number>,
  page: (column: Column, header: string, footer: string) => PaperSide,
  press: Press,
): PaperSide[] {
  const { title } = text.text;
  const ledTo = pagesLedTo(text.links, pages);
  return Array.from({ length: text.length }, (_, i) => {
    const footer = String(before + i + 1);
    const from = digestOf(text.from, i, title, footer, ledTo);
    return laterPage(text.format, from, () =>
      page(withPageNumbers(entry(text.columns, i), pages, press), title, footer),
    );
  });
}

/** A line of the contents: what begins on a page, numbered from 0, and the name of the links that lead to it. */
interface Entry {
  readonly title: string;
  readonly link: string;
  readonly page: number;
}

function entriesOf(
  texts: readonly HandoutPages[],
  cardIds: readonly string[],
  before: number,
  words: Words,
): Entry[] {
  let page = before;
  const entries = texts.map(({ text: { title }, page: link, length }): Entry => {
    const entry = { title, link, page };
    page += length;
    return entry;
  });
  const cards = cardIds
    .slice(0, 1)
    .map((id) => ({ title: words("handout.cards"), link: sitePaths.rig(id), page }));
  return [...entries, ...cards];
}

function titleColumn(format: HandoutFormat, { guide, kit, fonts, logo }: Press): Column {
  const { words, figures } = kit;
  const page = TitlePage({
    format,
    title: guide.title,
    publisher: guide.publisher,
    logo,
    lines: [
      ...linesToFindUs(guide),
      words("handout.edition", { edition: figures.date(guide.edition) }),
      words("handout.not-a-coach"),
      words("card.caution"),
    ],
  });
  const size = { widthMm: columnWidthMm(format), heightMm: columnHeightMm(format) };
  return layOut(page, size, fonts).items;
}

function contentsColumns(
  entries: readonly Entry[],
  format: HandoutFormat,
  { kit: { words }, fonts }: Press,
): Column[] {
  const head = [words("handout.text"), words("handout.page")] as const;
  const numbered = entries.map((entry) => ({ ...entry, page: entry.page + 1 }));
  const tree = ContentsColumn({ format, title: words("handout.contents"), head, entries: numbered });
  const column = layOut(tree, { widthMm: columnWidthMm(format) }, fonts);
  return composePages(paginate(rowsOf(chunksOf(column.items, fonts)), columnHeightMm(format)), "contents");
}
