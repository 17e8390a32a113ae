import { expect, test } from "vitest";
import { edgeTab, punchMark, tabFromMm } from "../../../templates/cards/card-marks.ts";

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
