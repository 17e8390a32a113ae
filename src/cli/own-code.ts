import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/**
 * A hash over all that the tool is: its code, what lies beside that, the engine, and the packages that were installed with
 * it. Run from its sources the tool changes from one run to the next, and has none.
 */
export function ownCode(): Buffer | undefined {
  const here = dirname(fileURLToPath(import.meta.url));
  if (!here.endsWith("dist")) return undefined;
  const hash = createHash("sha256").update(process.version);
  for (const folder of [here, join(here, "site-assets")]) {
    for (const name of readdirSync(folder).sort()) {
      const file = join(folder, name);
      if (!/\.(?:map|ts)$/.test(name) && statSync(file).isFile())
        hash.update(name).update(readFileSync(file));
    }
  }
  hash.update(installed(dirname(here)));
  return hash.digest();
}

/** What a package manager has noted of the packages that it installed; else what the tool asks for. */
function installed(root: string): Buffer {
  for (let folder = root; ; folder = dirname(folder)) {
    for (const name of [".package-lock.json", ".modules.yaml", ".yarn-state.yml"]) {
      const noted = join(folder, "node_modules", name);
      if (existsSync(noted)) return readFileSync(noted);
    }
    if (folder === dirname(folder)) return readFileSync(join(root, "package.json"));
  }
}
