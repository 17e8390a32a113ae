import { existsSync, readdirSync, realpathSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Command } from "commander";
import { type Terminal, UsageError } from "./command.ts";
import { reading } from "./trouble.ts";

/** Adds the option that names a content folder, as often as it is given. */
export function withContentOption(command: Command): Command {
  const more = (folder: string, before: readonly string[] = []) => [...before, folder];
  const about = "folder to read; given again, later ones win file by file";
  return command.option("--content <folder>", about, more);
}

/** The folders that a guide is read from. */
export interface ContentFolders {
  readonly folders: readonly string[];
  /** The guide that comes with the package, where others borrow from it. */
  readonly shipped?: string;
}

/** The folders asked for; without any, `content` here, or else the guide that comes with the package. */
export async function contentFolders(options: Readonly<Record<string, unknown>>): Promise<ContentFolders> {
  const asked = options.content as readonly string[] | undefined;
  const folders = asked ?? (existsSync("content") ? ["content"] : [guideOfThePackage()]);
  for (const folder of folders) {
    const found = await reading(folder, () => statSync(folder, { throwIfNoEntry: false }));
    if (!found) throw new UsageError(`there is no folder ${folder}; name one with --content`);
    if (!found.isDirectory())
      throw new UsageError(`${folder} is a file; name the folder that it is in with --content`);
  }
  const shipped = realpathSync(guideOfThePackage());
  const own = folders.filter((folder) => realpathSync(folder) !== shipped);
  if (own.length === 0) return { folders };
  return { folders: own, shipped: folders.find((folder) => !own.includes(folder)) ?? shipped };
}

/** Says that it is the library which is looked at, where none was named and none is here: nobody takes it for their own. */
export function tellWhose(
  { folders }: ContentFolders,
  options: Readonly<Record<string, unknown>>,
  terminal: Terminal,
): void {
  if (options.content !== undefined || options.quiet || folders[0] !== guideOfThePackage()) return;
  const near = ["..", "../..", ...readdirSync(".")].find((folder) =>
    existsSync(join(folder, "content", "guide.yaml")),
  );
  const next =
    near === undefined ? "npx dotdown init begins one of your own" : `yours may be that in ${near}`;
  terminal.report(
    `dotdown: there is no folder content here, so this is the guide that comes with dotdown; ${next}\n`,
  );
}

/** Run from its sources, as the tests do, the command stands a folder deeper. */
export function guideOfThePackage(): string {
  const here = dirname(fileURLToPath(import.meta.url));
  return join(here, ...(here.endsWith("dist") ? [".."] : ["..", ".."]), "content");
}
