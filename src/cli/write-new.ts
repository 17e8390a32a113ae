import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { UsageError } from "./command.ts";
import { writeTrouble } from "./trouble.ts";

/**
 * Writes files that were not there; nothing of anybody's is overwritten.
 *
 * @param files text by path below the folder
 * @throws UsageError where one is there already; then none is written
 * @throws Trouble where the system does not allow it
 */
export function writeNew(folder: string, files: ReadonlyMap<string, string>): void {
  const targets = [...files].map(([path, text]) => ({ target: join(folder, path), text }));
  const taken = targets.find(({ target }) => existsSync(target));
  if (taken) throw new UsageError(`${taken.target} is there already and stays as it is; nothing was written`);
  const written: string[] = [];
  for (const { target, text } of targets) {
    try {
      mkdirSync(dirname(target), { recursive: true });
      writeFileSync(target, text, { flag: "wx" });
      written.push(target);
    } catch (error) {
      const kept = written.length === 0 ? "nothing was written" : `written before it: ${written.join(", ")}`;
      throw writeTrouble(error, target, kept);
    }
  }
}
