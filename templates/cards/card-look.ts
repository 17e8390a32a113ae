import type { Draw } from "../../src/markup/boxes.ts";
import type { CardEdge } from "./card-marks.ts";

/** A picture with the text that stands for it. */
export interface Picture {
  readonly alt: string;
  readonly draw: Draw;
}

/** A picture that is drawn in one size only [mm]. */
export interface SizedPicture extends Picture {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Sizes of type and room on both sides of a card. */
export interface CardLook extends CardEdge {
  readonly marginMm: number;
  readonly wordPt: number;
  readonly figurePt: number;
  /** The one figure to remember, on the front and in the table. */
  readonly settingPt: number;
  readonly rowSettingPt: number;
  readonly lineHeight: number;
  /** Width of the column that names the rows of the shot table [mm]. */
  readonly nameWidthMm: number;
  /** Between paragraphs [mm]. */
  readonly gapMm: number;
  readonly boxHeightMm: number;
  /** Where hook, bait and line stand: on the back where the drawing needs the front for itself. */
  readonly tackleOn: "front" | "back";
  /** Corner of the back that the hole of the front comes to. */
  readonly backPunch: "left" | "right";
}
