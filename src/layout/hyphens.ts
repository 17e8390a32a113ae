import { createRequire } from "node:module";
import { type Fonts, type Hyphenate, softHyphen } from "./fonts.ts";

/** What `hyphen` gives for a language. */
interface Patterns {
  hyphenateSync(
    text: string,
    options: { readonly hyphenChar: string; readonly minWordLength: number },
  ): string;
}

/** Words with fewer letters stay whole. */
const leastLetters = 7;

/** How a language (a BCP 47 tag) parts its words, by Liang's patterns for it; English stays whole. */
export function hyphensOf(language: string): Hyphenate | undefined {
  const [tag = language] = language.toLowerCase().split("-");
  const patterns = tag === "en" ? undefined : patternsOf(tag);
  const options = { hyphenChar: softHyphen, minWordLength: leastLetters };
  return patterns && ((word) => patterns.hyphenateSync(word, options).split(softHyphen));
}

function patternsOf(tag: string): Patterns | undefined {
  if (!/^[a-z]{2,3}$/.test(tag)) return undefined;
  try {
    return createRequire(import.meta.url)(`hyphen/${tag}`);
  } catch {
    return undefined; // There are no patterns for it: its words stay whole.
  }
}

/** Fonts that part the words of a language at the ends of lines. */
export function hyphenating<F extends Fonts>(fonts: F, language: string): F {
  const hyphenate = hyphensOf(language);
  return hyphenate ? { ...fonts, hyphenate } : fonts;
}
