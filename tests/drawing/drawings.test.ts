import { describe, expect, test } from "vitest";
import { drawFloatChart } from "../../src/drawing/float/float-chart.ts";
import { drawFloat } from "../../src/drawing/float/float-drawing.ts";
import { floatPictures } from "../../src/drawing/float/float-poses.ts";
import { drawFloatState, drawFloatStates } from "../../src/drawing/float/float-states.ts";
import type { Drawing } from "../../src/drawing/model.ts";
import { drawPatternCharts } from "../../src/drawing/patterns/pattern-chart.ts";
import { drawingFaults, flatItems } from "../support/drawing-checks.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { avon, sampleRigs, sampleStick, sampleWaggler, stick, waggler } from "../support/sample-rig.ts";

const floats = [waggler, stick, avon];
const patterns = sampleRigs.map((rig) => ({ rig, depth: rig.depths[0]! }));
const drawings = [
  ...floats.map((float) => drawFloat(float, { widthMm: 70, heightMm: 220 }, drawingKit)),
  ...floats.map((float) => drawFloat(float, { widthMm: 60, heightMm: 115 }, drawingKit, { textMm: 3.2 })),
  drawFloatChart(floats, { widthMm: 90, heightMm: 150 }, drawingKit, { textMm: 3.2 }),
  ...[160, 80, 60].flatMap((widthMm) =>
    drawPatternCharts(patterns, { widthMm, waterMm: 80, textMm: 3.5 }, drawingKit),
  ),
  ...sampleRigs.map((rig) =>
    drawFloatStates(rig, rig.depths[0]!, { widthMm: 90 }, drawingKit, { textMm: 3.3, panelMm: 40 }),
  ),
];

