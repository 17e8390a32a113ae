// Writes dist/gallery/index.html: every drawing of the guide on one page, for a person to look at.
import { build } from "esbuild";
import { nodeBundle } from "./bundle-options.mjs";

await build({
  entryPoints: { gallery: "tools/gallery-page.ts" },
  outdir: "dist/tools",
  outExtension: { ".js": ".mjs" },
  ...nodeBundle,
});
await import("../dist/tools/gallery.mjs");
