import type { SharedLabels } from "../../src/drawing/rig/rig-labels.ts";
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

/** Sizes of type and room on a side of a card. */
export interface SideLook extends CardEdge {
  readonly marginMm: number;
  readonly wordPt: number;
  /** Names, and figures of the drawing or the table. */
  readonly figurePt: number;
  readonly lineHeight: number;
}

export interface FrontLook extends SideLook {
  /** The one figure to remember. */
  readonly settingPt: number;
  /** Where hook, bait and line stand: on the back where the drawing needs the front for itself. */
  readonly tackleOn: "front" | "back";
  /** Which shot of the drawing may share a label. */
  readonly shared: SharedLabels;
}

export interface BackLook extends SideLook {
  /** The same figure in the table. */
  readonly settingPt: number;
  /** Width of the column that names the rows of a table with a column a depth [mm]. */
  readonly nameWidthMm: number;
  /** Above and below the text of a row [mm]. */
  readonly rowGapMm: number;
  /** Between paragraphs [mm]. */
  readonly gapMm: number;
  /** Room to write in by hand [mm]. */
  readonly writeInMm: number;
  /** What is said below the table: each in lines of its own, or one after the other. */
  readonly said: "apart" | "run on";
  /** Corner of the back that the hole of the front comes to. */
  readonly punch: "left" | "right";
}
