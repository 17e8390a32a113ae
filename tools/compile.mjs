// Bundles the command into dist/dotdown.js, and what other programs import into dist/index.js, with its types.
import { execFileSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { build } from "esbuild";
import { toolBundle } from "./bundle-options.mjs";
import { billOfMaterials } from "./licences.mjs";
import { packageFolder, siteAssets } from "./site-assets.mjs";
import "./word-keys.mjs";

rmSync("dist", { recursive: true, force: true });

const { metafile } = await build({
  entryPoints: { dotdown: "src/cli/main.ts", index: "src/api/index.ts", worker: "src/cli/crew/worker.ts" },
  outdir: "dist",
  splitting: true,
  ...toolBundle,
  banner: { js: `#!/usr/bin/env node\n${toolBundle.banner.js}` },
  sourcemap: true,
});
writeFileSync("dist/packages.cdx.json", billOfMaterials([metafile], [], packageFolder));

mkdirSync("dist/site-assets");
for (const [name, content] of await siteAssets()) writeFileSync(`dist/site-assets/${name}`, content);

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
