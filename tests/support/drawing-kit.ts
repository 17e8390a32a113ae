import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { measureText } from "../../src/drawing/font-metrics.ts";
import type { DrawingKit } from "../../src/drawing/kit.ts";
import type { Figures } from "../../src/report/figures.ts";
import { makeWords } from "../../src/report/words.ts";

const metres = (mm: number) => `${Number((mm / 1000).toFixed(2))} m`;
const centimetres = (mm: number) => `${Math.round(mm / 10)} cm`;

/** Metric figures, plain enough to read in a golden file. */
export const plainFigures: Figures = {
  depth: metres,
  gap: centimetres,
  shortDepth: metres,
  shortGap: centimetres,
  tip: (mm) => `${Math.round(mm / 5) * 5} mm`,
  mass: (g) => `${Number(g.toFixed(2))} g`,
  strength: (g) => `${Number((g / 1000).toFixed(1))} kg`,
  diameter: (mm) => `${Number(mm.toFixed(2))} mm`,
  pace: (ms) => `10 m in ${Math.round(10 / ms)} s`,
  temperature: (c) => `${Math.round(c)} °C`,
  volume: (ml) => `${Math.round(ml)} ml`,
  share: (share) => `${Math.round(share * 100)} %`,
  time: (s) => `${Math.round(s)} s`,
};

export const drawingKit: DrawingKit = {
  words: makeWords(parse(readFileSync("content/words/en.yaml", "utf8"))),
  figures: plainFigures,
  measure: measureText,
};
