import { describe, expect, test } from "vitest";
import type { GroupItem, PathItem, TextItem } from "../../../src/drawing/model.ts";
import { asPaper } from "../../../src/layout/paper.ts";
import { foldingOrder, imposeBooklet, sectionsOf } from "../../../src/print/handout/booklet.ts";
import { paperSizes } from "../../../src/print/sheets/paper-sizes.ts";

type Side = readonly [number, number];

/**
 * Prints, folds and reads a section with paper alone: each sheet is a left and a right half with a front and a back;
 * turned on its short edge, a right half has the back's left page behind it. The stack is folded so that the right
 * halves lie in front, the first sheet outermost; a reader then goes through the leaves one by one.
 */
function readFolded(sides: readonly Side[]): number[] {
  const sheets = Array.from({ length: sides.length / 2 }, (_, i) => {
    const [front, back] = [sides[2 * i]!, sides[2 * i + 1]!];
    return {
      rightHalf: { outside: front[1], inside: back[0] },
      leftHalf: { outside: front[0], inside: back[1] },
    };
  });
  const leaves = [
    ...sheets.map(({ rightHalf }) => [rightHalf.outside, rightHalf.inside]),
    ...[...sheets].reverse().map(({ leftHalf }) => [leftHalf.inside, leftHalf.outside]),
  ];
  return leaves.flat();
}

const numbers = (count: number) => Array.from({ length: count }, (_, i) => i);

describe("folding", () => {
  test("eight pages on two sheets, as printers have them", () => {
    // Source: common practice, no source: 8–1, 2–7 on the outer sheet, 6–3, 4–5 on the inner one.
    expect(foldingOrder({ firstPage: 0, sheets: 2 }).map((pair) => pair.map((page) => page + 1))).toEqual([
      [8, 1],
      [2, 7],
      [6, 3],
      [4, 5],
    ]);
  });

  test.each([1, 2, 3, 4, 5, 8, 13, 23, 24, 25, 28, 47, 48, 49, 100, 164, 241])(
    "%i pages read in order when the sections are folded and stacked, blanks last",
    (count) => {
      const read = sectionsOf(count).flatMap((section) => readFolded(foldingOrder(section)));
      expect(read).toEqual(numbers(4 * Math.ceil(count / 4)));
    },
  );

  test.each([1, 24, 25, 49, 100, 164, 241])("%i pages make thin, equal sections", (count) => {
    const sheets = sectionsOf(count).map((section) => section.sheets);
    // Common practice, no source: about six sheets of office paper fold well by hand.
    expect(Math.max(...sheets)).toBeLessThanOrEqual(6);
    expect(Math.max(...sheets) - Math.min(...sheets)).toBeLessThanOrEqual(1);
    expect(sheets.length).toBe(Math.ceil(Math.ceil(count / 4) / 6));
  });

  test("pages stand side by side, unchanged", () => {
    const pages = [1, 2, 3, 4].map((radiusMm) =>
      asPaper({ ...paperSizes.A5, items: [{ kind: "circle", cxMm: 5, cyMm: 5, radiusMm, fill: "ink" }] }),
    );
    const sides = imposeBooklet(pages);
    expect(sides).toHaveLength(2);
    expect([sides[0]!.widthMm, sides[0]!.heightMm]).toEqual([2 * 148, 210]);
    expect(sides[0]!.parts.map(({ xMm, items }) => [xMm, items])).toEqual([
      [0, pages[3]!.parts[0]!.items],
      [148, pages[0]!.parts[0]!.items],
      [0, []],
    ]);
  });

  test("sections are numbered at the fold, outside, by marks that step down", () => {
    const pages = numbers(50).map(() => asPaper({ ...paperSizes.A5, items: [] }));
    const marked = imposeBooklet(pages).flatMap(({ parts }, side) =>
      (parts.at(-1)!.items as GroupItem[]).map((mark) => ({ side, mark })),
    );
    // 13 sheets in sections of 5, 4 and 4: each has two sides a sheet.
    expect(marked.map(({ side }) => side)).toEqual([0, 10, 18]);
    let endMm = 0;
    marked.forEach(({ mark }, i) => {
      expect(mark.artifact).toBe(true);
      const [bar, number] = mark.items as [PathItem, TextItem];
      expect(number.text).toBe(String(i + 1));
      const points = bar.steps.flatMap(([, ...xy]) => (xy.length === 2 ? [xy as [number, number]] : []));
      const xs = points.map(([x]) => x);
      const ys = points.map(([, y]) => y);
      expect((Math.min(...xs) + Math.max(...xs)) / 2).toBeCloseTo(148, 9);
      if (i > 0) expect(Math.min(...ys)).toBeCloseTo(endMm, 9);
      endMm = Math.max(...ys);
    });
  });
});
