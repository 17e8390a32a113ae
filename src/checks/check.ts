import { digestOf, digestOnce } from "../model/digest.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import type { Library, MarkdownText } from "../model/library.ts";
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
  /** Stands for words and figures. */
  readonly saidFrom: string;
  /** Keeps what there is to tell of a text, by the text and by what else that depends on. */
  readonly keep?: Keep;
}

/**
 * What there is to tell at a text, by what it depends on besides the text. One that is only lent is not for its borrower to mend.
 *
 * @param from that is the same for all texts
 * @param fromOf that is another for each
 */
export function toldOnce<T extends MarkdownText>(
  { library, keep = makeAnew }: Pick<Checked, "library" | "keep">,
  kind: string,
  from: unknown,
  tell: (text: T) => readonly Message[],
  fromOf: (text: T) => unknown = () => [],
): (text: T) => readonly Message[] {
  const others = digestOf(from);
  const lent = new Set(library.lent.values());
  return (text) =>
    lent.has(text.path)
      ? []
      : keep(kind, digestOf(others, text.path, digestOnce(text.body), fromOf(text)), () => tell(text));
}

/** Looks for one kind of weakness in content that is otherwise right, and gives a warning for each. */
export type ContentCheck = (checked: Checked) => readonly Message[];
