import { lstatSync, readdirSync } from "node:fs";
import { join } from "node:path";

/** Something in a folder: its path below it, with `/`. Links are neither files nor folders, and never followed. */
export interface Entry {
  readonly path: string;
  readonly kind: "file" | "folder" | "other";
}

/** All that is in a folder, what a folder holds before the folder itself. Nothing where there is no such folder. */
export function walk(folder: string): Entry[] {
  if (!lstatSync(folder, { throwIfNoEntry: false })?.isDirectory()) return [];
  const below = (path: string): Entry[] =>
    readdirSync(join(folder, path), { withFileTypes: true }).flatMap((entry): Entry[] => {
      const own = path === "" ? entry.name : `${path}/${entry.name}`;
      if (entry.isDirectory()) return [...below(own), { path: own, kind: "folder" }];
      return [{ path: own, kind: entry.isFile() ? "file" : "other" }];
    });
  return below("");
}
