import { renameSync } from "node:fs";
import { dirname, join } from "node:path";
import { forget, remember } from "./notes.ts";
import { isAlive, workName } from "./owner.ts";
import { endSwap } from "./swap.ts";
import { begunIn, removeWorkFolder, type WorkFolder, workFolderAt, workFoldersIn } from "./work-folder.ts";

/** Takes a line for the person at the terminal. */
export type Tell = (line: string) => unknown;

export const isAtWork = ({ owner, path }: WorkFolder) => isAlive(owner, path);

/** The other work folders of the same output. */
export const rivalsOf = (work: WorkFolder) =>
  workFoldersIn(dirname(work.path)).filter(
    ({ owner, path }) => owner.output === work.owner.output && path !== work.path,
  );

/** Ends what a dead build began, and deletes what it left; leaves alone what somebody else is at. */
export function clearAfter(dead: WorkFolder, tell: Tell): void {
  const work = adopt(dead);
  if (!work) return;
  if (rivalsOf(work).some(isAtWork)) {
    renameSync(work.path, dead.path);
    return;
  }
  endWork(work, tell);
}

/** Leaves the output whole and deletes the work folder. */
export function endWork(work: WorkFolder, tell: Tell): void {
  const begun = begunIn(work);
  const done = endSwap(work, begun);
  if (done) tell(done);
  const kept = removeWorkFolder(work, begun);
  if (kept) tell(`what no build wrote was found beside the output, and is kept in ${kept}`);
}

/** Takes a dead owner's work folder over by its name: of all who try at once, one succeeds. */
function adopt(dead: WorkFolder): WorkFolder | undefined {
  const path = join(dirname(dead.path), workName(dead.owner.output));
  remember(path);
  try {
    renameSync(dead.path, path);
  } catch (error) {
    forget(path);
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw error;
  }
  forget(dead.path);
  return workFolderAt(path);
}

/** Clears up in these folders after builds that were stopped; what cannot be cleared is told, and hinders nothing. */
export function clearLeftovers(folders: Iterable<string>, tell: Tell): void {
  for (const folder of folders) {
    try {
      for (const work of workFoldersIn(folder)) if (!isAtWork(work)) clearAfter(work, tell);
    } catch (error) {
      tell(`what a stopped build left in ${folder} cannot be cleared up: ${(error as Error).message}`);
    }
  }
}
