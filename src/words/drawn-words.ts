import type { WordTree } from "../model/word-tree.ts";

/** Words without those of pages: no drawing asks for one, so another word of a page draws nothing again. */
export function drawnWords({ page: _, ...others }: WordTree): WordTree {
  return others;
}
