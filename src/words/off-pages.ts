import type { WordTree } from "../model/word-tree.ts";

const known = new WeakMap<WordTree, WordTree>();

/** Words without those of pages, the same of the same words: what asks for none of these is no other for another word of pages. */
export function wordsOffPages(words: WordTree): WordTree {
  const { page: _, ...others } = words;
  const offPages = known.get(words) ?? others;
  known.set(words, offPages);
  return offPages;
}
