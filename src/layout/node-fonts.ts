import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { type Fonts, makeFonts } from "./fonts.ts";

const resolve = createRequire(import.meta.url).resolve;

function read(file: string): Uint8Array {
  return readFileSync(resolve(`@expo-google-fonts/ibm-plex-sans/${file}`));
}

let fonts: Fonts | undefined;

/** The fonts of the package, read once. Browsers are handed the bytes instead. */
export function nodeFonts(): Fonts {
  fonts ??= makeFonts({
    regular: read("400Regular/IBMPlexSans_400Regular.ttf"),
    bold: read("600SemiBold/IBMPlexSans_600SemiBold.ttf"),
    italic: read("400Regular_Italic/IBMPlexSans_400Regular_Italic.ttf"),
  });
  return fonts;
}
