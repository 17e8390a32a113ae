import type { Overflow } from "../layout/overflow.ts";
import type { CardPart } from "../model/card-content.ts";
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
  /** What to shorten, where that is known. */
  readonly shorten?: Shortened;
}

/** What is too long: a text by its key in the rig's file, or what the rig has on its line. */
export type Shortened = "title" | "change-first" | "float" | "bait" | "shot";

/** What of something laid out is larger than its place, with what is said of all of it. */
export const notFitting = (
  overflows: readonly Overflow[],
  said: Omit<DoesNotFit, keyof Overflow>,
): DoesNotFit[] => overflows.map((overflow) => ({ ...overflow, ...said }));

/** A card that has no room for all that stands on every card; it is made without. */
export interface CardLacks {
  readonly of: string;
  readonly format: string;
  readonly parts: readonly CardPart[];
  readonly place: Place;
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
  const over = overMm.toFixed(1);
  if (side === "front" || side === "back")
    return words(`card.does-not-fit.${direction}`, { of, format, side, field, over });
  return words(`card.paper-does-not-fit.${direction}`, { format, side, field, over });
}

/** What a card goes without as a sentence. */
export function lacksText({ of, format, parts }: CardLacks, words: Words): string {
  const named = parts.map((part) => words(`card.part.${part}`));
  return words("card.lacks", { of, format, parts: named.join(", ") });
}
