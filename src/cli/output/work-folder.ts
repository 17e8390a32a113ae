import {
  appendFileSync,
  closeSync,
  lstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmdirSync,
  unlinkSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import type { Fingerprint } from "../../model/fingerprint.ts";
import { type FileList, readList } from "./file-list.ts";
import { forget, remember } from "./notes.ts";
import { type Owner, outputKey, ownerOf, workName } from "./owner.ts";
import { removeListed } from "./remove-listed.ts";
import { type Seen, type Sights, seenFiles } from "./seen.ts";

/** A folder beside the output that one build makes for itself: its lock, its journal, and what is not yet in place. */
export interface WorkFolder {
  readonly path: string;
  readonly owner: Owner;
  /** What was found in the files of the output that is and of that to be. */
  readonly seen: Seen;
}

/** The output to be. */
export const nextIn = (work: WorkFolder) => join(work.path, "next");
/** The output that was, while the two are swapped. */
export const beforeIn = (work: WorkFolder) => join(work.path, "before");
/** What the build is about to do, a line each, written before it is done. */
const journalIn = (work: Pick<WorkFolder, "path">) => join(work.path, "journal");

type JournalLine =
  | readonly ["output", string]
  | readonly ["file", string, Fingerprint]
  | readonly ["in place"];

/**
 * Makes a work folder; its name is new, so nothing that was there before is ever written to or deleted.
 *
 * @param sights what an earlier build has seen in the output
 */
export function makeWorkFolder(parent: string, output: string, sights?: Sights): WorkFolder {
  const work = workFolderAt(join(parent, workName(outputKey(output))), sights)!;
  remember(work.path);
  try {
    mkdirSync(work.path);
    note(work, ["output", output]);
  } catch (error) {
    if (lstatSync(work.path, { throwIfNoEntry: false })) removeWorkFolder(work);
    else forget(work.path);
    throw error;
  }
  return work;
}

/** The work folder of this path; undefined where its name is not one. */
export function workFolderAt(path: string, sights?: Sights): WorkFolder | undefined {
  const owner = ownerOf(basename(path));
  // The journal was written last at a time that the disk has put on it.
  const nowNs = () => lstatSync(journalIn({ path }), { bigint: true, throwIfNoEntry: false })?.mtimeNs ?? 0n;
  return owner && { path, owner, seen: seenFiles(nowNs, sights) };
}

/** The work folders beside each other in a folder; none where it is not there. */
export function workFoldersIn(parent: string): WorkFolder[] {
  if (!lstatSync(parent, { throwIfNoEntry: false })) return [];
  return readdirSync(parent, { withFileTypes: true }).flatMap((entry) => {
    const work = entry.isDirectory() ? workFolderAt(join(parent, entry.name)) : undefined;
    return work ? [work] : [];
  });
}

/** Journals that are written to: to open one for each of thousands of lines takes longer than to write them. */
const opened = new WeakMap<WorkFolder, number>();

/** Writes a line into the journal. */
export function note(work: WorkFolder, line: JournalLine): void {
  const journal = opened.get(work) ?? openSync(journalIn(work), "a");
  opened.set(work, journal);
  appendFileSync(journal, `${JSON.stringify(line)}\n`);
}

/** Ends writing; whoever notes more opens the journal again. */
function closeJournal(work: WorkFolder): void {
  const journal = opened.get(work);
  opened.delete(work);
  if (journal !== undefined) closeSync(journal);
}

/** What a build had begun, as its journal tells. */
export interface Begun {
  /** The name of the output that is written; undefined where the build was stopped before it said so. */
  readonly output: string | undefined;
  /** Whether the next output was put in the place of the old one, which is then no longer needed. */
  readonly isInPlace: boolean;
  /** The files that were being written for the next output. */
  readonly files: FileList;
}

export function begunIn(work: WorkFolder): Begun {
  const lines = journal(work);
  return {
    output: lines.flatMap((line) => (line[0] === "output" ? [line[1]] : []))[0],
    isInPlace: lines.some(([what]) => what === "in place"),
    files: new Map(lines.flatMap((line) => (line[0] === "file" ? [[line[1], line[2]] as const] : []))),
  };
}

/** The lines of the journal; one that was cut off tells of something not yet begun. */
function journal(work: WorkFolder): readonly JournalLine[] {
  if (!lstatSync(journalIn(work), { throwIfNoEntry: false })?.isFile()) return [];
  return readFileSync(journalIn(work), "utf8")
    .split("\n")
    .flatMap((line) => {
      try {
        return [JSON.parse(line)];
      } catch {
        return [];
      }
    });
}

/**
 * Deletes a work folder with what builds wrote into it. Where somebody else put something there, it is kept under a
 * name that no build looks for.
 *
 * @returns where it is kept; undefined where it is gone
 */
export function removeWorkFolder(work: WorkFolder, { files } = begunIn(work)): string | undefined {
  closeJournal(work);
  const stayed = [
    ...removeListed(nextIn(work), files, work.seen, true),
    ...removeListed(beforeIn(work), readList(beforeIn(work)) ?? new Map(), work.seen),
  ];
  const others = readdirSync(work.path).filter((name) => join(work.path, name) !== journalIn(work));
  if (stayed.length > 0 || others.length > 0) {
    const kept = join(dirname(work.path), basename(work.path).replace(".dotdown-", "dotdown-kept-"));
    renameSync(work.path, kept);
    forget(work.path);
    return kept;
  }
  if (lstatSync(journalIn(work), { throwIfNoEntry: false })) unlinkSync(journalIn(work));
  rmdirSync(work.path);
  forget(work.path);
  return undefined;
}
