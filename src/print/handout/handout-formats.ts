import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import { paperSizes } from "../sheets/paper-sizes.ts";

/** The pages that handouts are laid out on. */
interface HandoutFormats {
  /** Half a sheet, which a booklet folds to. */
  readonly half: HandoutFormat;
  /** A whole sheet in two columns, as long as a line of small print is read with ease. */
  readonly whole: HandoutFormat;
  /** A whole sheet in one column, for texts whose tables or pictures are wider than half of it. */
  readonly wide: HandoutFormat;
}

/** Short lines are read with less room between them. */
const narrow = { lineHeight: 1.25, gapsMm: { usual: 2, close: 1.5 } } as const;
const open = { lineHeight: 1.35, gapsMm: { usual: 2.4, close: 1.8 } } as const;

const half = { topMm: 18, bottomMm: 17, bodyPt: 12, columns: 1, gutterMm: 0, ...open } as const;
const whole = {
  sideMm: 13,
  topMm: 18,
  bottomMm: 17,
  bodyPt: 11,
  columns: 2,
  gutterMm: 7,
  ...narrow,
} as const;
const wide = { ...whole, sideMm: 30, bodyPt: 12, columns: 1, gutterMm: 0, ...open } as const;

/**
 * Half sheets have the 12 pt of clear print (UKAAF G003, Creating clear print and large print documents, 2019), whole
 * ones 11 pt in lines of about 45 signs.
 */
export const handoutFormats: Readonly<Record<"A4" | "Letter", HandoutFormats>> = {
  A4: {
    half: { name: "A5", ...paperSizes.A5, sideMm: 14, ...half },
    whole: { name: "A4", ...paperSizes.A4, ...whole },
    wide: { name: "A4", ...paperSizes.A4, ...wide },
  },
  Letter: {
    half: { name: "half Letter", ...paperSizes["half Letter"], sideMm: 12, ...half },
    whole: { name: "Letter", ...paperSizes.Letter, ...whole },
    wide: { name: "Letter", ...paperSizes.Letter, ...wide },
  },
};
