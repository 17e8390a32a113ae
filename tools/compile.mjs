// Bundles the tool into scripts in dist, with what loads them: dist/dotdown.js for the command, dist/index.js for other programs, with its types.
import { execFileSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { build } from "esbuild";
import { asScript } from "./as-script.mjs";
import { nodeBundle, toolBundle } from "./bundle-options.mjs";
import { billOfMaterials } from "./licences.mjs";
import { packageFolder, siteAssets } from "./site-assets.mjs";
import "./word-keys.mjs";

rmSync("dist", { recursive: true, force: true });

mkdirSync("dist/site-assets", { recursive: true });
const entries = { main: "src/cli/main.ts", api: "src/api/index.ts", beside: "src/cli/crew/work-beside.ts" };
const scripts = await build({
  entryPoints: entries,
  outdir: "dist",
  splitting: true,
  ...toolBundle,
  sourcemap: true,
  write: false,
});
for (const { path, text } of scripts.outputFiles)
  writeFileSync(path, path.endsWith(".js") ? asScript(path, text) : text);
const launchers = {
  dotdown: "src/cli/launch/dotdown.ts",
  worker: "src/cli/launch/worker.ts",
  index: "src/api/package.ts",
};
await build({
  entryPoints: launchers,
  outdir: "dist",
  ...toolBundle,
  banner: { js: "#!/usr/bin/env node" },
  sourcemap: true,
});
const unpacking = await build({
  entryPoints: { brotli: "brotli/decompress.js" },
  outdir: "dist",
  outExtension: { ".js": ".cjs" },
  ...toolBundle,
  plugins: [],
  format: "cjs",
  minifyWhitespace: true,
});
const metafiles = [scripts.metafile, unpacking.metafile];
writeFileSync("dist/packages.cdx.json", billOfMaterials(metafiles, [], packageFolder));

for (const [name, content] of await siteAssets()) writeFileSync(`dist/site-assets/${name}`, content);

const readyTool = "dist/tools/ready-library.mjs";
await build({
  entryPoints: { "ready-library": "tools/ready-library.ts" },
  outdir: "dist/tools",
  outExtension: { ".js": ".mjs" },
  ...nodeBundle,
});
const { readyLibrary } = await import(`../${readyTool}`);
writeFileSync("dist/library.kept", await readyLibrary("content", ["en", "de"]));
rmSync("dist/tools", { recursive: true });

writeTypes();

/** The types of the contract, and of what it speaks of; the compiler leaves the endings of sources in them. */
function writeTypes() {
  const compiler = join(
    dirname(createRequire(import.meta.url).resolve("typescript/package.json")),
    "bin/tsc",
  );
  execFileSync(process.execPath, [compiler, "-p", "tools/tsconfig.types.json"], { stdio: "inherit" });
  for (const name of readdirSync("dist/types", { recursive: true, encoding: "utf8" })) {
    if (!name.endsWith(".d.ts")) continue;
    const file = join("dist/types", name);
    writeFileSync(file, readFileSync(file, "utf8").replace(/(from "|import\(")(\.[^"]+)\.ts"/g, '$1$2.js"'));
  }
}
