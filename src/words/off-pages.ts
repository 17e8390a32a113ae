import type { Guide } from "../model/library.ts";
import type { WordTree } from "../model/word-tree.ts";

const known = new WeakMap<WordTree, WordTree>();

/** Words without those of pages, the same of the same words: what asks for none of these is no other for another word of pages. */
export function wordsOffPages(words: WordTree): WordTree {
  const { page: _, ...others } = words;
  const offPages = known.get(words) ?? others;
  known.set(words, offPages);
  return offPages;
}

/** A guide without what pages alone show: what is made with it is no other in other colours. */
export type GuideOffPages = Omit<Guide, "colours">;

export function guideOffPages({ colours: _, ...others }: Guide): GuideOffPages {
  return others;
}
