import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { rigVariants } from "../../src/core/float/moved-float.ts";
import { entry } from "../../src/core/lists.ts";
import { drawFloatChart } from "../../src/drawing/float/float-chart.ts";
import { drawFloat } from "../../src/drawing/float/float-drawing.ts";
import { floatPose } from "../../src/drawing/float/float-poses.ts";
import { drawFloatState, drawFloatStates } from "../../src/drawing/float/float-states.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import { drawPatternCharts } from "../../src/drawing/patterns/pattern-chart.ts";
import { drawRig } from "../../src/drawing/rig/rig-drawing.ts";
import { allShot } from "../../src/model/solved.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { makeWords } from "../../src/words/words.ts";
import { drawingFaults, faintTexts, flatItems } from "../support/drawing-checks.ts";
import { inkRuns, strand } from "../support/ink-runs.ts";
import { shippedGuide } from "../support/shipped-guide.ts";
import { places } from "./places.ts";

const { library, rigs, kit } = shippedGuide;

const [card] = places;

const faults = (drawing: Drawing) => [...drawingFaults(drawing), ...faintTexts(drawing)];

test.each(rigs)(
  "$rig.id is clear at every depth on card, page and phone, in each other variant on one of them",
  (rig) => {
    expect(rig.depths.length).toBeGreaterThan(0);
    for (const [at, depth] of rig.depths.entries())
      for (const [nth, variant] of rigVariants.entries()) {
        for (const place of nth === 0 ? places : [entry(places, (at + nth) % places.length)]) {
          const drawing = drawRig(rig, depth, place.box, kit, { ...place, variant });
          expect(faults(drawing), `${place.name}, ${depth.depthMm} mm, ${variant}`).toEqual([]);
        }
      }
  },
);

// A 300 dpi rendering cut to black and white: what a copier makes of a card.
test.each(rigs)("$rig.id: at every depth the hook length is seen to be dashed, the line not", (rig) => {
  for (const depth of rig.depths) {
    const drawn = drawRig(rig, depth, card.box, kit, card);
    const dashes = inkRuns(drawn, strand(drawn, "hook length"), 1.7);
    expect(dashes, `${depth.depthMm} mm`).toBeGreaterThanOrEqual(2);
    // The break of a long line and the slits of its shot may part it.
    const parts = inkRuns(drawn, strand(drawn, "main line"), 1.7);
    expect(parts, `${depth.depthMm} mm`).toBeLessThanOrEqual(2 + allShot(depth).length);
  }
});

const germanWords = makeWords(parse(readFileSync("content/words/de.yaml", "utf8")), "de");
const germanKit = { ...kit, words: germanWords, figures: makeFigures("metric", germanWords, "de") };

/** Where a float's states stand: on a page, and as half the columns of A4 and A5 in 11 and 12 points. */
const statePlaces = [
  { name: "page", widthMm: 80, textMm: 3.5 },
  { name: "A4", widthMm: 42.4, textMm: 3.88 },
  { name: "A5", widthMm: 57.6, textMm: 4.23 },
] as const;

test.each(rigs)("$rig.id: its float's states are clear", (rig) => {
  const at = rigs.indexOf(rig);
  for (const [nth, language] of [kit, germanKit].entries()) {
    const { name, widthMm, textMm } = entry(statePlaces, (at + nth) % statePlaces.length);
    const sheet = { textMm, panelMm: widthMm };
    const states = drawFloatStates(rig, rig.depths[0]!, { widthMm }, language, sheet);
    expect(faults(states), `${name}, ${nth === 0 ? "English" : "German"}`).toEqual([]);
  }
});

// Common practice, no source: shot laid on the bed lies there with the hook beyond it; other rigs hang under their floats.
test.each(rigs)("$rig.id: shotted right, its hook lies on the bed where shot are said to", (rig) => {
  const drawing = drawFloatState("right", rig, rig.depths[0]!, 42, kit, { textMm: 3.3 })!;
  const shot = flatItems(drawing.items).flatMap((item) =>
    item.kind === "circle" && item.fill === "ink" ? [item] : [],
  );
  const hook = flatItems(drawing.items).flatMap((item) =>
    item.kind === "path" && !item.fill && item.stroke?.ink === "accent" && item.steps.length > 2
      ? [item.steps.flatMap((step) => (step[0] === "Z" ? [] : [step.slice(-2) as [number, number]]))]
      : [],
  );
  expect([shot.length, hook.length]).toEqual([Math.min(1, rig.depths[0]!.lineShot.length), 1]);
  const [xs, ys] = [0, 1].map((at) => hook[0]!.map((place) => place[at]!)) as [number[], number[]];
  const isLaid = drawing.description.includes("on the bed");
  expect(Math.max(...xs) - Math.min(...xs) > Math.max(...ys) - Math.min(...ys)).toBe(isLaid);
  for (const { cyMm, radiusMm } of shot) expect(Math.max(...ys) - cyMm - radiusMm < 0.5).toBe(isLaid);
});

test.each(rigs.filter(({ rig }) => rig.water === "still"))(
  "$rig.id: a fish that lifts shot never takes the float down",
  (rig) => {
    for (const depth of rig.depths) {
      const before = floatPose("right", rig, depth, kit)!;
      const lifted = floatPose("lift-bite", rig, depth, kit);
      // One that loses its load falls flat.
      if (lifted?.leanDegrees === 0) expect(lifted.tipMm!).toBeGreaterThanOrEqual(before.tipMm!);
    }
  },
);

test.each(library.floats)("$id is clear at true size", ({ float }) => {
  expect(faults(drawFloat(float, { widthMm: 80, heightMm: 260 }, kit))).toEqual([]);
});

test("the chart of all floats is clear", () => {
  const floats = library.floats.map((entry) => entry.float);
  expect(faults(drawFloatChart(floats, { widthMm: 180, heightMm: 260 }, kit, { textMm: 3.2 }))).toEqual([]);
});

test.each(["still", "flowing"])("patterns for %s water stand clear beside each other", (water) => {
  // Patterns are compared in about one depth of water.
  const found = rigs
    .filter(({ rig }) => rig.water === water)
    .sort((a, b) => a.depths[0]!.depthMm - b.depths[0]!.depthMm);
  for (let first = 0; first < found.length; first += 3) {
    const patterns = found.slice(first, first + 3).map((rig) => ({ rig, depth: rig.depths[0]! }));
    for (const widthMm of [80, 170])
      for (const chart of drawPatternCharts(patterns, { widthMm, waterMm: 110, textMm: 3.5 }, kit))
        expect(faults(chart)).toEqual([]);
  }
});
