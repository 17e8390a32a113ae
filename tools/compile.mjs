// Bundles the command into dist/dotdown.js; packages from npm stay outside it.
import { rmSync } from "node:fs";
import { build } from "esbuild";

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
