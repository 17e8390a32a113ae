import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

/** A font under a free licence that has signs which the tool's lack, such as ☺ and ♪. */
export const lentFont = readFileSync(
  createRequire(import.meta.url).resolve("pdfjs-dist/standard_fonts/LiberationSans-Regular.ttf"),
);
