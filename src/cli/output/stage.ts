import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { ContentError } from "../../build/content-error.ts";
import type { OutputFile } from "../../markup/output.ts";
import { type FileList, listName, listText } from "./file-list.ts";
import { type Fingerprint, fingerprintOf } from "./fingerprint.ts";
import { nextIn, note, type WorkFolder } from "./work-folder.ts";

/**
 * Writes all files and their list into the next output. Each is noted before it is written, and written in one go, so
 * that a signal finds either nothing of it or all.
 *
 * @returns the list, with itself in it
 * @throws ContentError where two files have one address, on disks that do not tell large letters from small ones too
 */
export async function stage(work: WorkFolder, files: AsyncIterable<OutputFile>): Promise<FileList> {
  const list = new Map<string, Fingerprint>();
  const addresses = new Set<string>();
  const write = ({ path, content }: OutputFile) => {
    const folded = path.normalize("NFC").toLowerCase();
    if (addresses.has(folded))
      throw new ContentError(`two things in the content make the file ${path}; rename one`);
    addresses.add(folded);
    const fingerprint = fingerprintOf(content);
    note(work, ["file", path, fingerprint]);
    const file = join(nextIn(work), path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, content, { flag: "wx" });
    list.set(path, fingerprint);
  };
  mkdirSync(nextIn(work));
  for await (const file of files) write(file);
  write({ path: listName, content: listText(list) });
  return list;
}
