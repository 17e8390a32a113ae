import { serialize } from "node:v8";
import { resultKey } from "../src/cli/boards.ts";
import { checkAll } from "../src/cli/check-anew.ts";
import { disk } from "../src/cli/disk.ts";
import { readSources, type World } from "../src/content/world.ts";
import { keeping, type Store } from "../src/model/kept.ts";

/**
 * What is the same in all guides that borrow: of a file of the library what is read of it, the sums of a rig where float, shot and
 * water are, and, where words, units and paper are the usual ones, that a text fits its paper and drawings their pages.
 */
const kinds = [
  ...["yaml", "read", "notes", "markdown"],
  ...["rig", "depths of rig", "water of rig"],
  ...["handout", "tried page"],
];

/**
 * Checks the library as guides in these languages borrow it.
 *
 * @returns what is kept of them by then, for the tool to find
 */
export async function readyLibrary(library: string, languages: readonly string[]): Promise<Uint8Array> {
  const kept = new Map<string, Uint8Array>();
  const store: Store = {
    find: () => undefined,
    put(kind, from, value) {
      if (kinds.includes(kind)) kept.set(resultKey(kind, from), serialize(value));
    },
  };
  for (const language of languages) {
    const sources = await readSources(guideIn(language), ["guide"], library);
    const lent = new Map([...sources].filter(([, { fromLibrary, under }]) => fromLibrary || under));
    const { counts } = await checkAll(lent, keeping(store), undefined);
    if (!counts) throw new Error(`the library in ${language} is not right`);
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
