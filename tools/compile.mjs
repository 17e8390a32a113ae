// Bundles the command into dist/dotdown.js.
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { build } from "esbuild";
import { nodeBundle } from "./bundle-options.mjs";
import { siteAssets } from "./site-assets.mjs";
import "./word-keys.mjs";

rmSync("dist", { recursive: true, force: true });

await build({
  entryPoints: { dotdown: "src/cli/main.ts" },
  outdir: "dist",
  ...nodeBundle,
  banner: { js: "#!/usr/bin/env node" },
  sourcemap: true,
});

mkdirSync("dist/site-assets");
for (const [name, content] of await siteAssets()) writeFileSync(`dist/site-assets/${name}`, content);
