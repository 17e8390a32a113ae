import type { WordTree } from "../../src/model/word-tree.ts";

/** Every sentence of a tree of words with the path that names it. */
export function sentences(tree: WordTree, path = ""): [string, string][] {
  return Object.entries(tree).flatMap(([key, node]): [string, string][] =>
    typeof node === "string" ? [[path + key, node]] : sentences(node, `${path}${key}.`),
  );
}
