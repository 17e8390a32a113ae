import { expect, test } from "vitest";
import { first, last } from "../../../src/core/lists.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import type { Ruler } from "../../../src/words/unit-systems.ts";
import {
  clearOfPunchMm,
  edgeTab,
  punchMark,
  ruler,
  rulerInMm,
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

/** What a ruler along a card so high is drawn of. */
function rulerParts(heightMm: number, whiteMm: number, scale: Ruler) {
  const [ticks, line, ...rest] = flatItems(ruler(heightMm, { whiteMm }, scale));
  const texts = rest.filter((item) => item.kind === "text");
  if (ticks?.kind !== "path" || line?.kind !== "path") throw new Error("a ruler has ticks and a line");
  const [[, xMm, fromMm], [, , toMm]] = line.steps as unknown as [
    [string, number, number],
    [string, number, number],
  ];
  return {
    ticks: ticks.steps.flatMap((step) => (step[0] === "M" ? [step[2]] : [])),
    line: { xMm, fromMm, toMm },
    figures: texts.slice(0, -1),
    named: last(texts),
  };
}

test.each([0, 6.35])(
  "a line parts the figures of a ruler off a white edge of %s mm from the words, which begin beside it",
  (whiteMm) => {
    const { figures, measure } = drawingKit;
    const { line, figures: numbers } = rulerParts(86, whiteMm, figures.ruler);
    expect(line.toMm - line.fromMm).toBeGreaterThanOrEqual(figures.ruler.cardUnits * figures.ruler.unitMm);
    const figuresEndMm = numbers.map((one) => one.xMm + measure(one.text, one.sizeMm, one.face));
    expect(figuresEndMm.length).toBeGreaterThan(5);
    expect(line.xMm - Math.max(...figuresEndMm)).toBeGreaterThan(0.3);
    expect(rulerInMm({ whiteMm }) - line.xMm).toBeGreaterThan(0.5);
  },
);

/** An inch of 25.4 mm is the international one of 1959. */
test.each([
  ["metric", 10, 10, 8],
  ["imperial", 25.4, 8, 3],
] as const)(
  "each tick and each figure of a ruler in %s units is so many of them from its head, and its unit stands below its end",
  (unit, unitMm, parts, most) => {
    const scale = makeFigures(unit, drawingKit.words, "en").ruler;
    const { ticks, figures, named } = rulerParts(86, 0, scale);
    expect(ticks).toHaveLength(parts * most + 1);
    const headMm = Math.min(...ticks);
    expect(headMm).toBeGreaterThan(1);
    for (const [i, yMm] of ticks.entries()) expect(yMm).toBeCloseTo(headMm + (i * unitMm) / parts, 9);
    expect(figures.map(({ text }) => Number(text))).toEqual(
      Array.from({ length: most - 1 }, (_, i) => i + 1),
    );
    // Capitals and digits of this face are 0.7 of their size high; the middle of a figure is at its tick.
    for (const { text, yMm, sizeMm } of figures)
      expect(yMm - 0.35 * sizeMm).toBeCloseTo(headMm + Number(text) * unitMm, 9);
    expect(named.text).toBe(unit === "metric" ? "cm" : "in");
    expect(named.yMm - 0.7 * named.sizeMm).toBeGreaterThan(Math.max(...ticks) + 0.3);
    expect(named.yMm).toBeLessThan(86 - 1);
    const namedMm = drawingKit.measure(named.text, named.sizeMm, "regular");
    expect(named.xMm + namedMm).toBeLessThan(rulerInMm({ whiteMm: 0 }) - 0.3);
  },
);

const units = ["metric", "imperial"] as const;
const formats = ["ID-1", "A7", "A6", "A5", "quarter Letter", "half Letter"] as const;

test.each(units.flatMap((unit) => formats.map((format) => [unit, format] as const)))(
  "in %s units every figure of the ruler is there, and a frame parts the one figure to remember from them, %s",
  (unit, format) => {
    const kit = { ...drawingKit, figures: makeFigures(unit, drawingKit.words, "en") };
    for (const solved of sampleRigs) {
      const { front, look } = layOutCard(solved, cardFormats[format], sampleGuide, kit, fonts);
      const items = flatItems(front.items);
      const texts = items.flatMap((item) => (item.kind === "text" ? [item] : []));
      const main = texts.reduce((largest, one) => (one.sizeMm > largest.sizeMm ? one : largest));
      const onRuler = texts.filter(({ xMm }) => xMm < rulerInMm(look.front) - 0.6);
      const many = unit === "metric" ? 7 : 2;
      expect(
        onRuler.map(({ text }) => text).filter((text) => /\d/.test(text)),
        solved.rig.id,
      ).toEqual(Array.from({ length: many }, (_, i) => String(i + 1)));
      // The figure's own height is 0.7 of its size, its width that of all its words.
      const words = texts.filter(({ yMm, sizeMm }) => yMm === main.yMm && sizeMm === main.sizeMm);
      const endMm = Math.max(
        ...words.map(({ xMm, text, sizeMm, face }) => xMm + kit.measure(text, sizeMm, face)),
      );
      const frames = items.flatMap((item) => {
        if (item.kind !== "path" || item.steps.length !== 5 || item.fill || !item.stroke) return [];
        const corners = item.steps.flatMap((step) => (step[0] === "M" || step[0] === "L" ? [step] : []));
        const [xs, ys] = [corners.map(([, x]) => x), corners.map(([, , y]) => y)];
        return [
          { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), foot: Math.max(...ys) },
        ];
      });
      const around = frames.filter(
        ({ left, right, top, foot }) =>
          left < main.xMm - 1 && right > endMm + 1 && top < main.yMm - 0.7 * main.sizeMm && foot > main.yMm,
      );
      expect(around, solved.rig.id).toHaveLength(1);
      for (const { xMm, text, sizeMm, face } of onRuler)
        expect(around[0]!.left - (xMm + kit.measure(text, sizeMm, face)), text).toBeGreaterThan(0.5);
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
    const { ticks, named } = rulerParts(148, 6.35, makeFigures(unit, drawingKit.words, "en").ruler);
    expect(named.yMm).toBeLessThan(Math.min(...ticks) - 0.5);
    expect(named.yMm).toBeGreaterThan(Math.min(...ticks) - 3);
  }
});

test("a card that has room for it says what its tab stands for, of its own water, and what the ring is for", () => {
  for (const solved of sampleRigs) {
    const { back } = layOutCard(solved, cardFormats.A5, sampleGuide, drawingKit, fonts, {
      notes: { level: 2 },
    });
    const text = flatItems(back.items)
      .flatMap((item) => (item.kind === "text" ? [item.text] : []))
      .join(" ");
    const told = { still: "block for still water", flowing: "arrow for running water" };
    expect(text, solved.rig.id).toContain(told[solved.rig.water]);
    expect(text, solved.rig.id).toContain("Ring: for a hole.");
  }
});
