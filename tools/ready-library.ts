import { serialize } from "node:v8";
import { checkSources } from "../src/build/check-sources.ts";
import { resultKey } from "../src/cli/boards.ts";
import { disk } from "../src/cli/disk.ts";
import { readSources, type World } from "../src/content/world.ts";
import { keeping, type Store } from "../src/model/kept.ts";

/** What of a file of the library is the same in all guides that borrow from it. */
const kinds = ["yaml", "read", "notes"];

/**
 * Reads the library as guides in these languages borrow it.
 *
 * @returns what is kept of its files by then, for the tool to find
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
    checkSources(lent, keeping(store));
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
