import type { WordKey } from "../../src/words/word-key.ts";
import type { WordKeyIn, Words, WordValue } from "../../src/words/words.ts";

/** Parts of the words file that pages share with sheets, cards and texts. */
const sharedParts = ["metal", "table", "swim.hazard", "choosing.wind", "choosing.learner"] as const;

type SharedKey = Extract<WordKey, `${(typeof sharedParts)[number]}.${string}`>;

/** A fixed word that pages say: its key below `page.`, or the whole key in a part that others share. */
export type PageKey = WordKeyIn<"page"> | SharedKey;

export type Say = (key: PageKey, values?: Readonly<Record<string, WordValue>>) => string;

function isShared(key: PageKey): key is SharedKey {
  return sharedParts.some((part) => key.startsWith(`${part}.`));
}

/** What pages say things with. */
export function pageWords(words: Words): Say {
  return (key, values) => words(isShared(key) ? key : `page.${key}`, values);
}
