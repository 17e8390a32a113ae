import { readFileSync } from "node:fs";
import { parse } from "yaml";
import type { DrawingKit } from "../../src/drawing/kit.ts";
import { measureText } from "../../src/drawing/labels/font-metrics.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { makeWords } from "../../src/words/words.ts";

const words = makeWords(parse(readFileSync("content/words/en.yaml", "utf8")));

/** What drawings are handed in tests: the guide's own words, metric figures. */
export const drawingKit: DrawingKit = {
  words,
  figures: makeFigures("metric", words, "en"),
  measure: measureText,
};
