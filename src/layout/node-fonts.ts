import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { type FileFonts, type FontFile, readFontFile } from "./font-file.ts";
import { makeFonts } from "./fonts.ts";

const resolve = createRequire(import.meta.url).resolve;

function read(file: string): FontFile {
  return readFontFile(readFileSync(resolve(`@expo-google-fonts/ibm-plex-sans/${file}`)));
}

let fonts: FileFonts | undefined;

/** The fonts of the package, read once. Browsers are handed a table made of them instead. */
export function nodeFonts(): FileFonts {
  if (fonts === undefined) {
    const files = {
      regular: read("400Regular/IBMPlexSans_400Regular.ttf"),
      bold: read("600SemiBold/IBMPlexSans_600SemiBold.ttf"),
      italic: read("400Regular_Italic/IBMPlexSans_400Regular_Italic.ttf"),
    };
    fonts = { ...makeFonts(files), files };
  }
  return fonts;
}
