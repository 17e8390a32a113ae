import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { Script } from "node:vm";
import type { Store } from "../../model/kept.ts";

type Exports = Readonly<Record<string, unknown>>;
type Load = (name: string) => unknown;
/** The value of a script, as `tools/as-script.mjs` makes them: runs it, and gives what it exports. */
type Run = (
  load: Load,
  loadLater: (name: string) => Promise<unknown>,
  require: NodeJS.Require,
  meta: { readonly url: string },
) => Exports;

/** What is shorter is compiled sooner than it is looked up. */
const shortBytes = 20_000;

/** Where is kept what the engine made of scripts, and for what use: another use runs other functions of them. */
interface Compiled {
  readonly store: Store;
  readonly use: string;
}

/** The scripts of the tool, each run once, from what the engine made of them in an earlier process where that is kept. */
interface Scripts {
  readonly load: Load;
  /** Keeps what the engine has made by now of those of which nothing was kept. */
  keep(): void;
}

/** @param folder that the scripts are in */
export function scriptsIn(folder: URL, compiled?: Compiled): Scripts {
  const require = createRequire(folder);
  const loaded = new Map<string, Exports>();
  const anew = new Map<string, Script>();
  const fromOf = (name: string) => JSON.stringify([compiled?.use, name]);
  const compile = (name: string, url: URL): Script => {
    // They have no sign beyond ASCII.
    const source = readFileSync(url, "latin1");
    const isLong = source.length > shortBytes;
    const before = isLong ? compiled?.store.find("compiled", fromOf(name))?.value : undefined;
    const script = new Script(source, {
      filename: url.href,
      ...(before instanceof Uint8Array && { cachedData: before }),
    });
    if (isLong && script.cachedDataRejected !== false) anew.set(name, script);
    return script;
  };
  // A script itself can import nothing.
  const loadLater = async (name: string) => (name.startsWith("./") ? load(name) : import(name));
  const load: Load = (name) => {
    if (!name.startsWith("./")) return require(name);
    const url = new URL(name, folder);
    const run = () => compile(name, url).runInThisContext() as Run;
    const given = loaded.get(name) ?? run()(load, loadLater, require, { url: url.href });
    loaded.set(name, given);
    return given;
  };
  return {
    load,
    keep() {
      for (const [name, script] of anew)
        compiled?.store.put("compiled", fromOf(name), script.createCachedData());
    },
  };
}
