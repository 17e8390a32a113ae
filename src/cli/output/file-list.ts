import { createHash } from "node:crypto";
import { lstatSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { known } from "../../core/lists.ts";
import { type Fingerprint, fingerprintOf } from "../../model/fingerprint.ts";
import { inMemory } from "../../model/kept.ts";
import { sameContent } from "./fingerprint.ts";
import type { Seen } from "./seen.ts";
import { type Entry, walk } from "./walk.ts";

/** Files by their path below a folder, with `/`. */
export type FileList = ReadonlyMap<string, Fingerprint>;

/** The file in an output that lists all others, and so tells what a build may replace. */
export const listName = "dotdown-files.json";

/** The list as text: who wrote it, every path with its size and hash, and a hash over all of that. */
function listText(files: FileList): string {
  const sorted = [...files].sort(([a], [b]) => (a < b ? -1 : 1));
  const signed = {
    tool: "dotdown",
    format: 1,
    files: Object.fromEntries(
      sorted.map(([path, { bytes, sha256 }]): [string, Fingerprint] => [path, { bytes, sha256 }]),
    ),
  };
  const sha256 = createHash("sha256").update(JSON.stringify(signed)).digest("hex");
  return `${JSON.stringify({ ...signed, sha256 }, null, 2)}\n`;
}

/** The list that a text is; undefined where it is not, byte for byte, what {@link listText} writes. */
function parseList(text: string): FileList | undefined {
  try {
    const files: FileList = new Map(Object.entries(JSON.parse(text).files as Record<string, Fingerprint>));
    return listText(files) === text ? files : undefined;
  } catch {
    return undefined;
  }
}

/** Lists of the output that is and of that to be: a build looks at both more than once, and the list of a large one is long. */
const atHand = inMemory(2);

/** The list that a text is, with the file in which that stands. */
function listOf(text: string, parse: (text: string) => FileList | undefined): FileList | undefined {
  const fingerprint = fingerprintOf(text);
  return atHand("list", fingerprint.sha256, () => {
    const files = parse(text);
    return files && new Map([...files, [listName, fingerprint]]);
  });
}

/** The list as text, which whoever reads it in an output need not take apart again. */
export function textOfWritten(files: FileList): string {
  const text = listText(files);
  listOf(text, () => files);
  return text;
}

/** The files that the list in a folder accounts for, the list among them; undefined where no build wrote one. */
export function readList(folder: string): FileList | undefined {
  const file = join(folder, listName);
  if (!lstatSync(file, { throwIfNoEntry: false })?.isFile()) return undefined;
  return listOf(readFileSync(file, "utf8"), parseList);
}

/** Whether two lists name the same files, each with the same content. */
export const sameList = (a: FileList, b: FileList): boolean =>
  a.size === b.size &&
  [...a].every(([path, fingerprint]) => {
    const other = b.get(path);
    return other !== undefined && sameContent(fingerprint, other);
  });

/** Where a folder and a list differ. */
interface Differences {
  /** In the folder, but not in the list: files, links, and empty folders. */
  readonly unknown: readonly string[];
  /** In both, with other content. */
  readonly changed: readonly string[];
  /** In the list only. */
  readonly missing: readonly string[];
}

/** @param lent paths of files that need not be looked at, being looked at where they lie besides */
export function differences(
  folder: string,
  list: FileList,
  seen: Seen,
  lent: ReadonlySet<string> = new Set(),
): Differences {
  const folders = foldersOf(list);
  const entries = walk(folder);
  const isKnown = ({ path, kind }: Entry) =>
    kind === "file" ? list.has(path) : kind === "folder" && (folders.has(path) || holdsAny(entries, path));
  const files = entries.filter((entry) => entry.kind === "file" && isKnown(entry)).map(({ path }) => path);
  const found = new Set(files);
  return {
    unknown: entries.filter((entry) => !isKnown(entry)).map(({ path }) => path),
    changed: files.filter(
      (path) => !lent.has(path) && !sameContent(seen.fingerprint(join(folder, path)), known(list, path)),
    ),
    missing: [...list.keys()].filter((path) => !found.has(path)),
  };
}

/** Whether a folder is there and holds what is listed, to the byte, and nothing else. */
export function isWhole(folder: string, list: FileList, seen: Seen): boolean {
  if (!lstatSync(folder, { throwIfNoEntry: false })?.isDirectory()) return false;
  return Object.values(differences(folder, list, seen)).every((paths) => paths.length === 0);
}

const holdsAny = (entries: readonly Entry[], folder: string) =>
  entries.some(({ path }) => path.startsWith(`${folder}/`));

/** Every folder that a listed file is in. */
export function foldersOf(list: FileList): ReadonlySet<string> {
  const folders = new Set<string>();
  for (const path of list.keys())
    for (let at = path.indexOf("/"); at !== -1; at = path.indexOf("/", at + 1))
      folders.add(path.slice(0, at));
  return folders;
}
