import { expect, test } from "vitest";
import { drawTrueTip } from "../../../src/drawing/float/true-tip.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";

// An inch is 25.4 mm. Source: the international yard and pound agreement of 1959.
test.each([
  ["metric", 1, 10, ["0", "10", "15", "mm"]],
  ["metric first", 1, 10, ["0", "10", "15", "mm"]],
  // The half inch is too near to the tip.
  ["imperial", 2.54, 15.24, ["0", "0.6", "in"]],
  ["us", 2.54, 15.24, ["0", "0.6", "in"]],
] as const)(
  "in %s units the scale beside a tip has a tick every %s mm, and its unit",
  (units, tickMm, figureMm, figures) => {
    const { ruler } = makeFigures(units, drawingKit.words, "en");
    const flat = flatItems(drawTrueTip(sampleWaggler.rig.float, 15, 2.82, ruler.tip).items);
    const labels = flat.flatMap((item) => (item.kind === "text" ? [item] : []));
    expect(labels.map(({ text }) => text)).toEqual(figures);
    expect(labels[0]!.yMm - labels[1]!.yMm).toBeCloseTo(figureMm, 6);
    const levels = flat.flatMap((item) => {
      if (item.kind !== "path" || item.steps.length !== 2) return [];
      const [from, to] = item.steps.map((step) => step[2] as number);
      return from === to ? [from!] : [];
    });
    const ticks = [...new Set(levels)].sort((a, b) => b - a);
    expect(ticks.length).toBeGreaterThan(5);
    for (const [i, y] of ticks.entries()) expect(ticks[0]! - y).toBeCloseTo(i * tickMm, 6);
  },
);

test.each(["metric", "imperial"] as const)(
  "in %s units the tip that is told has its figure on the scale, and no two stand in each other",
  (units) => {
    const { ruler, tip } = makeFigures(units, drawingKit.words, "en");
    for (const textMm of [2.82, 4.2, 5.64])
      for (const toldMm of [5, 10, 15, 20, 25, 35, 50]) {
        const { items } = drawTrueTip(sampleWaggler.rig.float, toldMm, textMm, ruler.tip);
        const labels = flatItems(items).flatMap((item) => (item.kind === "text" ? [item] : []));
        expect(labels[0]!.text).toBe("0");
        expect(labels.map(({ text }) => text)).toContain(/^[\d.]+/.exec(tip(toldMm))![0]);
        const heights = labels.map(({ yMm }) => yMm).sort((a, b) => b - a);
        // Digits of this face are 0.7 of their size high.
        for (const [at, yMm] of heights.slice(1).entries())
          expect(heights[at]! - yMm).toBeGreaterThan(0.7 * textMm);
      }
  },
);

test.each(["metric", "metric first", "imperial"] as const)(
  "in %s units a scale in larger type has no fewer figures",
  (units) => {
    const { ruler } = makeFigures(units, drawingKit.words, "en");
    for (const toldMm of [10, 15, 20, 25, 30, 35, 50]) {
      const [small, ...larger] = [8, 9, 12, 14, 16].map((pt) =>
        flatItems(drawTrueTip(sampleWaggler.rig.float, toldMm, (pt * 25.4) / 72, ruler.tip).items).flatMap(
          (item) => (item.kind === "text" ? [item.text] : []),
        ),
      );
      for (const figures of larger) expect(figures, `${toldMm} mm`).toEqual(small);
    }
  },
);
