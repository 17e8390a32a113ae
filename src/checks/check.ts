import type { Library } from "../model/library.ts";
import type { Message } from "../model/message.ts";
import type { SolvedRig } from "../model/solved.ts";
import type { Figures } from "../words/figures.ts";
import type { Words } from "../words/words.ts";

/** What a check of the content looks at. */
export interface Checked {
  readonly library: Library;
  readonly rigs: readonly SolvedRig[];
  /** Figures as the guide shows them. */
  readonly figures: Figures;
  readonly words: Words;
}

/** Looks for one kind of weakness in content that is otherwise right, and gives a warning for each. */
export type ContentCheck = (checked: Checked) => readonly Message[];
