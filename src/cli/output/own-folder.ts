import { lstatSync, readdirSync, readlinkSync, realpathSync, statSync } from "node:fs";
import { homedir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { UsageError } from "../command.ts";
import { differences, type FileList, readList } from "./file-list.ts";
import type { Seen } from "./seen.ts";

/** So many files are named in a message; a longer list hides its advice. */
const namedMax = 10;

/**
 * Whether a build may replace a folder: there is none, it is empty, or a list that an earlier build wrote accounts for
 * all that is in it.
 *
 * @param target absolute path
 * @param out the folder as it was asked for
 * @returns what it holds, where that is all that the list names
 * @throws UsageError with what is in the way, and what to do
 */
export function requireOwnFolder(target: string, out: string, seen: Seen): FileList | undefined {
  const found = lstatSync(target, { throwIfNoEntry: false });
  if (!found) return undefined;
  if (found.isSymbolicLink())
    throw new UsageError(
      `${out} is a link to ${readlinkSync(target)}; nothing is written through links: name that folder itself with --out`,
    );
  if (!found.isDirectory()) throw new UsageError(`${out} is a file; name a folder with --out`);
  if (readdirSync(target).length === 0) return undefined;
  const list = readList(target);
  if (!list) throw new UsageError(noList(target, out));
  const { unknown, changed, missing } = differences(target, list, seen);
  if (unknown.length + changed.length === 0) return missing.length === 0 ? list : undefined;
  const lines = [
    ...unknown.map((path) => `${path} (no build wrote it)`),
    ...changed.map((path) => `${path} (changed since)`),
  ].sort();
  const more = lines.length - namedMax;
  throw new UsageError(
    [
      `${out} holds what would be lost, so nothing was written:`,
      ...lines.slice(0, namedMax).map((line) => `  ${line}`),
      ...(more > 0 ? [`  and ${more} more`] : []),
      "move these elsewhere and build again, or name another folder with --out",
    ].join("\n"),
  );
}

function noList(target: string, out: string): string {
  if (lstatSync(join(target, "manifest.json"), { throwIfNoEntry: false }))
    return `${out} may be the output of an older dotdown, which did not tell its files from yours; look through it, move or delete it yourself, and build again`;
  return `${out} holds files that no build wrote, and none was touched; name another folder with --out, or empty it yourself`;
}

/**
 * Refuses what no build may ever replace: a content folder, the working folder, the home folder, whatever these are
 * in, and the root of a disk.
 *
 * @throws UsageError
 */
export function refuseProtected(target: string, out: string, contentFolders: readonly string[]): void {
  const identity = (path: string) => {
    const found = lstatSync(path, { bigint: true, throwIfNoEntry: false });
    return found && `${found.dev}:${found.ino}`;
  };
  const own = identity(target);
  if (dirname(target) === target)
    throw new UsageError(`${out} is the root of a disk; name another folder with --out`);
  const places: readonly [string, string][] = [
    ...contentFolders.map((folder): [string, string] => [folder, `the content folder ${folder}`]),
    [process.cwd(), "the working folder"],
    [homedir(), "your home folder"],
  ];
  for (const [place, name] of places) {
    if (own === undefined || !statSync(place, { throwIfNoEntry: false })) continue;
    const inner = realpathSync(place);
    if (identity(inner) === own) throw new UsageError(`${out} is ${name}; name another folder with --out`);
    for (let outer = dirname(inner); ; outer = dirname(outer)) {
      if (identity(outer) === own)
        throw new UsageError(`${out} is a folder that ${name} is in; name another one with --out`);
      if (outer === dirname(outer)) break;
    }
  }
}

/** The output folder's true place: links on the way to it are followed, the folder itself is not. */
export function truePlace(out: string): string {
  if (out === "") throw new UsageError("the folder to write has an empty name; name one with --out");
  const asked = resolve(out);
  let existing = dirname(asked);
  while (!statSync(existing, { throwIfNoEntry: false }) && dirname(existing) !== existing)
    existing = dirname(existing);
  return join(realpathSync(existing), asked.slice(existing.length));
}
