import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { nodeBundle } from "../../tools/bundle-options.mjs";

/**
 * A module as it is shipped, bundled by esbuild: the test runner's own way of loading calls every imported function
 * through a look-up, which no reader of the guide has to pay for.
 */
export async function bundled<T>(entry: string): Promise<T> {
  const { outputFiles } = await build({
    entryPoints: [entry],
    bundle: true,
    format: "esm",
    platform: "neutral",
    write: false,
  });
  const code = Buffer.from(outputFiles[0]!.contents).toString("base64");
  return import(/* @vite-ignore */ `data:text/javascript;base64,${code}`);
}

/** Modules of the tool as it is shipped for Node: all that they export, with packages left outside. */
export async function bundledTool<T>(name: string, entries: readonly string[]): Promise<T> {
  const folder = "node_modules/.cache/dotdown";
  const file = join(folder, `bench-${name}.mjs`);
  mkdirSync(folder, { recursive: true });
  const contents = entries.map((entry) => `export * from "./${entry}";`).join("\n");
  await build({ ...nodeBundle, stdin: { contents, resolveDir: process.cwd() }, outfile: file });
  return import(/* @vite-ignore */ pathToFileURL(file).href);
}
