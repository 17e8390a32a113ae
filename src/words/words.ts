import type { WordTree } from "../model/word-tree.ts";
import { makeNumberText } from "./number-text.ts";
import type { WordKey } from "./word-key.ts";

/** The value that fills a gap in a sentence. */
export type WordValue = string | number;

/**
 * The fixed words of one language: `words("rig.depth", { depth: "1.5 m" })`. The key names a sentence in
 * `content/words/<language>.yaml` by its path, gaps are written `{depth}`.
 */
export type Words = (key: WordKey, values?: Readonly<Record<string, WordValue>>) => string;

/** A sentence that is asked for is not in the words file, or has a gap that nothing fills. */
export class WordsError extends Error {}

/**
 * A gap, `{depth}`, or one with a text for each plural of the language, as Unicode's MessageFormat writes it:
 * `{count, plural, one {# shot} other {# shot}}`. Source of the names: Unicode CLDR, plural rules.
 */
export const gapPattern = /\{(\w+)(?:, plural,((?:\s*\w+ \{[^{}]*\})+))?\}/g;

/**
 * Words from a tree of sentences in a language (a BCP 47 tag). Numbers are written as it writes them.
 *
 * @throws WordsError where a key names no sentence or a gap has no value; the tests hold the shipped words against the
 *   code, so it is an author's own words file that lacks something
 */
export function makeWords(tree: WordTree, language = "en"): Words {
  const rules = new Intl.PluralRules(language);
  const number = makeNumberText(language);
  const known = new Map<WordKey, readonly Part[]>();
  const sentence = (key: WordKey): readonly Part[] => {
    const parts = known.get(key) ?? partsOf(sentenceOf(tree, key));
    known.set(key, parts);
    return parts;
  };
  return (key, values = {}) => {
    let said = "";
    for (const part of sentence(key)) {
      if (typeof part === "string") {
        // An abbreviation at the end of a sentence brings the stop ("e. V.", "Ltd."); a second is wrong in every language.
        said += part.startsWith(".") && said.endsWith(".") ? part.slice(1) : part;
        continue;
      }
      const value = values[part.gap];
      if (value === undefined) throw new WordsError(`no value for "{${part.gap}}" in the words "${key}"`);
      const text = typeof value === "number" ? number(value, mostDecimals) : value;
      said +=
        part.plurals === undefined
          ? text
          : pluralOf(part.plurals, rules.select(Number(value))).replaceAll("#", text);
    }
    return said;
  };
}

/** What a sentence is made of: words of its own, and gaps. */
type Part = string | { readonly gap: string; readonly plurals: string | undefined };

function partsOf(sentence: string): Part[] {
  const parts: Part[] = [];
  let from = 0;
  for (const { 0: whole, 1: gap = "", 2: plurals, index } of sentence.matchAll(gapPattern)) {
    parts.push(sentence.slice(from, index), { gap, plurals });
    from = index + whole.length;
  }
  parts.push(sentence.slice(from));
  return parts;
}

/** The sentence of a key as it is written, if there is one. */
export function sentenceIn(tree: WordTree, key: WordKey): string | undefined {
  let node: string | WordTree | undefined = tree;
  for (const part of key.split(".")) node = typeof node === "object" ? node[part] : undefined;
  return typeof node === "string" ? node : undefined;
}

function sentenceOf(tree: WordTree, key: WordKey): string {
  const sentence = sentenceIn(tree, key);
  if (sentence === undefined) throw new WordsError(`no words for "${key}"`);
  return sentence;
}

const mostDecimals = 3;

/** The text of a plural, or what stands for all others. */
function pluralOf(plurals: string, category: Intl.LDMLPluralRule): string {
  const texts = new Map([...plurals.matchAll(/(\w+) \{([^{}]*)\}/g)].map(([, name, text]) => [name, text]));
  return texts.get(category) ?? texts.get("other") ?? "";
}

/** Keys below one part of the words file, without the name of that part. */
export type WordKeyIn<Part extends string> = WordKey extends infer Key
  ? Key extends `${Part}.${infer Rest}`
    ? Rest
    : never
  : never;

/** A name of the model as a part of a key: `rests on the bed` is `rests-on-the-bed`. */
type Hyphened<Name extends string> = Name extends `${infer First} ${infer Rest}`
  ? `${First}-${Hyphened<Rest>}`
  : Name;

export function keyOf<Name extends string>(name: Name): Hyphened<Name> {
  return name.replaceAll(" ", "-") as Hyphened<Name>;
}
