import { lstatSync, renameSync } from "node:fs";
import { dirname, join } from "node:path";
import { differences, type FileList, isWhole, readList } from "./file-list.ts";
import { type Begun, beforeIn, nextIn, note, type WorkFolder } from "./work-folder.ts";

const isThere = (path: string) => lstatSync(path, { throwIfNoEntry: false }) !== undefined;

/**
 * Puts the next output in the place of the old one. It is held against its list before and after; where it is not what
 * was written, the old one stays or comes back.
 *
 * @param lent paths of what the old output has, too: it was just held against its own list
 */
export function swap(work: WorkFolder, target: string, list: FileList, lent?: ReadonlySet<string>): void {
  const [next, before] = [nextIn(work), beforeIn(work)];
  requireWhole(next, list, work, lent);
  const replaces = isThere(target);
  if (replaces) renameSync(target, before);
  let isIn = false;
  try {
    renameSync(next, target);
    isIn = true;
    requireWhole(target, list, work);
    note(work, ["in place"]);
  } catch (error) {
    if (isIn) renameSync(target, next);
    if (replaces) renameSync(before, target);
    throw error;
  }
}

/** What lies in the output is not what was written there: the disk, or somebody else, changed it. */
export class SpoiltError extends Error {}

function requireWhole(
  folder: string,
  list: FileList,
  { seen }: WorkFolder,
  lent?: ReadonlySet<string>,
): void {
  const { unknown, changed, missing } = differences(folder, list, seen, lent);
  const wrong = [...unknown, ...changed, ...missing];
  if (wrong.length > 0)
    throw new SpoiltError(`${wrong[0]} was changed by something else while it was written`);
}

/**
 * Takes up a swap that was stopped between its two moves: finishes it where the next output is whole, else puts the
 * old one back.
 *
 * @returns what was done, for the person who sees it; undefined where there was nothing to do
 */
export function endSwap(work: WorkFolder, { output, isInPlace }: Begun): string | undefined {
  if (output === undefined || !isThere(beforeIn(work)) || isInPlace) return undefined;
  const target = join(dirname(work.path), output);
  if (isThere(target)) return undefined;
  const next = readList(nextIn(work));
  const isNew = next !== undefined && isWhole(nextIn(work), next, work.seen);
  renameSync(isNew ? nextIn(work) : beforeIn(work), target);
  return isNew
    ? `a build was stopped while it put its output in place; that is done now, in ${target}`
    : `a build was stopped while it put its output in place; the old one is back in ${target}`;
}
