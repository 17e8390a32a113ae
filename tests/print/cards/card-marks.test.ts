import { expect, test } from "vitest";
import { first } from "../../../src/core/lists.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import {
  clearOfPunchMm,
  edgeTab,
  punchMark,
  rulerFigures,
  rulerInMm,
  rulerTicks,
  tabFromMm,
} from "../../../templates/cards/card-marks.ts";
import { flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleRigs } from "../../support/sample-rig.ts";
import { sampleGuide } from "../sample-print.ts";

const fonts = nodeFonts();

test.each([0, 6.35])(
  "the hole is guided in two steps off a white edge of %s mm, its film all round the paper's hole",
  (whiteMm) => {
    for (const corner of ["left", "right"] as const) {
      const [paper, film] = punchMark(54, corner, { whiteMm });
      if (paper?.kind !== "circle" || film?.kind !== "circle") throw new Error("a hole is round");
      // Source: ISO 838:1974, holes of 6 mm ± 0.5 mm.
      expect(Math.abs(2 * paper.radiusMm - 6)).toBeLessThanOrEqual(0.5);
      // The film between the two keeps water out: at least 1 mm of it (common practice, no source).
      expect(paper.radiusMm - film.radiusMm).toBeGreaterThanOrEqual(1);
      expect([film.cxMm, film.cyMm]).toEqual([paper.cxMm, paper.cyMm]);
      const fromSide = corner === "left" ? paper.cxMm : 54 - paper.cxMm;
      expect(Math.min(fromSide, paper.cyMm) - paper.radiusMm).toBeGreaterThanOrEqual(Math.max(1, whiteMm));
    }
  },
);

test("a tab tells still water from running by its shape and the level by bars, below the hole", () => {
  const edge = { whiteMm: 0 };
  const shape = (water: "still" | "flowing", bars: number) => {
    const [tab] = edgeTab(54, tabFromMm(edge), { water, bars }, edge);
    if (tab?.kind !== "path") throw new Error("a tab is a shape");
    const closed = tab.steps.filter(([kind]) => kind === "Z").length;
    const first = tab.steps.findIndex(([kind]) => kind === "Z");
    const ys = tab.steps.flatMap((step) => (step[0] === "M" || step[0] === "L" ? [step[2]] : []));
    return { closed, corners: first, topMm: Math.min(...ys) };
  };
  for (const bars of [1, 2, 3]) {
    expect(shape("still", bars)).toMatchObject({ closed: 1 + bars, corners: 4 });
    expect(shape("flowing", bars)).toMatchObject({ closed: 1 + bars, corners: 3 });
  }
  const [paper] = punchMark(54, "right", edge);
  if (paper?.kind !== "circle") throw new Error("a hole is round");
  expect(shape("still", 1).topMm).toBeGreaterThan(paper.cyMm + paper.radiusMm);
});

test.each([0, 6.35])(
  "a line parts the figures of a ruler off a white edge of %s mm from the words, which begin beside it",
  (whiteMm) => {
    const { figures, measure } = drawingKit;
    const [group] = rulerFigures(86, { whiteMm }, figures.ruler, { fromMm: 0, toMm: 86 });
    if (group?.kind !== "group") throw new Error("a ruler is a group");
    const [line, ...numbers] = group.items;
    if (line?.kind !== "path") throw new Error("a line parts the figures");
    const points = line.steps.flatMap((step) => (step[0] === "Z" ? [] : [step.slice(1) as number[]]));
    const [[rightMm = 0, fromMm = 0] = [], [, toMm = 0] = []] = points;
    expect(toMm - fromMm).toBeGreaterThanOrEqual(figures.ruler.cardUnits * figures.ruler.unitMm);
    const figuresEndMm = numbers.map((one) =>
      one.kind === "text" ? one.xMm + measure(one.text, one.sizeMm, one.face) : 0,
    );
    expect(figuresEndMm.length).toBeGreaterThan(5);
    expect(rightMm - Math.max(...figuresEndMm)).toBeGreaterThan(0.3);
    expect(rulerInMm({ whiteMm }) - rightMm).toBeGreaterThan(0.5);
  },
);

/** An inch of 25.4 mm is the international one of 1959. */
test.each([
  ["metric", 10, 10, 8],
  ["imperial", 25.4, 8, 3],
] as const)(
  "each tick and each figure of a ruler in %s units is so many of them from its head, and its unit stands below its end",
  (unit, unitMm, parts, most) => {
    const { ruler } = makeFigures(unit, drawingKit.words, "en");
    const [lines, named] = flatItems(rulerTicks(86, { whiteMm: 0 }, ruler));
    if (lines?.kind !== "path" || named?.kind !== "text") throw new Error("a ruler has lines and a unit");
    const ticks = lines.steps.flatMap((step) => (step[0] === "M" ? [step[2]] : []));
    expect(ticks).toHaveLength(parts * most + 1);
    const headMm = Math.min(...ticks);
    expect(headMm).toBeGreaterThan(1);
    for (const [i, yMm] of ticks.entries()) expect(yMm).toBeCloseTo(headMm + (i * unitMm) / parts, 9);
    const texts = flatItems(rulerFigures(86, { whiteMm: 0 }, ruler, { fromMm: 0, toMm: 86 })).filter(
      (item) => item.kind === "text",
    );
    expect(texts.map(({ text }) => Number(text))).toEqual(Array.from({ length: most - 1 }, (_, i) => i + 1));
    for (const { text, yMm } of texts)
      expect(yMm - texts[0]!.yMm).toBeCloseTo((Number(text) - 1) * unitMm, 9);
    expect(named.text).toBe(unit === "metric" ? "cm" : "in");
    // Capitals of this face are 0.7 of their size high.
    expect(named.yMm - 0.7 * named.sizeMm).toBeGreaterThan(Math.max(...ticks) + 0.3);
    expect(named.yMm).toBeLessThan(86 - 1);
    const namedMm = drawingKit.measure(named.text, named.sizeMm, "regular");
    expect(named.xMm + namedMm).toBeLessThan(rulerInMm({ whiteMm: 0 }) - 0.3);
  },
);

