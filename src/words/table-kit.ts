import type { Figures } from "./figures.ts";
import type { Words } from "./words.ts";

/** What tables of figures and words need to be told in a guide's language and units. */
export interface TableKit {
  readonly words: Words;
  readonly figures: Figures;
}
