import { linkSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { setImmediate as turn } from "node:timers/promises";
import type { OutputFile } from "../../markup/output.ts";
import { type Fingerprint, fingerprintOfFile } from "../../model/fingerprint.ts";
import { type FileList, listName, readList, textOfWritten } from "./file-list.ts";
import { sameContent } from "./fingerprint.ts";
import { nextIn, note, type WorkFolder } from "./work-folder.ts";

/**
 * Writes all files and their list into the next output. Each is noted before it is written, and written in one go, so
 * that a signal finds either nothing of it or all. What the old output has just so is not written: the file there gets
 * a second name in the next one.
 *
 * @param target where the old output lies
 * @returns the list, with itself in it, and the paths of what the old output has, too
 */
export async function stage(
  work: WorkFolder,
  target: string,
  files: AsyncIterable<OutputFile>,
): Promise<{ readonly list: FileList; readonly lent: ReadonlySet<string> }> {
  const list = new Map<string, Fingerprint>();
  const lent = new Set<string>();
  const old = readList(target);
  const folders = new Set<string>();
  const makeFolder = (folder: string) => {
    if (!folders.has(folder)) mkdirSync(folder, { recursive: true });
    folders.add(folder);
  };
  const write = (given: OutputFile) => {
    const { path } = given;
    const fingerprint = fingerprintOfFile(given);
    note(work, ["file", path, fingerprint]);
    const file = join(nextIn(work), path);
    makeFolder(dirname(file));
    // The list itself is new each time: its date tells when the output was made.
    const isOld = path !== listName && old?.has(path) && lend(work, join(target, path), file, fingerprint);
    if (isOld) lent.add(path);
    else writeFileSync(file, given.content, { flag: "wx" });
    list.set(path, fingerprint);
  };
  mkdirSync(nextIn(work));
  for await (const file of files) {
    write(file);
    // Making files gives no turn to anything else by itself, and a signal waits for one.
    await turn();
  }
  write({ path: listName, content: textOfWritten(list) });
  return { list, lent };
}

/** Gives a file a second name where it is as it should be, and the disk allows that. */
function lend({ seen }: WorkFolder, from: string, to: string, asIt: Fingerprint): boolean {
  try {
    if (!sameContent(seen.fingerprint(from), asIt)) return false;
    linkSync(from, to);
  } catch {
    return false;
  }
  seen.named(to);
  return true;
}
