import { serialize } from "node:v8";
import { toString as textOf } from "mdast-util-to-string";
import { checkSources } from "../src/build/check-sources.ts";
import { solveRigs } from "../src/build/solve-rigs.ts";
import { allTexts } from "../src/checks/texts.ts";
import { resultKey } from "../src/cli/boards.ts";
import { disk } from "../src/cli/disk.ts";
import { readSources, type World } from "../src/content/world.ts";
import { keeping, type Store } from "../src/model/kept.ts";

/** What of a file of the library is the same in all guides that borrow from it; sums of a rig are where float, shot and water are. */
const kinds = ["yaml", "read", "notes", "markdown", "rig", "depths of rig", "water of rig"];

/**
 * Reads the library as guides in these languages borrow it, and does the sums of its rigs.
 *
 * @returns what is kept of them by then, for the tool to find
 */
export async function readyLibrary(library: string, languages: readonly string[]): Promise<Uint8Array> {
  const kept = new Map<string, Uint8Array>();
  const store: Store = {
    find: () => undefined,
    put(kind, from, value) {
      if (kinds.includes(kind) && value !== undefined) kept.set(resultKey(kind, from), serialize(value));
    },
  };
  for (const language of languages) {
    const sources = await readSources(guideIn(language), ["guide"], library);
    const lent = new Map([...sources].filter(([, { fromLibrary, under }]) => fromLibrary || under));
    const keep = keeping(store);
    const { value: read } = checkSources(lent, keep);
    if (!read) throw new Error(`the library in ${language} cannot be read`);
    for (const { body } of allTexts(read.library)) textOf(body);
    await solveRigs(read.library, read.kit.words, read.kit.figures, keep);
  }
  return serialize(kept);
}

/** The disk, and beside it the shortest guide of one's own. */
function guideIn(language: string): World {
  const text = `title: Guide\npublisher: Club\nedition: 2026-01-01\nlanguage: ${language}\n`;
  const file = { path: "guide.yaml", bytes: text.length };
  return {
    ...disk,
    list: async (folder) => (folder === "guide" ? [file] : disk.list(folder)),
    readText: async (path) => (path === "guide/guide.yaml" ? text : disk.readText(path)),
  };
}