const units = ["metric", "imperial"] as const;
const formats = ["ID-1", "A7", "A6", "A5", "quarter Letter", "half Letter"] as const;

test.each(units.flatMap((unit) => formats.map((format) => [unit, format] as const)))(
  "in %s units no figure and no line of the ruler stands beside the one figure to remember, %s",
  (unit, format) => {
    const kit = { ...drawingKit, figures: makeFigures(unit, drawingKit.words, "en") };
    for (const solved of sampleRigs) {
      const { front } = layOutCard(solved, cardFormats[format], sampleGuide, kit, fonts);
      const items = flatItems(front.items);
      const texts = items.flatMap((item) => (item.kind === "text" ? [item] : []));
      const main = texts.reduce((largest, one) => (one.sizeMm > largest.sizeMm ? one : largest));
      // From the top of its digits, 0.7 of their size high, to the line they stand on.
      const beside = (fromMm: number, toMm: number) =>
        toMm > main.yMm - 0.7 * main.sizeMm && fromMm < main.yMm;
      const left = texts.filter(({ xMm }) => xMm < main.xMm - 0.5);
      expect(left.length, solved.rig.id).toBeGreaterThan(0);
      for (const { yMm, sizeMm, text } of left)
        expect(beside(yMm - 0.7 * sizeMm, yMm), `${solved.rig.id}: ${text}`).toBe(false);
      const uprights = items.flatMap((item) => {
        if (item.kind !== "path" || item.steps.length !== 2) return [];
        const [[fromX, fromY], [toX, toY]] = item.steps.map((step) => step.slice(1)) as [number[], number[]];
        return fromX === toX && fromX! < main.xMm && fromX! > main.xMm - 3 ? [[fromY!, toY!] as const] : [];
      });
      expect(uprights.length, solved.rig.id).toBeGreaterThan(0);
      for (const [fromMm, toMm] of uprights) expect(beside(fromMm, toMm), solved.rig.id).toBe(false);
    }
  },
);

test.each([0, 6.35])(
  "a title that begins beside the hole is a millimetre and more from it, off a white edge of %s mm",
  (whiteMm) => {
    const [paper] = punchMark(74, "left", { whiteMm });
    if (paper?.kind !== "circle") throw new Error("a hole is round");
    for (const marginMm of [2.2, 3.5, 8]) {
      const beginsMm = marginMm + clearOfPunchMm(marginMm, "left", { whiteMm });
      expect(beginsMm - (paper.cxMm + paper.radiusMm)).toBeGreaterThan(1);
    }
  },
);

test.each(units.flatMap((unit) => formats.map((format) => [unit, format] as const)))(
  "in %s units nothing of the drawing stands in the tab or touches it, %s",
  (unit, format) => {
    const kit = { ...drawingKit, figures: makeFigures(unit, drawingKit.words, "en") };
    for (const solved of sampleRigs) {
      const { front } = layOutCard(solved, cardFormats[format], sampleGuide, kit, fonts, {
        notes: { level: 3 },
      });
      const { whiteMm, marginMm } = first(cardFormats[format].fronts);
      const fromMm = tabFromMm({ whiteMm });
      const tabMm = front.widthMm - whiteMm - 1.6;
      const beside = flatItems(front.items).filter(
        (item) =>
          item.kind === "path" &&
          item.steps.some(([, x = 0, y = 0]) => x > tabMm - 0.4 && y > fromMm && y < fromMm + 11),
      );
      expect(beside, `${solved.rig.id}, ${marginMm}`).toHaveLength(1);
    }
  },
);

test("a ruler with room above its 0 has its unit there, where nothing stands beside it", () => {
  for (const unit of units) {
    const { ruler } = makeFigures(unit, drawingKit.words, "en");
    const [lines, named] = flatItems(rulerTicks(148, { whiteMm: 6.35 }, ruler));
    if (lines?.kind !== "path" || named?.kind !== "text") throw new Error("a ruler has lines and a unit");
    const ticks = lines.steps.flatMap((step) => (step[0] === "M" ? [step[2]] : []));
    expect(named.yMm).toBeLessThan(Math.min(...ticks) - 0.5);
    expect(named.yMm).toBeGreaterThan(Math.min(...ticks) - 3);
  }
});
