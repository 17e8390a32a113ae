import { expect, test } from "vitest";
import { drawTrueTip } from "../../../src/drawing/float/true-tip.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";

// An inch is 25.4 mm. Source: the international yard and pound agreement of 1959.
test.each([
  ["metric", 1, 10, ["0", "10"]],
  ["metric first", 1, 10, ["0", "10"]],
  ["imperial", 2.54, 12.7, ["0", "0.5"]],
  ["us", 2.54, 12.7, ["0", "0.5"]],
] as const)(
  "in %s units the scale beside a tip has a tick every %s mm",
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
