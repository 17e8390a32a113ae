import { mmPerInch } from "../../core/units.ts";
import { paperSizes } from "../sheets/paper-sizes.ts";

/** A sheet of labels as it is sold: how large they are, how many, and where the first stands [mm]. */
export interface LabelSheet {
  /** As it stands in names of files. */
  readonly id: string;
  readonly paper: "A4" | "Letter";
  readonly columns: number;
  readonly rows: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly leftMm: number;
  readonly topMm: number;
  /** From one label's left edge to the next one's, and from top to top. */
  readonly acrossMm: number;
  readonly downMm: number;
}

/** Labels in the middle of their sheet, rows without a gap. */
function sheet(
  id: string,
  paper: LabelSheet["paper"],
  [columns, rows]: readonly [number, number],
  { widthMm, heightMm, betweenMm }: { widthMm: number; heightMm: number; betweenMm: number },
): LabelSheet {
  const acrossMm = widthMm + betweenMm;
  return {
    id,
    paper,
    columns,
    rows,
    widthMm,
    heightMm,
    leftMm: (paperSizes[paper].widthMm - columns * widthMm - (columns - 1) * betweenMm) / 2,
    topMm: (paperSizes[paper].heightMm - rows * heightMm) / 2,
    acrossMm,
    downMm: heightMm,
  };
}

/** Sheets of labels of the sizes that office paper is sold in; from memory. */
export const labelSheets: readonly LabelSheet[] = [
  sheet("eight", "A4", [2, 4], { widthMm: 99.1, heightMm: 67.7, betweenMm: 2.5 }),
  sheet("twenty-one", "A4", [3, 7], { widthMm: 63.5, heightMm: 38.1, betweenMm: 2.5 }),
  sheet("ten", "Letter", [2, 5], {
    widthMm: 4 * mmPerInch,
    heightMm: 2 * mmPerInch,
    betweenMm: (3 / 16) * mmPerInch,
  }),
];
