import type { Overflow } from "../layout/overflow.ts";
import type { Place } from "../model/message.ts";
import type { Words } from "../words/words.ts";

/** Something on a card or handout that is larger than its place. */
export interface DoesNotFit extends Overflow {
  /** What it is printed for: a rig's or lesson's id. */
  readonly of: string;
  readonly format: string;
  readonly side: string;
  /** The part of the content that is to be shortened, where there is a file of it. */
  readonly place?: Place;
}

/** Thrown before anything is printed, with all that does not fit. */
export class DoesNotFitError extends Error {
  override readonly name = "DoesNotFitError";

  constructor(
    readonly problems: readonly DoesNotFit[],
    words: Words,
  ) {
    super(problems.map((problem) => doesNotFitText(problem, words)).join("\n"));
  }
}

/** What does not fit as a sentence. */
export function doesNotFitText(
  { of, format, side, field, direction, overMm }: DoesNotFit,
  words: Words,
): string {
  return words(`card.does-not-fit.${direction}`, { of, format, side, field, over: overMm.toFixed(1) });
}
