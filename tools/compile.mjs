// Bundles the command into dist/dotdown.js; packages from npm stay outside it.
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { build } from "esbuild";
import { siteAssets } from "./site-assets.mjs";

rmSync("dist", { recursive: true, force: true });

await build({
  entryPoints: { dotdown: "src/cli/main.ts" },
  outdir: "dist",
  bundle: true,
  packages: "external",
  // The element tree's runtime is ours, so it goes into the bundle whatever name it is imported by.
  alias: { "#jsx/jsx-runtime": "./src/markup/jsx-runtime.ts" },
  platform: "node",
  target: "node20",
  format: "esm",
  banner: { js: "#!/usr/bin/env node" },
  sourcemap: true,
  logLevel: "warning",
});

mkdirSync("dist/site-assets");
for (const [name, content] of await siteAssets()) writeFileSync(`dist/site-assets/${name}`, content);
