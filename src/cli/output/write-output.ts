import { existsSync, mkdirSync, renameSync } from "node:fs";
import { dirname, join } from "node:path";
import type { OutputFile } from "../../markup/output.ts";
import { differences, type FileList } from "./file-list.ts";
import { refuseProtected, requireOwnFolder, truePlace } from "./own-folder.ts";
import { makeWorkFolder, removeWorkFolder, type WorkFolder, writeNext } from "./work-folder.ts";

/** What is to be written where. */
interface Asked {
  /** The output folder as it was asked for. */
  readonly out: string;
  /** Never written to. */
  readonly contentFolders: readonly string[];
  /** Takes a line for the person who builds. */
  tell(line: string): unknown;
}

/**
 * Writes all files into a folder beside the output folder and swaps the two at the end, so that the output is the
 * old one or the new one and never half of each.
 *
 * @returns how many files were written
 * @throws UsageError where the output folder holds something that no build wrote
 */
export async function writeOutput(
  { out, contentFolders, tell }: Asked,
  files: AsyncIterable<OutputFile>,
): Promise<number> {
  const target = truePlace(out);
  refuseProtected(target, out, contentFolders);
  requireOwnFolder(target, out);
  mkdirSync(dirname(target), { recursive: true });
  const work = makeWorkFolder(dirname(target));
  try {
    const list = await writeNext(work, files);
    requireOwnFolder(target, out);
    swap(work, target, list);
    return list.size - 1;
  } finally {
    for (const path of removeWorkFolder(work)) tell(`${path} was not written by a build; it is kept there`);
  }
}

/** Puts the next output in the place of the old one. */
function swap(work: WorkFolder, target: string, list: FileList): void {
  requireWhole(work.next, list);
  const replaces = existsSync(target);
  if (replaces) renameSync(target, work.before);
  try {
    renameSync(work.next, target);
  } catch (error) {
    if (replaces) renameSync(work.before, target);
    throw error;
  }
  requireWhole(target, list);
}

function requireWhole(folder: string, list: FileList): void {
  const { unknown, changed, missing } = differences(folder, list);
  const wrong = [...unknown, ...changed, ...missing];
  if (wrong.length > 0) throw new Error(`${join(folder, wrong[0]!)} is not as it was written`);
}
