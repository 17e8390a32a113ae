// Makes what every page of the site loads: the style sheet, the fonts and the page scripts.
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { deflateSync } from "node:zlib";
import { build } from "esbuild";

const require = createRequire(import.meta.url);
const scripts = ["page", "filters", "rig", "fit", "card", "search", "service-worker"];
const fontFiles = {
  regular: "400Regular/IBMPlexSans_400Regular.ttf",
  bold: "600SemiBold/IBMPlexSans_600SemiBold.ttf",
  italic: "400Regular_Italic/IBMPlexSans_400Regular_Italic.ttf",
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

/** Flag of the subsetter: hints are for screens coarser than today's. */
const withoutHinting = 1;

/** The subsetter's set of layout features, and those that pages use. */
const layoutFeatures = 6;
const fontFeatures = ["kern", "mark", "ccmp", "tnum", "lnum"];

/** File name → content, for `site/assets/`. */
export async function siteAssets() {
  const assets = new Map();
  const fonts = await readFonts();
  const subset = await subsetter();
  // Pages have no italic; browsers slant the few words that would need it.
  for (const name of ["regular", "bold"]) assets.set(`plex-${name}.woff`, woff(subset(fonts[name])));
  const bundles = await build({
    entryPoints: scripts.map((name) => `src/browser/${name}.ts`),
    outdir: "assets",
    bundle: true,
    write: false,
    minify: true,
    // Opened from disk a page may not load modules.
    format: "iife",
    target: "es2020",
    charset: "utf8",
    plugins: [fontsWithin(fonts)],
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
  assets.set("icon.svg", await readFile("templates/styles/icon.svg", "utf8"));
  return assets;
}

/** Each face of the family. */
async function readFonts() {
  const fonts = {};
  for (const [name, file] of Object.entries(fontFiles)) {
    fonts[name] = await readFile(require.resolve(`@expo-google-fonts/ibm-plex-sans/${file}`));
  }
  return fonts;
}

/** The module `card-fonts` of the browser's card: whole fonts, as on the built cards, as bytes within the script. */
function fontsWithin(fonts) {
  return {
    name: "card-fonts",
    setup(bundle) {
      bundle.onResolve({ filter: /^card-fonts/ }, ({ path }) => ({ path, namespace: "card-fonts" }));
      bundle.onLoad({ filter: /^card-fonts$/, namespace: "card-fonts" }, () => ({
        contents: Object.keys(fonts)
          .map((name) => `export { default as ${name} } from "card-fonts/${name}";`)
          .join("\n"),
      }));
      bundle.onLoad({ filter: /^card-fonts\//, namespace: "card-fonts" }, ({ path }) => ({
        contents: fonts[path.split("/")[1]],
        loader: "binary",
      }));
    },
  };
}

/** Cuts a font down to `fontSigns`, so that a phone loads a fifth of it. */
async function subsetter() {
  const wasm = await readFile(require.resolve("harfbuzzjs/hb-subset.wasm"));
  const { exports: hb } = (await WebAssembly.instantiate(wasm)).instance;
  return (font) => {
    const at = hb.malloc(font.byteLength);
    new Uint8Array(hb.memory.buffer).set(font, at);
    const blob = hb.hb_blob_create(at, font.byteLength, 2, 0, 0);
    const face = hb.hb_face_create(blob, 0);
    hb.hb_blob_destroy(blob);
    const input = hb.hb_subset_input_create_or_fail();
    hb.hb_subset_input_set_flags(input, withoutHinting);
    const signs = hb.hb_subset_input_unicode_set(input);
    for (const [first, last] of fontSigns) {
      for (let sign = first; sign <= last; sign++) hb.hb_set_add(signs, sign);
    }
    const features = hb.hb_subset_input_set(input, layoutFeatures);
    hb.hb_set_clear(features);
    for (const name of fontFeatures) hb.hb_set_add(features, Buffer.from(name).readUInt32BE());
    const cut = hb.hb_subset_or_fail(face, input);
    if (cut === 0) throw new Error("the font could not be cut down");
    const result = hb.hb_face_reference_blob(cut);
    const start = hb.hb_blob_get_data(result, 0);
    const bytes = new Uint8Array(hb.memory.buffer, start, hb.hb_blob_get_length(result)).slice();
    hb.hb_blob_destroy(result);
    hb.hb_face_destroy(cut);
    hb.hb_subset_input_destroy(input);
    hb.hb_face_destroy(face);
    hb.free(at);
    return bytes;
  };
}

/** The same font with each table deflated. Source: W3C, WOFF File Format 1.0, sections 3 to 5. */
function woff(font) {
  const sfnt = Buffer.from(font);
  const count = sfnt.readUInt16BE(4);
  const header = Buffer.alloc(44 + 20 * count);
  const bodies = [];
  let end = header.length;
  for (let index = 0; index < count; index++) {
    const [tag, checksum, offset, length] = [0, 4, 8, 12].map((at) =>
      sfnt.readUInt32BE(12 + 16 * index + at),
    );
    const table = sfnt.subarray(offset, offset + length);
    const packed = deflateSync(table, { level: 9 });
    const body = packed.length < length ? packed : table;
    [tag, end, body.length, length, checksum].forEach((value, field) => {
      header.writeUInt32BE(value, 44 + 20 * index + 4 * field);
    });
    bodies.push(body, Buffer.alloc(-body.length & 3));
    end += (body.length + 3) & ~3;
  }
  header.write("wOFF", 0, "latin1");
  sfnt.copy(header, 4, 0, 4);
  header.writeUInt32BE(end, 8);
  header.writeUInt16BE(count, 12);
  header.writeUInt32BE(sfnt.length, 16);
  header.writeUInt16BE(1, 20);
  return Buffer.concat([header, ...bodies]);
}
