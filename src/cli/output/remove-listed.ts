import { lstatSync, rmdirSync, unlinkSync } from "node:fs";
import { join } from "node:path";
import { type FileList, foldersOf, listName } from "./file-list.ts";
import { sameContent } from "./fingerprint.ts";
import type { Seen } from "./seen.ts";
import { walk } from "./walk.ts";

/**
 * Deletes what a list accounts for from a folder, then the folder, and nothing else: what is changed or unknown stays,
 * and so do the folders that hold it. The list goes last, so that a deletion that was cut short can be taken up again.
 *
 * @param folder what is a link is not followed
 * @param torn also delete listed files that are shorter than listed: a killed build did not finish writing them
 * @returns paths of what stayed, below the folder
 */
export function removeListed(folder: string, list: FileList, seen: Seen, torn = false): readonly string[] {
  const folders = foldersOf(list);
  const stayed: string[] = [];
  const isOurs = (path: string) => {
    const listed = list.get(path);
    if (!listed) return false;
    const file = join(folder, path);
    // What has another name is not lost with this one.
    if (lstatSync(file).nlink > 1) return true;
    const found = seen.fingerprint(file);
    return sameContent(found, listed) || (torn && found.bytes < listed.bytes);
  };
  const isEmptied = (path: string) => !stayed.some((kept) => kept.startsWith(`${path}/`));
  const listLast = walk(folder).sort((a, b) => Number(a.path === listName) - Number(b.path === listName));
  for (const { path, kind } of listLast) {
    if (kind === "file" && isOurs(path)) unlinkSync(join(folder, path));
    else if (kind === "folder" && folders.has(path) && isEmptied(path)) rmdirSync(join(folder, path));
    else if (kind !== "folder" || !folders.has(path)) stayed.push(path);
  }
  if (stayed.length === 0 && lstatSync(folder, { throwIfNoEntry: false })?.isDirectory()) rmdirSync(folder);
  return stayed;
}
