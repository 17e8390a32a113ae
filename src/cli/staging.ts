import { createHash } from "node:crypto";
import { existsSync, statSync } from "node:fs";
import { mkdir, readdir, rename, rm, writeFile } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import type { OutputFile } from "../markup/output.ts";
import { UsageError } from "./command.ts";

/** Lists every file of an output folder with its hash; also the sign that the folder is ours to replace. */
const manifestName = "manifest.json";

/**
 * Writes all files into a folder beside the output folder and swaps the two at the end, so that the output is the
 * old one or the new one and never half of each.
 *
 * @returns how many files were written
 * @throws UsageError where the output folder holds something that no build wrote
 */
export async function writeOutput(out: string, files: AsyncIterable<OutputFile>): Promise<number> {
  const target = resolve(out);
  const next = join(dirname(target), `.${basename(target)}-next`);
  const before = join(dirname(target), `.${basename(target)}-before`);
  // A build that was killed between the two renames left the old output here.
  if (existsSync(before) && !existsSync(target)) await rename(before, target);
  await refuseForeign(target, out);
  await rm(next, { recursive: true, force: true });
  try {
    const hashes: Record<string, string> = {};
    for await (const file of files) {
      const path = join(next, file.path);
      await mkdir(dirname(path), { recursive: true });
      await writeFile(path, file.content);
      hashes[file.path] = createHash("sha256").update(file.content).digest("hex");
    }
    const sorted = Object.fromEntries(Object.entries(hashes).sort(([a], [b]) => (a < b ? -1 : 1)));
    await writeFile(join(next, manifestName), `${JSON.stringify(sorted, null, 2)}\n`);
    await rm(before, { recursive: true, force: true });
    if (existsSync(target)) await rename(target, before);
    await rename(next, target);
    await rm(before, { recursive: true, force: true });
    return Object.keys(hashes).length;
  } catch (error) {
    await rm(next, { recursive: true, force: true });
    throw error;
  }
}

async function refuseForeign(target: string, out: string): Promise<void> {
  if (!existsSync(target) || existsSync(join(target, manifestName))) return;
  if (!statSync(target).isDirectory()) throw new UsageError(`${out} is a file; name a folder with --out`);
  if ((await readdir(target)).length === 0) return;
  throw new UsageError(`${out} holds files that no build wrote; name another folder with --out, or empty it`);
}
