import type { PaperSide } from "../layout/paper.ts";
import { paintPdf } from "./pdf/pdf.ts";
import type { Press } from "./press.ts";
import type { PaintedFile } from "./printed-file.ts";
import { smallPageSvg } from "./small-page.ts";

/** A document painted, and the side of it that lists show. */
export type Painted = Required<Pick<PaintedFile, "content" | "shows">>;

/** Sides of paper as a document; `shown` is the one that lists show. */
export function painted(
  sides: readonly PaperSide[],
  shown: PaperSide,
  facts: Parameters<typeof paintPdf>[1],
  { fonts, parts, keep }: Pick<Press, "fonts" | "parts" | "keep">,
): Painted {
  const { widthMm, heightMm } = shown;
  return {
    content: paintPdf(sides, { ...facts, parts, keep }, fonts),
    shows: { svg: smallPageSvg(shown), widthMm, heightMm },
  };
}
