// Every drawing of the guide, for a person to look at: on one page, dist/gallery/index.html. With --sheets also as pictures of
// contact sheets, dist/gallery/sheets: as on a phone 360 px wide, light, dark and in forced colours, and as on paper.
// --bare leaves out what is said below the drawings, but for the names of fish and baits; --every shows all of them in each of
// these ways, and not some of each kind in the last three; --only NAME takes the sections alone whose title has this in it.
import { build } from "esbuild";
import { nodeBundle } from "./bundle-options.mjs";

await build({
  entryPoints: { gallery: "tools/gallery-page.ts" },
  outdir: "dist/tools",
  outExtension: { ".js": ".mjs" },
  ...nodeBundle,
});
await import("../dist/tools/gallery.mjs");
