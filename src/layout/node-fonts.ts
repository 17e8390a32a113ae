import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import * as fontkit from "fontkit";
import { type FileFonts, type FontFile, type RawGlyphs, readFontFile } from "./font-file.ts";
import { makeFonts } from "./fonts.ts";
import { withLentSigns } from "./own-face.ts";
import { withStoutFractions } from "./stout-fractions.ts";

const resolve = createRequire(import.meta.url).resolve;

function read(file: string): FontFile {
  return readFontFile(readFileSync(resolve(`@expo-google-fonts/ibm-plex-sans/${file}`)));
}

let fonts: FileFonts | undefined;
const lent = new WeakMap<Uint8Array, FileFonts>();

/**
 * The fonts of the package, read once. Browsers are handed a table made of them instead.
 *
 * @param own bytes of a font of the guide's own, for signs that they lack
 */
export function nodeFonts(own?: Uint8Array): FileFonts {
  fonts ??= fontsOf({
    regular: read("400Regular/IBMPlexSans_400Regular.ttf"),
    bold: read("600SemiBold/IBMPlexSans_600SemiBold.ttf"),
    italic: read("400Regular_Italic/IBMPlexSans_400Regular_Italic.ttf"),
  });
  if (own === undefined) return fonts;
  let both = lent.get(own);
  if (both === undefined) {
    const lending = fontkit.create(Buffer.from(own)) as unknown as RawGlyphs;
    const { regular, bold, italic } = fonts.files;
    both = fontsOf({
      regular: withLentSigns(regular, lending),
      bold: withLentSigns(bold, lending),
      italic: withLentSigns(italic, lending),
    });
    lent.set(own, both);
  }
  return both;
}

function fontsOf({ regular, bold, italic }: FileFonts["files"]): FileFonts {
  const files = { regular: withStoutFractions(regular, bold), bold, italic };
  return { ...makeFonts(files), files };
}
