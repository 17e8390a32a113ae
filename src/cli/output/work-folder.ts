import { randomBytes } from "node:crypto";
import {
  appendFileSync,
  lstatSync,
  mkdirSync,
  readFileSync,
  rmdirSync,
  unlinkSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { ContentError } from "../../build/build.ts";
import type { OutputFile } from "../../markup/output.ts";
import { type FileList, listName, listText, readList } from "./file-list.ts";
import { type Fingerprint, fingerprintOf } from "./fingerprint.ts";
import { removeListed } from "./remove-listed.ts";

/** A folder beside the output that one build makes for itself, and what is in it. */
export interface WorkFolder {
  readonly path: string;
  /** The output to be. */
  readonly next: string;
  /** The output that was, while the two are swapped. */
  readonly before: string;
  /** A line for each file of `next`, written before the file is. */
  readonly log: string;
}

export const workFolderAt = (path: string): WorkFolder => ({
  path,
  next: join(path, "next"),
  before: join(path, "before"),
  log: join(path, "log"),
});

/** Makes a work folder; its name is new, so nothing that was there before is ever written to or deleted. */
export function makeWorkFolder(parent: string): WorkFolder {
  const work = workFolderAt(join(parent, `.dotdown-${randomBytes(8).toString("hex")}`));
  mkdirSync(work.path);
  return work;
}

/**
 * Writes all files and their list into the next output.
 *
 * @returns the list, with itself in it
 * @throws ContentError where two files have one address, on disks that do not tell large letters from small ones too
 */
export async function writeNext(work: WorkFolder, files: AsyncIterable<OutputFile>): Promise<FileList> {
  const list = new Map<string, Fingerprint>();
  const addresses = new Set<string>();
  const write = ({ path, content }: OutputFile) => {
    const folded = path.normalize("NFC").toLowerCase();
    if (addresses.has(folded))
      throw new ContentError(`two things in the content make the file ${path}; rename one`);
    addresses.add(folded);
    const fingerprint = fingerprintOf(content);
    appendFileSync(work.log, `${JSON.stringify([path, fingerprint])}\n`);
    const file = join(work.next, path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, content, { flag: "wx" });
    list.set(path, fingerprint);
  };
  mkdirSync(work.next);
  for await (const file of files) write(file);
  write({ path: listName, content: listText(list) });
  return list;
}

/** The files that the log says were being written; a last line that was cut off is of a file not yet begun. */
function logged(work: WorkFolder): FileList {
  if (!lstatSync(work.log, { throwIfNoEntry: false })?.isFile()) return new Map();
  const lines = readFileSync(work.log, "utf8").split("\n").slice(0, -1);
  return new Map(lines.map((line) => JSON.parse(line) as [string, Fingerprint]));
}

/**
 * Deletes a work folder with what builds wrote into it.
 *
 * @returns paths of what somebody else put there, which stay with it
 */
export function removeWorkFolder(work: WorkFolder): readonly string[] {
  const stayed = [
    ...removeListed(work.next, logged(work), true).map((path) => join(work.next, path)),
    ...removeListed(work.before, readList(work.before) ?? new Map()).map((path) => join(work.before, path)),
  ];
  if (stayed.length > 0) return stayed;
  if (lstatSync(work.log, { throwIfNoEntry: false })) unlinkSync(work.log);
  rmdirSync(work.path);
  return [];
}
