import { basename, dirname } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { clearAfter, isAtWork, rivalsOf, type Tell } from "./leftovers.ts";
import { isHere, outputKey } from "./owner.ts";
import type { Sights } from "./seen.ts";
import { makeWorkFolder, removeWorkFolder, type WorkFolder, workFoldersIn } from "./work-folder.ts";

/**
 * Makes a work folder for an output as soon as no other build has one there; until then it waits, and says so.
 *
 * Who makes a folder first and looks round for others then can never overlook another who does the same: of two that
 * come at once at least one sees the other, and gives way.
 *
 * @param sights gives what the last build has seen in the output
 */
export async function claim(
  target: string,
  out: string,
  tell: Tell,
  sights: () => Sights | undefined,
): Promise<WorkFolder> {
  const parent = dirname(target);
  const key = outputKey(basename(target));
  for (let waits = false; ; ) {
    for (const work of workFoldersIn(parent))
      if (work.owner.output === key && !isAtWork(work)) clearAfter(work, tell);
    const other = workFoldersIn(parent).find((work) => work.owner.output === key && isAtWork(work));
    if (!other) {
      const work = makeWorkFolder(parent, basename(target), sights());
      if (rivalsOf(work).length === 0) return work;
      removeWorkFolder(work);
    } else if (!waits) {
      waits = true;
      tell(`${whose(other)} is writing ${out}; this one waits until it is done`);
    }
    // Not the same time for all, or two that gave way would meet again.
    await pause(50 + Math.random() * 150);
  }
}

function whose({ owner, path }: WorkFolder): string {
  if (isHere(owner)) return `another build (process ${owner.pid})`;
  return `a build on another computer (it counts as dead when ${path} was not touched for ten minutes)`;
}
