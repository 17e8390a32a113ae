import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import type { Drawings } from "../../drawing/pictures.ts";
import type { PaperSide } from "../../layout/paper.ts";
import { printPaths, sitePaths } from "../../model/addresses.ts";
import { digestOnce } from "../../model/digest.ts";
import type { Guide, Prose } from "../../model/library.ts";
import type { DoesNotFit } from "../does-not-fit.ts";
import { handoutFormats } from "../handout/handout-formats.ts";
import { handoutPage } from "../handout/page.ts";
import { type TextPages, textPages } from "../handout/text-handout.ts";
import type { Press } from "../press.ts";

/** Whole sheets in one column, as wide as tables with many columns want them. */
const formatOf = (paper: Guide["paper"]): HandoutFormat => ({
  ...handoutFormats[paper].wide,
  sideMm: 16,
  bodyPt: 11,
});

/** A text that is written out of figures, on sheets of its own. */
export function paperText(text: Prose, drawings: Drawings, press: Press): TextPages {
  const { body: live } = text;
  const asIs = { text, live, body: () => live, bodyFrom: digestOnce(live) };
  const placed = { ...asIs, page: sitePaths.home, path: () => printPaths.booklet };
  return textPages(placed, formatOf(press.guide.paper), drawings, press);
}

/** What of a text is wider than its sheet. */
export function paperProblems({ text, format, overflows }: TextPages, side: string): DoesNotFit[] {
  return overflows.map((overflow) => ({
    ...overflow,
    of: text.id,
    format: format.name,
    side,
    place: { file: text.path, line: 1, column: 1 },
  }));
}

/** The sides of such a text, each with the head, and the notes at the foot, that all of them have. */
export function paperSides(
  { columns, format }: TextPages,
  header: string,
  { kit }: Press,
  notes = "",
): PaperSide[] {
  return columns.map((column, i) => {
    const footer = kit.words("handout.page-of", { page: i + 1, pages: columns.length });
    return handoutPage([column], format, { header, notes, footer });
  });
}
