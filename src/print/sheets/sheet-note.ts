import { SheetNote } from "../../../templates/cards/sheet-note.tsx";
import type { Fonts } from "../../layout/fonts.ts";
import { layOut } from "../../layout/lay-out.ts";
import type { LaidOutPage } from "../../layout/page-of.ts";
import { noteWidthMm } from "./sheet.ts";

/** Lines for the foot of a sheet of cards. */
export function sheetNote(
  lines: readonly string[],
  paper: { readonly widthMm: number; readonly heightMm: number },
  fonts: Fonts,
): LaidOutPage {
  return layOut(SheetNote({ lines }), { widthMm: noteWidthMm(paper) }, fonts);
}
