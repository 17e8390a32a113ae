import { expect, test } from "vitest";
import {
  clearOfPunchMm,
  edgeTab,
  punchMark,
  ruler,
  rulerInMm,
  tabFromMm,
} from "../../../templates/cards/card-marks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";

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
    const [group] = ruler(86, { whiteMm }, figures.ruler);
    if (group?.kind !== "group") throw new Error("a ruler is a group");
    const [lines, ...numbers] = group.items;
    if (lines?.kind !== "path") throw new Error("a ruler has lines");
    const points = lines.steps.flatMap((step) => (step[0] === "Z" ? [] : [step.slice(1) as number[]]));
    const rightMm = Math.max(...points.map(([x = 0]) => x));
    const along = points.filter(([x]) => x === rightMm).map(([, y = 0]) => y);
    expect(Math.max(...along) - Math.min(...along)).toBeCloseTo(
      figures.ruler.cardUnits * figures.ruler.unitMm,
      6,
    );
    const figuresEndMm = numbers.map((one) =>
      one.kind === "text" ? one.xMm + measure(one.text, one.sizeMm, one.face) : 0,
    );
    expect(figuresEndMm.length).toBeGreaterThan(5);
    expect(rightMm - Math.max(...figuresEndMm)).toBeGreaterThan(0.3);
    expect(rulerInMm({ whiteMm }) - rightMm).toBeGreaterThan(0.5);
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
