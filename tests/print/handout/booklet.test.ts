import { describe, expect, test } from "vitest";
import { asPaper } from "../../../src/layout/paper.ts";
import { foldingOrder, imposeBooklet } from "../../../src/print/handout/booklet.ts";
import { enlarged } from "../../../src/print/handout/enlarge.ts";
import { paperSizes } from "../../../src/print/paper-sizes.ts";

/** Reads a stack of folded sheets as a reader would: turns the leaves from the front, both sides of each. */
function readFolded(sides: readonly (readonly [number | undefined, number | undefined])[]) {
  const sheets = Array.from({ length: sides.length / 2 }, (_, i) => ({
    front: sides[2 * i]!,
    back: sides[2 * i + 1]!,
  }));
  const firstHalves = sheets.flatMap(({ front, back }) => [front[1], back[0]]);
  const secondHalves = [...sheets].reverse().flatMap(({ front, back }) => [back[1], front[0]]);
  return [...firstHalves, ...secondHalves];
}

describe("folding", () => {
  test("eight pages on two sheets, as printers have them", () => {
    // Source: common practice, no source: 8–1, 2–7 on the outer sheet, 6–3, 4–5 on the inner one.
    expect(foldingOrder(8).map((pair) => pair.map((page) => page! + 1))).toEqual([
      [8, 1],
      [2, 7],
      [6, 3],
      [4, 5],
    ]);
  });

  test.each([1, 2, 3, 4, 5, 7, 8, 12, 13, 164])("%i pages read in order, blanks last", (count) => {
    const read = readFolded(foldingOrder(count));
    expect(read.length % 4).toBe(0);
    expect(read.slice(0, count)).toEqual(Array.from({ length: count }, (_, i) => i));
    expect(read.slice(count).every((page) => page === undefined)).toBe(true);
    expect(read.length - count).toBeLessThan(4);
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
    ]);
  });
});

describe("enlarging", () => {
  // Source: ISO 216: each size has the proportion 1 : √2, so A5 fills A4 but for the rounding to millimetres.
  test("A5 fills A4 at the square root of two", () => {
    const large = enlarged(asPaper({ ...paperSizes.A5, items: [] }), paperSizes.A4);
    expect([large.widthMm, large.heightMm]).toEqual([210, 297]);
    expect(large.parts[0]!.scale).toBeCloseTo(Math.SQRT2, 2);
    expect(large.parts[0]!.xMm).toBeLessThan(0.6);
  });

  test("half a Letter stands in the middle of a Letter", () => {
    const { Letter } = paperSizes;
    const { parts } = enlarged(asPaper({ ...paperSizes["half Letter"], items: [] }), Letter);
    const { scale, xMm, yMm, widthMm } = parts[0]!;
    expect(2 * xMm + scale! * widthMm).toBeCloseTo(Letter.widthMm, 9);
    expect(yMm).toBeCloseTo(0, 9);
  });
});
