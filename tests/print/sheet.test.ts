import { describe, expect, test } from "vitest";
import type { Item, PathItem } from "../../src/drawing/model.ts";
import { moved, type PaperSide, type Placed, placing } from "../../src/layout/paper.ts";
import { paperSizes, unprintableMm } from "../../src/print/paper-sizes.ts";
import { type Card, cardGapMm, sheets, turnings } from "../../src/print/sheet.ts";
import { checkBar, cropMark, cropMarks } from "../../src/print/sheet-marks.ts";

const note = { widthMm: 190, heightMm: 7, items: [] };
const notes = { front: note, back: note };

/** Cards whose faces each hold one dot, off the middle, so that turning and mirroring show. */
function cards(count: number): Card[] {
  const dot = (id: number): Item => ({
    kind: "circle",
    cxMm: 10,
    cyMm: 4,
    radiusMm: 1 + id / 100,
    fill: "ink",
  });
  return Array.from({ length: count }, (_, i) => ({
    id: `card-${i}`,
    widthMm: 85.6,
    heightMm: 53.98,
    front: { widthMm: 53.98, heightMm: 85.6, items: [dot(i)], turn: 270 },
    back: { widthMm: 85.6, heightMm: 53.98, items: [dot(i)], turn: 0 },
  }));
}

const isFace = (part: Placed) => part.items.length === 1 && part.items[0]!.kind === "circle";

/** The rectangle that a placed face covers, by its corners. */
function covered(part: Placed) {
  const corners = [moved(placing(part), 0, 0), moved(placing(part), part.widthMm, part.heightMm)];
  const xs = corners.map((corner) => corner.xMm);
  const ys = corners.map((corner) => corner.yMm);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** A point of the back as it is seen through the paper from the front, after turning on an edge. */
function throughPaper(
  paper: PaperSide,
  turning: "long edge" | "short edge",
  at: { xMm: number; yMm: number },
) {
  return turning === "long edge"
    ? { xMm: paper.widthMm - at.xMm, yMm: at.yMm }
    : { xMm: at.xMm, yMm: paper.heightMm - at.yMm };
}

const papers = [
  ["A4", paperSizes.A4],
  ["Letter", paperSizes.Letter],
] as const;

describe.each(papers)("cards on %s", (_, paper) => {
  test("stay inside the unprintable margin, apart from each other", () => {
    for (const turning of turnings) {
      for (const side of sheets(cards(8), paper, turning, notes)) {
        const boxes = side.parts.filter(isFace).map(covered);
        for (const box of boxes) {
          expect(box.left).toBeGreaterThanOrEqual(unprintableMm);
          expect(box.top).toBeGreaterThanOrEqual(unprintableMm);
          expect(paper.widthMm - box.right).toBeGreaterThanOrEqual(unprintableMm);
          expect(paper.heightMm - box.bottom).toBeGreaterThanOrEqual(unprintableMm);
        }
        for (const [i, a] of boxes.entries()) {
          for (const b of boxes.slice(i + 1)) {
            const across = Math.max(b.left - a.right, a.left - b.right);
            const down = Math.max(b.top - a.bottom, a.top - b.bottom);
            const touching = turning === "fold" && Math.abs(across) < 1e-6 && Math.abs(a.top - b.top) < 1e-6;
            if (!touching) expect(Math.max(across, down)).toBeGreaterThan(cardGapMm - 1e-6);
          }
        }
      }
    }
  });

  test.each(["long edge", "short edge"] as const)(
    "backs lie behind their fronts, turned on the %s",
    (turning) => {
      const sides = sheets(cards(8), paper, turning, notes);
      expect(sides).toHaveLength(2);
      const [fronts, backs] = sides.map((side) => side.parts.filter(isFace));
      fronts!.forEach((front, i) => {
        const back = backs!.find((part) => sameDot(part, front))!;
        const box = covered(back);
        const a = throughPaper(sides[1]!, turning, { xMm: box.left, yMm: box.top });
        const b = throughPaper(sides[1]!, turning, { xMm: box.right, yMm: box.bottom });
        const want = covered(front);
        expect(Math.min(a.xMm, b.xMm), `card ${i}`).toBeCloseTo(want.left, 9);
        expect(Math.max(a.xMm, b.xMm)).toBeCloseTo(want.right, 9);
        expect(Math.min(a.yMm, b.yMm)).toBeCloseTo(want.top, 9);
        expect(Math.max(a.yMm, b.yMm)).toBeCloseTo(want.bottom, 9);
      });
    },
  );

  test("whatever the turning, the cut card is the same: its top right corners are one corner", () => {
    for (const turning of ["long edge", "short edge"] as const) {
      const sides = sheets(cards(3), paper, turning, notes);
      const [front, back] = sides.map((side) => side.parts.find(isFace)!);
      const frontCorner = moved(placing(front!), front!.widthMm, 0);
      const backCorner = throughPaper(sides[1]!, turning, moved(placing(back!), back!.widthMm, 0));
      expect(backCorner.xMm).toBeCloseTo(frontCorner.xMm, 9);
      expect(backCorner.yMm).toBeCloseTo(frontCorner.yMm, 9);
    }
  });

  test("folded back along its middle, a card is that same card", () => {
    const [side] = sheets(cards(2), paper, "fold", notes);
    const [front, back] = side!.parts.filter(isFace);
    const foldX = covered(front!).right;
    expect(covered(back!).left).toBeCloseTo(foldX, 9);
    const frontCorner = moved(placing(front!), front!.widthMm, 0);
    const backCorner = moved(placing(back!), back!.widthMm, 0);
    expect(2 * foldX - backCorner.xMm).toBeCloseTo(frontCorner.xMm, 9);
    expect(backCorner.yMm).toBeCloseTo(frontCorner.yMm, 9);
  });
});

function sameDot(a: Placed, b: Placed): boolean {
  return JSON.stringify(a.items) === JSON.stringify(b.items);
}

test("more cards than a sheet takes go on more sheets, front and back in turn", () => {
  const sides = sheets(cards(11), paperSizes.A4, "long edge", notes);
  expect(sides.map((side) => side.parts.filter(isFace).length)).toEqual([8, 8, 3, 3]);
});

test("no cards make no sheet", () => {
  expect(sheets([], paperSizes.A4, "fold", notes)).toEqual([]);
});

describe("marks", () => {
  const steps = (item: Item) => (item as PathItem).steps;

  test("crop marks stand in line with the card's edges, off its corners, and shorter than half the gap", () => {
    const [mark] = cropMarks([{ xMm: 10, yMm: 20, widthMm: 85.6, heightMm: 53.98 }]);
    expect(steps(mark!)).toHaveLength(16);
    for (const [letter, ...at] of steps(mark!)) {
      const [x, y] = at as number[];
      expect(["M", "L"]).toContain(letter);
      const onEdgeAcross = [10, 95.6].some((edge) => Math.abs(x! - edge) < 1e-9);
      const onEdgeDown = [20, 73.98].some((edge) => Math.abs(y! - edge) < 1e-9);
      expect(onEdgeAcross || onEdgeDown).toBe(true);
      const off = Math.max(10 - x!, x! - 95.6, 20 - y!, y! - 73.98);
      expect(off).toBeGreaterThanOrEqual(cropMark.offMm - 1e-9);
      expect(off).toBeLessThanOrEqual(cardGapMm / 2 + 1e-9);
    }
  });

  test("the check bar is 100 mm", () => {
    const [bar] = checkBar(105, 280);
    const xs = steps(bar!).map((step) => step[1] as number);
    expect(Math.max(...xs) - Math.min(...xs)).toBe(100);
  });
});
