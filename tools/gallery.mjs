// Writes dist/gallery/index.html: every drawing of the guide on one page, for a person to look at.
import { build } from "esbuild";

await build({
  entryPoints: { gallery: "tools/gallery-page.ts" },
  outdir: "dist/tools",
  outExtension: { ".js": ".mjs" },
  bundle: true,
  packages: "external",
  alias: { "#jsx/jsx-runtime": "./src/markup/jsx-runtime.ts" },
  platform: "node",
  target: "node20",
  format: "esm",
  logLevel: "warning",
});
await import("../dist/tools/gallery.mjs");
