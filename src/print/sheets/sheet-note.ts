import { SheetNote as NoteBox } from "../../../templates/cards/sheet-note.tsx";
import type { Fonts } from "../../layout/fonts.ts";
import { layOut } from "../../layout/lay-out.ts";
import type { LaidOutPage } from "../../layout/page-of.ts";
import type { Figures } from "../../words/figures.ts";
import type { CheckedBar } from "../../words/unit-systems.ts";
import { noteWidthMm } from "./sheet.ts";

/** Lines for the foot of a sheet of cards, with the bar that stands above them. */
export function sheetNote(
  lines: readonly string[],
  paper: { readonly widthMm: number; readonly heightMm: number },
  fonts: Fonts,
  { ruler }: Figures,
): LaidOutPage & { readonly bar: CheckedBar } {
  return { ...layOut(NoteBox({ lines }), { widthMm: noteWidthMm(paper) }, fonts), bar: ruler.check };
}

/** Figures in what a sheet says of itself: how long its bar is, how much film is left round a card. */
export function sheetFigures({ small, ruler }: Figures) {
  return { length: small(ruler.check.lengthMm), film: small(filmMm) };
}

/** Source: common practice. */
const filmMm = 3;