describe("floats, states and charts", () => {
  test.each(drawings)("$title: text is clear of text and marks, all in the frame", (drawing) => {
    expect(drawingFaults(drawing)).toEqual([]);
    expect(drawing.description).not.toBe("");
  });

  test("patterns that find no room side by side go into further charts to the same scale", () => {
    const room = { waterMm: 80, textMm: 3.5 };
    const wide = drawPatternCharts(patterns, { widthMm: 160, ...room }, drawingKit);
    const narrow = drawPatternCharts(patterns, { widthMm: 60, ...room }, drawingKit);
    expect(wide).toHaveLength(1);
    expect(narrow).toHaveLength(2);
    const depths = (drawing: Drawing) =>
      flatItems(drawing.items).flatMap((item) =>
        item.kind === "text" && item.anchor === "end" ? [[item.text, item.yMm]] : [],
      );
    for (const chart of narrow) expect(depths(chart)).toEqual(depths(wide[0]!));
    // The bed's own depth is the last, so that it is named where no even figure falls on it.
    const odd = { ...patterns[0]!, depth: { ...patterns[0]!.depth, depthMm: 1230 } };
    const [chart] = drawPatternCharts([odd], { widthMm: 80, ...room }, drawingKit);
    expect(depths(chart!).at(-1)![0]).toBe("1.23 m");
  });

  test("a bulk is told from one that is spread: its shot overlap, the others keep line between them", () => {
    const [entry] = patterns;
    const [shot] = entry!.depth.lineShot;
    const edgesMm = (stepMm: number) => {
      const lineShot = [0, 1, 2].map((i) => ({ ...shot!, fromHookMm: 600 + i * stepMm }));
      const depth = { ...entry!.depth, lineShot, lockShot: [], lock: { above: [], below: [] } };
      const [drawing] = drawPatternCharts(
        [{ rig: entry!.rig, depth }],
        { widthMm: 60, waterMm: 80, textMm: 3.5 },
        drawingKit,
      );
      const discs = flatItems(drawing!.items)
        .flatMap((item) => (item.kind === "circle" && item.fill === "ink" ? [item] : []))
        .sort((a, b) => a.cyMm - b.cyMm);
      expect(discs).toHaveLength(3);
      return discs.slice(1).map((one, i) => one.cyMm - discs[i]!.cyMm - one.radiusMm - discs[i]!.radiusMm);
    };
    for (const mm of edgesMm(shot!.diameterMm)) expect(mm).toBeLessThan(-0.3);
    for (const mm of edgesMm(100)) expect(mm).toBeGreaterThan(0.3);
  });

  test("a size of shot is as large in one rig of a chart as in the next", () => {
    const some = sampleRigs.flatMap((rig) => rig.depths.map((depth) => ({ rig, depth })));
    const charts = drawPatternCharts(some, { widthMm: 160, waterMm: 40, textMm: 3.5 }, drawingKit);
    const radii = charts.flatMap(({ items }) =>
      flatItems(items).flatMap((item) =>
        item.kind === "circle" && item.fill === "ink" ? [item.radiusMm] : [],
      ),
    );
    const sizes = some.flatMap(({ depth }) =>
      [...depth.lineShot, ...depth.lockShot].map((one) => one.diameterMm),
    );
    expect(new Set(sizes).size).toBeGreaterThan(2);
    expect(new Set(radii.map((one) => one.toFixed(6))).size).toBe(new Set(sizes).size);
  });

  test("in a pattern the shot that lock the float are bracketed and stand clear of those down the line", () => {
    const entry = patterns.find(({ depth }) => depth.lockShot.length > 1)!;
    const [drawing] = drawPatternCharts([entry], { widthMm: 60, waterMm: 80, textMm: 3.5 }, drawingKit);
    const items = flatItems(drawing!.items);
    const shots = items
      .flatMap((item) => (item.kind === "circle" && item.fill === "ink" ? [item] : []))
      .sort((a, b) => a.cyMm - b.cyMm);
    const { length } = entry.depth.lockShot;
    const { above, below } = entry.depth.lock;
    // Those above the float's eye are on the line to the rod, aside from the line to the hook.
    const lineX = shots.at(-1)!.cxMm;
    expect(shots.filter(({ cxMm }) => cxMm < lineX - 1)).toHaveLength(above.length);
    expect(shots.slice(0, length).filter(({ cxMm }) => cxMm === lineX)).toHaveLength(below.length);
    const [lowestLock, highestOnLine] = [shots[length - 1]!, shots[length]!];
    const footMm = lowestLock.cyMm + lowestLock.radiusMm;
    expect(highestOnLine.cyMm - highestOnLine.radiusMm - footMm).toBeGreaterThan(1.5);
    const brackets = items.flatMap((item) =>
      item.kind === "path" && item.stroke?.ink === "soft" && item.steps.length === 4 ? [item.steps] : [],
    );
    expect(brackets.map((steps) => [steps[0]![2], steps[3]![2]])).toContainEqual([
      expect.closeTo(shots[0]!.cyMm - shots[0]!.radiusMm, 6),
      expect.closeTo(footMm, 6),
    ]);
  });

  test("a float in a tall enough box is as long as it is", () => {
    const drawing = drawFloat(waggler, { widthMm: 70, heightMm: 220 }, drawingKit);
    const outline = flatItems(drawing.items).filter((item) => item.kind === "path" && item.fill);
    const heights = outline.flatMap((item) =>
      item.kind === "path" ? item.steps.flatMap((step) => (step[0] === "Z" ? [] : [step[2]])) : [],
    );
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(200, 6);
  });

  test("still water has no shot dragging the float under, running water no float laid on", () => {
    const has = (rig: typeof sampleStick) =>
      floatPictures.filter((picture) =>
        drawFloatState(picture, rig, rig.depths[0]!, 42, drawingKit, { textMm: 3.3 }),
      );
    expect(has(sampleWaggler)).toContain("laid-on");
    expect(has(sampleWaggler)).not.toContain("held-by-the-bed");
    expect(has(sampleStick)).toContain("held-by-the-bed");
    expect(has(sampleStick)).not.toContain("laid-on");
  });

  test("a box without room for the picture is refused with its size", () => {
    expect(() => drawFloat(waggler, { widthMm: 20, heightMm: 30 }, drawingKit)).toThrow("20 × 30 mm");
    expect(() => drawFloatChart(floats, { widthMm: 20, heightMm: 30 }, drawingKit)).toThrow("20 × 30 mm");
  });
});
