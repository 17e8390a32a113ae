import { lstatSync, readFileSync } from "node:fs";
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import type { ListedFile, World } from "../content/world.ts";
import { exitCodes } from "./command.ts";
import { listName } from "./output/file-list.ts";
import { reading, Trouble } from "./trouble.ts";

/** The disk as the build sees it. */
export const disk: World = {
  async list(folder) {
    const files = await listBelow(folder, "");
    return files.sort((a, b) => (a.path < b.path ? -1 : 1));
  },
  // Read as bytes first: a text that is too long for the system is then told apart from a fault.
  readText: (path) =>
    reading(path, async () => (await unlessGone(bytesOf(path), undefined))?.toString("utf8")),
  readBytes: (path) => reading(path, () => unlessGone(bytesOf(path), undefined)),
};

/** What is read, or something else where it has vanished. */
const unlessGone = <T, U>(read: Promise<T>, otherwise: U): Promise<T | U> =>
  read.catch((error) => {
    if (error.code === "ENOENT") return otherwise;
    throw error;
  });

/**
 * The files of a folder and all below it. What is hidden is passed over, as editors and file managers keep their own
 * there, and so is the output of a build.
 *
 * @throws Trouble at a link: through one, somebody else's text could get into a guide unseen
 */
async function listBelow(folder: string, below: string): Promise<ListedFile[]> {
  const here = join(folder, below);
  const entries = await reading(here, () => {
    const found = readdir(here, { withFileTypes: true });
    return below === "" ? found : unlessGone(found, []);
  });
  if (entries.some(({ name }) => name === listName)) return [];
  const files: ListedFile[] = [];
  for (const entry of entries.filter(({ name }) => !name.startsWith("."))) {
    const path = below === "" ? entry.name : `${below}/${entry.name}`;
    if (entry.isSymbolicLink())
      throw new Trouble(
        `${join(folder, path)} is a link, and content is not read through links; nothing was written. To go on, put there what it leads to`,
        exitCodes.unreadable,
      );
    if (entry.isDirectory()) files.push(...(await listBelow(folder, path)));
    if (entry.isFile()) {
      const bytes = await reading(join(folder, path), () =>
        unlessGone(sizeOf(join(folder, path)), undefined),
      );
      if (bytes !== undefined) files.push({ path, bytes });
    }
  }
  return files;
}

/** Asked at once: there are many, and waiting for each takes longer than the answer. */
const sizeOf = async (file: string) => lstatSync(file).size;
const bytesOf = async (file: string) => readFileSync(file);
