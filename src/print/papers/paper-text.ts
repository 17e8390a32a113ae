import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import type { Item } from "../../drawing/model.ts";
import type { Drawings } from "../../drawing/pictures.ts";
import type { PaperSide } from "../../layout/paper.ts";
import type { Guide, Prose } from "../../model/library.ts";
import type { Words } from "../../words/words.ts";
import { handoutFormats } from "../handout/handout-formats.ts";
import { handoutPage } from "../handout/page.ts";
import { named, type TextPages, textPages } from "../handout/text-handout.ts";
import type { Press } from "../press.ts";

/** Whole sheets in one column, as wide as tables with many columns want them. */
const formatOf = (paper: Guide["paper"]): HandoutFormat => ({
  ...handoutFormats[paper].wide,
  sideMm: 16,
  bodyPt: 11,
});

/** A text that is written out of figures, on sheets of its own. */
export function paperText(
  text: Prose,
  drawings: Drawings,
  press: Press,
  format = formatOf(press.guide.paper),
): TextPages {
  return textPages(named(text, text.body), format, drawings, press);
}

/**
 * The sides of such a text, each with the head that all of them have.
 *
 * @param notesOf what stands at the foot of a column
 */
export function paperSides(
  { columns, format }: TextPages,
  header: string,
  { kit: { words } }: Press,
  notesOf: (column: readonly Item[], words: Words) => string = () => "",
): PaperSide[] {
  return columns.map((column, i) => {
    const footer = words("handout.page-of", { page: i + 1, pages: columns.length });
    return handoutPage([column], format, { header, notes: notesOf(column, words), footer });
  });
}
