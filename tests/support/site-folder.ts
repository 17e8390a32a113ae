import { mkdtempSync } from "node:fs";
import { mkdir, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { OutputFile } from "../../src/markup/output.ts";

/** Writes files into a new folder of the system's temporary one; gives its path. */
export async function writeToNewFolder(
  files: Iterable<OutputFile> | AsyncIterable<OutputFile>,
): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "dotdown-site-"));
  for await (const { path, content } of files) {
    const file = join(folder, path);
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, content);
  }
  return folder;
}
