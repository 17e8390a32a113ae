import type { HandoutFormat } from "../../../templates/handouts/format.ts";
import { paperSizes } from "../sheets/paper-sizes.ts";

/**
 * The page that handouts are laid out on for each paper, half of a sheet. Type is the 12 pt of clear print.
 * Source: UKAAF G003, Creating clear print and large print documents, 2019.
 */
export const handoutFormats: Readonly<Record<"A4" | "Letter", HandoutFormat>> = {
  A4: { name: "A5", ...paperSizes.A5, sideMm: 14, topMm: 18, bottomMm: 17, bodyPt: 12 },
  Letter: {
    name: "half Letter",
    ...paperSizes["half Letter"],
    sideMm: 12,
    topMm: 18,
    bottomMm: 17,
    bodyPt: 12,
  },
};
