import { describe, expect, it } from "vitest";
import type { Role } from "../../src/core/patterns/pattern.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { makeWords } from "../../src/words/words.ts";

const words = makeWords({
  figures: {
    "from-to": "{from} to {to}",
    "several-shot": "{count} × {size}",
    "shot-at": "{shot} at {place}",
  },
});
const { shotPlaces } = makeFigures("metric", words, "en");
const told = (...line: [size: string, role: Role, fromHookMm: number][]) =>
  shotPlaces(line.map(([size, role, fromHookMm]) => ({ size, role, fromHookMm, massG: 0.1 }))).replace(
    /\s/g,
    " ",
  );

describe("places of shot on the line", () => {
  it("are told of neighbours of one size together, the telltale too, and of those in step as a range", () => {
    expect(told(["No 6", "telltale", 315], ["No 6", "spread", 715])).toBe("2 × No 6 at 32, 72 cm");
    expect(told(["No 6", "telltale", 315], ["No 6", "spread", 715], ["No 6", "spread", 1115])).toBe(
      "3 × No 6 at 32 to 112 cm",
    );
  });

  // Unicode CLDR: a comma is the decimal sign of German.
  it("have their unit each where a comma between two figures would be read as a decimal one", () => {
    const german = makeFigures("metric", words, "de").shotPlaces([
      { size: "No 6", role: "telltale", fromHookMm: 315, massG: 0.1 },
      { size: "No 6", role: "spread", fromHookMm: 715, massG: 0.1 },
    ]);
    expect(german.replace(/\s/g, " ")).toBe("2 × No 6 at 32 cm, 72 cm");
  });

  it("are in centimetres however long the line is, so that a place has one figure everywhere", () => {
    expect(told(["No 8", "telltale", 415], ["No 8", "spread", 815], ["No 8", "spread", 2115])).toBe(
      "3 × No 8 at 42, 82, 212 cm",
    );
  });
});
