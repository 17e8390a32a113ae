import { disk } from "../../src/cli/disk.ts";
import type { World } from "../../src/content/world.ts";

const own = "title: Unser Wasser\npublisher: Makebelieve-Angler\nlanguage: de\nedition: 2026-11-20\n";

/** A club's guide in German, in the folder `club`, that takes all that is shipped in it. */
export const germanClub: World = {
  ...disk,
  list: async (folder) =>
    folder === "club" ? [{ path: "guide.yaml", bytes: own.length }] : disk.list(folder),
  readText: async (path) => (path === "club/guide.yaml" ? own : disk.readText(path)),
};
