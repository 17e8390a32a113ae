import type { Figures } from "../words/figures.ts";
import type { Words } from "../words/words.ts";
import type { MeasureText } from "./model.ts";

/** What every drawing is handed besides its data: the fixed words, how figures are written, and how wide text is. */
export interface DrawingKit {
  readonly words: Words;
  readonly figures: Figures;
  readonly measure: MeasureText;
}

/** Room for a drawing. */
export interface Box {
  readonly widthMm: number;
  readonly heightMm: number;
}
