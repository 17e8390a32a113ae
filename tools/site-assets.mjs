// Makes what every page of the site loads: the style sheet, the fonts and the page scripts.
import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { build } from "esbuild";
import subsetFont from "subset-font";
import { billOfMaterials } from "./licences.mjs";

const require = createRequire(import.meta.url);
const fontPackage = "@expo-google-fonts/ibm-plex-sans";
/** Where a package lies; some do not let their own description be asked for. */
export const packageFolder = (name) =>
  require.resolve
    .paths(name)
    .map((folder) => `${folder}/${name}`)
    .find((folder) => existsSync(folder));
const scripts = [
  "page",
  "water",
  "filters",
  "rig",
  "signs",
  "on-this-phone",
  "film",
  "soundings",
  "choose",
  "try",
  "fit",
  "sums-worker",
  "card",
  "search",
  "service-worker",
];
/** Pages have no italic; browsers slant the few words that would need it. */
const fontFiles = {
  regular: "400Regular/IBMPlexSans_400Regular.ttf",
  bold: "600SemiBold/IBMPlexSans_600SemiBold.ttf",
};

/** Signs that pages use: Western European Latin, fractions, dashes, quotes and the marks of figures. */
const fontSigns = [
  [0x20, 0x7e],
  [0xa0, 0xff],
  [0x2010, 0x2026],
  [0x2032, 0x2033],
  [0x20ac, 0x20ac],
  [0x2153, 0x2154],
  [0x2190, 0x2193],
  [0x2212, 0x2212],
  [0x2248, 0x2265],
  [0x25b8, 0x25b8],
  [0x2713, 0x2713],
];

/** Layout features that pages use. */
const fontFeatures = ["kern", "mark", "ccmp", "tnum", "lnum"];

/** File name → content, for `site/assets/`. */
export async function siteAssets() {
  const assets = new Map();
  for (const [name, file] of Object.entries(fontFiles)) {
    assets.set(`plex-${name}.woff`, await cutDown(await readFile(require.resolve(`${fontPackage}/${file}`))));
  }
  const bundles = await build({
    entryPoints: scripts.map((name) => `src/browser/${name}.ts`),
    outdir: "assets",
    bundle: true,
    write: false,
    minify: true,
    // Opened from disk a page may not load modules.
    format: "iife",
    target: "es2020",
    metafile: true,
    charset: "utf8",
    alias: { "#jsx/jsx-runtime": "./src/markup/jsx-runtime.ts" },
    logLevel: "warning",
  });
  const style = await build({
    entryPoints: ["templates/styles/site.css"],
    outdir: "assets",
    bundle: true,
    write: false,
    minify: true,
    external: ["*.woff"],
    charset: "utf8",
    logLevel: "warning",
  });
  for (const { path, text } of [...bundles.outputFiles, ...style.outputFiles]) {
    assets.set(path.split(/[\\/]/).at(-1), text);
  }
  assets.set("licences.cdx.json", billOfMaterials([bundles.metafile], [fontPackage], packageFolder));
  assets.set("icon.svg", await readFile("templates/styles/icon.svg", "utf8"));
  return assets;
}

/** A font with only `fontSigns`, so that a phone loads a fifth of it; hints are for screens coarser than today's. */
function cutDown(font) {
  const signs = fontSigns.flatMap(([first, last]) =>
    Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)),
  );
  return subsetFont(font, signs.join(""), {
    targetFormat: "woff",
    noHinting: true,
    noLayoutClosure: true,
    featureTags: fontFeatures,
  });
}
