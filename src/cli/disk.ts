import { readdir, readFile } from "node:fs/promises";
import { join, sep } from "node:path";
import type { World } from "../content/world.ts";

/** The disk as the build sees it. */
export const disk: World = {
  async list(folder) {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true });
    const files = entries
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name));
    return files.map((file) => file.slice(join(folder, sep).length).replaceAll(sep, "/")).sort();
  },
  readText: (path) => readFile(path, "utf8"),
};
