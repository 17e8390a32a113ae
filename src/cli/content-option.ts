import { existsSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Command } from "commander";
import { UsageError } from "./command.ts";

/** Adds the option that names a content folder, as often as it is given. */
export function withContentOption(command: Command): Command {
  const more = (folder: string, before: readonly string[] = []) => [...before, folder];
  const about = "folder to read; given again, later ones win file by file";
  return command.option("--content <folder>", about, more);
}

/** The folders asked for; without any, `content` here, or else the guide that comes with the package. */
export function contentFolders(options: Readonly<Record<string, unknown>>): readonly string[] {
  const asked = options.content as readonly string[] | undefined;
  if (asked) {
    for (const folder of asked) {
      if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory())
        throw new UsageError(`there is no folder ${folder}; name one with --content`);
    }
    return asked;
  }
  if (existsSync("content")) return ["content"];
  return [join(dirname(fileURLToPath(import.meta.url)), "..", "content")];
}
