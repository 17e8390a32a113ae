import type { WordTree } from "../model/word-tree.ts";
import { wordsOffPages } from "./off-pages.ts";

/** Parts of a page's words that stand on paper, too. */
const onPaperToo = ["menu", "soundings"] as const;

/** Words without those of pages alone: another word of a page makes no paper another. */
export function paperWords(words: WordTree): WordTree {
  const { page } = words;
  const parts = typeof page === "object" ? page : {};
  const kept = onPaperToo.flatMap((part) =>
    parts[part] === undefined ? [] : [[part, parts[part]] as const],
  );
  return { ...wordsOffPages(words), page: Object.fromEntries(kept) };
}
