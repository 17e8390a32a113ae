import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { setImmediate as turn } from "node:timers/promises";
import type { OutputFile } from "../../markup/output.ts";
import { type FileList, listName, listText } from "./file-list.ts";
import { type Fingerprint, fingerprintOf } from "./fingerprint.ts";
import { nextIn, note, type WorkFolder } from "./work-folder.ts";

/**
 * Writes all files and their list into the next output. Each is noted before it is written, and written in one go, so
 * that a signal finds either nothing of it or all.
 *
 * @returns the list, with itself in it
 */
export async function stage(work: WorkFolder, files: AsyncIterable<OutputFile>): Promise<FileList> {
  const list = new Map<string, Fingerprint>();
  const write = ({ path, content }: OutputFile) => {
    const fingerprint = fingerprintOf(content);
    note(work, ["file", path, fingerprint]);
    const file = join(nextIn(work), path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, content, { flag: "wx" });
    list.set(path, fingerprint);
  };
  mkdirSync(nextIn(work));
  for await (const file of files) {
    write(file);
    // Making files gives no turn to anything else by itself, and a signal waits for one.
    await turn();
  }
  write({ path: listName, content: listText(list) });
  return list;
}
