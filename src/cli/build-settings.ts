import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { BuildSettings, Solved } from "../build/stages.ts";
import { once } from "../model/kept.ts";
import { exitCodes, UsageError } from "./command.ts";
import { Trouble } from "./trouble.ts";

/** All that a build is told besides its content. */
export function buildSettings(solved: Solved): BuildSettings {
  return { date: buildDate(solved), siteAssets: siteAssets() };
}

/**
 * The day that the files are dated: `SOURCE_DATE_EPOCH` (seconds since 1970, reproducible-builds.org) where it is set,
 * else the guide's edition, so that two builds of the same content are the same to the byte.
 */
function buildDate({ library }: Solved): string {
  const epoch = process.env.SOURCE_DATE_EPOCH;
  if (epoch === undefined || epoch === "") return library.guide.edition;
  const date = new Date(Number(epoch) * 1000);
  if (!/^\d+$/.test(epoch) || Number.isNaN(date.getTime())) {
    throw new UsageError(`SOURCE_DATE_EPOCH is ${epoch}; it counts whole seconds since 1970`);
  }
  return date.toISOString().slice(0, 10);
}

/** Style sheet, fonts and page scripts, which `npm run compile` puts beside the command; read once in a process. */
const siteAssets = once((): ReadonlyMap<string, string | Uint8Array> => {
  const here = dirname(fileURLToPath(import.meta.url));
  // Run from its sources, as the tests do, the command finds what was compiled last.
  const folder = here.endsWith("dist") ? join(here, "site-assets") : join(here, "../../dist/site-assets");
  try {
    return new Map(
      readdirSync(folder)
        .sort()
        .map((name) => [name, readAsset(join(folder, name))]),
    );
  } catch (error) {
    const reason = `dotdown is not installed whole: ${(error as Error).message}`;
    throw new Trouble(`${reason}; nothing was written. To go on, install it again`, exitCodes.unreadable);
  }
});

const readAsset = (file: string) =>
  /\.(css|js|svg|json)$/.test(file) ? readFileSync(file, "utf8") : readFileSync(file);
