import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import { paperSizes } from "../paper-sizes.ts";

/**
 * The small and the large page of a handout for each paper. Type is at least the 12 pt of clear print.
 * Source: UKAAF G003, Creating clear print and large print documents, 2019.
 */
export const handoutFormats: Readonly<Record<"A4" | "Letter", readonly [HandoutFormat, HandoutFormat]>> = {
  A4: [
    { name: "A5", ...paperSizes.A5, sideMm: 14, topMm: 18, bottomMm: 17, bodyPt: 12 },
    { name: "A4", ...paperSizes.A4, sideMm: 22, topMm: 24, bottomMm: 22, bodyPt: 14 },
  ],
  Letter: [
    { name: "half Letter", ...paperSizes["half Letter"], sideMm: 12, topMm: 18, bottomMm: 17, bodyPt: 12 },
    { name: "Letter", ...paperSizes.Letter, sideMm: 22, topMm: 22, bottomMm: 22, bodyPt: 14 },
  ],
};
