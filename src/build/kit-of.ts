import type { DrawingKit } from "../drawing/kit.ts";
import { measureText } from "../drawing/labels/font-metrics.ts";
import { digestOf, digestOnce } from "../model/digest.ts";
import type { Guide, Library } from "../model/library.ts";
import type { WordTree } from "../model/word-tree.ts";
import { makeFigures } from "../words/figures.ts";
import { wordsOffPages } from "../words/off-pages.ts";
import { makeWords, type Words } from "../words/words.ts";

/** What a guide says things with in these words. */
export const kitOf = (guide: Guide, tree: WordTree): DrawingKit =>
  kitSaying(makeWords(tree, guide.language), guide);

/** The same with words that are made. */
export function kitSaying(words: Words, { units, language }: Guide): DrawingKit {
  return { words, figures: makeFigures(units, words, language), measure: measureText };
}

/** What everything but pages is said with. */
export interface KitOffPages extends DrawingKit {
  /** Stands for all that it is made from. */
  readonly saidFrom: string;
}

/** A word of pages is missing there and throws, or what is made with it would not know of that word's change. */
export function kitOffPages({ guide, words }: Pick<Library, "guide" | "words">): KitOffPages {
  const offPages = wordsOffPages(words);
  const { units, language } = guide;
  return { ...kitOf(guide, offPages), saidFrom: digestOf(units, language, digestOnce(offPages)) };
}
