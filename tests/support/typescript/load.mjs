import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { transform } from "esbuild";

/** A hook of Node's for what it imports: what is TypeScript comes without its types, with a map for traces. */
export async function load(url, context, nextLoad) {
  const [address] = url.split("?");
  const [, loader] = /\.(tsx?)$/.exec(address) ?? [];
  if (loader === undefined || address.includes("/node_modules/")) return nextLoad(url, context);
  const { code } = await transform(await readFile(fileURLToPath(address), "utf8"), {
    loader,
    format: "esm",
    target: "node20",
    supported: { "import-attributes": true },
    jsx: "automatic",
    jsxImportSource: "#jsx",
    sourcefile: address,
    sourcemap: "inline",
    sourcesContent: false,
  });
  return { format: "module", source: code, shortCircuit: true };
}
