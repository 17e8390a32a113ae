import type { PaperSide } from "../../layout/paper.ts";

/**
 * A page enlarged to fill a larger paper, in the middle of what is left. A5 fills A4 whole, at √2 (ISO 216): its 12 pt
 * become the 17 pt of large print.
 */
export function enlarged(
  side: PaperSide,
  paper: { readonly widthMm: number; readonly heightMm: number },
): PaperSide {
  const scale = Math.min(paper.widthMm / side.widthMm, paper.heightMm / side.heightMm);
  const leftMm = (paper.widthMm - scale * side.widthMm) / 2;
  const topMm = (paper.heightMm - scale * side.heightMm) / 2;
  return {
    ...paper,
    viewTurn: 0,
    parts: side.parts.map((part) => ({
      ...part,
      scale,
      xMm: leftMm + scale * part.xMm,
      yMm: topMm + scale * part.yMm,
    })),
  };
}
