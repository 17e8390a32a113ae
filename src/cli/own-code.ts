import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** All that the tool is. */
interface OwnCode {
  /** Another as soon as somebody has written to one of its files; undefined as long as their times do not tell yet. */
  readonly sight: Buffer | undefined;
  /** A hash over what is in them. */
  content(): Buffer;
}

/** A disk's clock goes in steps of up to two seconds. */
const clockStepNs = 2_000_000_000n;

/**
 * The tool's code, what lies beside that, the engine, and the packages that were installed with it. Run from its sources the tool
 * changes from one run to the next, and has none.
 *
 * @param here folder of the tool
 */
export function ownCode(
  here = dirname(fileURLToPath(import.meta.url)),
  nowMs = Date.now(),
): OwnCode | undefined {
  if (!here.endsWith("dist")) return undefined;
  const files = [here, join(here, "site-assets")].flatMap(codeIn).concat(installed(dirname(here)));
  const found = files.map((file) => ({ file, ...statSync(file, { bigint: true }) }));
  const settledNs = BigInt(nowMs) * 1_000_000n - clockStepNs;
  const isSettled = found.every(({ mtimeNs, ctimeNs }) => mtimeNs < settledNs && ctimeNs < settledNs);
  const sights = found.map(({ file, dev, ino, size, mtimeNs, ctimeNs }) =>
    [file, dev, ino, size, mtimeNs, ctimeNs].join(" "),
  );
  return {
    sight: isSettled ? sha256(sights) : undefined,
    content: () => sha256(files.flatMap((file) => [basename(file), readFileSync(file)])),
  };
}

function codeIn(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && !/\.(?:map|ts)$/.test(entry.name))
    .map(({ name }) => join(folder, name))
    .sort();
}

/** What a package manager has noted of the packages that it installed; else what the tool asks for. */
function installed(root: string): string {
  for (let folder = root; ; folder = dirname(folder)) {
    for (const name of [".package-lock.json", ".modules.yaml", ".yarn-state.yml"]) {
      const noted = join(folder, "node_modules", name);
      if (existsSync(noted)) return noted;
    }
    if (folder === dirname(folder)) return join(root, "package.json");
  }
}

function sha256(parts: readonly (string | Uint8Array)[]): Buffer {
  const hash = createHash("sha256").update(process.version);
  for (const part of parts) hash.update("\0").update(part);
  return hash.digest();
}
