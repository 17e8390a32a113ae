import { describe, expect, test } from "vitest";
import type { Item, PathItem, PathStep } from "../../../src/drawing/model.ts";
import { moved, type PaperSide, type Placed, placing } from "../../../src/layout/paper.ts";
import { cardFormatsOn } from "../../../src/print/cards/card-formats.ts";
import { turnedCard } from "../../../src/print/cards/turned-card.ts";
import { paperSizes, unprintableMm } from "../../../src/print/sheets/paper-sizes.ts";
import { type Card, sheets, turnings } from "../../../src/print/sheets/sheet.ts";
import {
  checkBar,
  cropMark,
  cropMarks,
  foldMarks,
  roundedCorners,
} from "../../../src/print/sheets/sheet-marks.ts";

/** 3 mm of laminating film round each card, as much as a laminator needs to seal it. Common practice, no source. */
const apartMm = 2 * 3;

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

const withCards = (sides: readonly PaperSide[]) => sides.filter(({ parts }) => parts.some(isFace));

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
      const gaps: number[] = [];
      for (const side of sheets(cards(8), paper, turning, "apart", notes)) {
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
            if (!touching) gaps.push(Math.max(across, down));
          }
        }
      }
      expect(Math.min(...gaps)).toBeCloseTo(apartMm, 6);
    }
  });

  test.each(["long edge", "short edge"] as const)(
    "backs lie behind their fronts, turned on the %s",
    (turning) => {
      const sides = sheets(cards(8), paper, turning, "apart", notes);
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
      const sides = sheets(cards(3), paper, turning, "apart", notes);
      const [front, back] = sides.map((side) => side.parts.find(isFace)!);
      const frontCorner = moved(placing(front!), front!.widthMm, 0);
      const backCorner = throughPaper(sides[1]!, turning, moved(placing(back!), back!.widthMm, 0));
      expect(backCorner.xMm).toBeCloseTo(frontCorner.xMm, 9);
      expect(backCorner.yMm).toBeCloseTo(frontCorner.yMm, 9);
    }
  });

  test("folded back along its middle, a card is that same card", () => {
    const [side] = sheets(cards(2), paper, "fold", "apart", notes);
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

/** Upright cards of a paper size; turned on their long edge like a page, their backs are the same way up. */
function pageCards(
  count: number,
  { widthMm, heightMm }: { widthMm: number; heightMm: number },
  lying: boolean,
): Card[] {
  const face = { widthMm, heightMm };
  return cards(count).map(
    (card): Card => ({
      id: card.id,
      widthMm: lying ? heightMm : widthMm,
      heightMm: lying ? widthMm : heightMm,
      front: { ...face, items: card.front.items, turn: lying ? 270 : 0 },
      back: { ...face, items: card.back.items, turn: lying ? 90 : 0 },
    }),
  );
}

describe("cards edge to edge", () => {
  const { A4, Letter, A6, A5 } = paperSizes;

  // A quarter of A4 is half a millimetre longer than A6: ISO 216 rounds down.
  test("A6 goes four to an A4 by quartering and two to a Letter", () => {
    const onA4 = sheets(pageCards(4, A6, false), A4, "long edge", "halving", notes);
    const [front] = withCards(onA4);
    expect(front!.parts.filter(isFace)).toHaveLength(4);
    const [first] = front!.parts.filter(isFace);
    expect(covered(first!).right).toBeCloseTo(A4.widthMm / 2, 9);
    expect(covered(first!).bottom).toBeCloseTo(A4.heightMm / 2, 9);
    const onLetter = sheets(pageCards(4, A6, false), Letter, "long edge", "halving", notes);
    expect(onLetter.map((side) => side.parts.filter(isFace).length)).toEqual([2, 2, 2, 2]);
  });

  test("A5 goes two to an A4, lying", () => {
    expect(withCards(sheets(pageCards(2, A5, true), A4, "long edge", "halving", notes))).toHaveLength(2);
  });

  test.each([
    ["A6", A6, false],
    ["A5", A5, true],
  ] as const)(
    "the head of an %s back lies behind the head of its front, whatever the turning",
    (_, size, lying) => {
      for (const turning of ["long edge", "short edge"] as const) {
        const sides = withCards(sheets(pageCards(2, size, lying), A4, turning, "halving", notes));
        const [front, back] = sides.map((side) => side.parts.filter(isFace));
        const partner = back!.find((part) => sameDot(part, front![0]!))!;
        const corner = (part: Placed, x: number) => moved(placing(part), x, 0);
        const seen = throughPaper(sides[1]!, turning, corner(partner, partner.widthMm));
        expect(seen.xMm).toBeCloseTo(corner(front![0]!, 0).xMm, 9);
        expect(seen.yMm).toBeCloseTo(corner(front![0]!, 0).yMm, 9);
      }
    },
  );

  test.each([
    ["a quarter", paperSizes["quarter Letter"], false, 4],
    ["a half", paperSizes["half Letter"], true, 2],
  ] as const)("%s of a Letter goes as often to a Letter, with nothing left over", (_, size, lying, count) => {
    const [front] = withCards(sheets(pageCards(5, size, lying), Letter, "long edge", "halving", notes));
    const boxes = front!.parts.filter(isFace).map(covered);
    expect(boxes).toHaveLength(count);
    expect(Math.max(...boxes.map(({ right }) => right))).toBeCloseTo(Letter.widthMm, 9);
    expect(Math.max(...boxes.map(({ bottom }) => bottom))).toBeCloseTo(Letter.heightMm, 9);
  });

  test("a card too wide to lie beside its back is not made to be folded", () => {
    expect(sheets(pageCards(2, A5, false), A4, "fold", "halving", notes)).toEqual([]);
  });
});

/** Every format of card with its turning and cutting, on its paper. */
const inUse = (["A4", "Letter"] as const).flatMap((paper) =>
  cardFormatsOn[paper].map((format) => [format.name, paper, format] as const),
);

describe.each(inUse)("sheets of %s cards on %s", (_, paperName, { front, back, turns, cutting }) => {
  const paper = paperSizes[paperName];
  const some = cards(3).map((card) =>
    turnedCard(
      card.id,
      {
        front: { ...front, items: card.front.items, overflows: [] },
        back: { ...back, items: card.back.items, overflows: [] },
      },
      turns.onSheet,
    ),
  );

  const words = { ...note, items: [{ kind: "path", steps: crossed(note.widthMm, note.heightMm) } as const] };

  test("have all words and bars in the waste: on a card lie cuts and folds alone", () => {
    for (const turning of turnings) {
      const sides = sheets(some, paper, turning, cutting, { front: words, back: words });
      for (const side of sides) {
        const boxes = side.parts.filter(isFace).map(covered);
        for (const part of side.parts.filter((one) => !isFace(one))) {
          for (const item of part.items.flatMap(segments)) {
            const on = boxes.filter((box) => overlap(box, placedBox(part, item)));
            expect(on, turning).toEqual([]);
          }
        }
      }
      if (sides.length > 0)
        expect(sides.some(({ parts }) => parts.some(({ items }) => items === words.items))).toBe(true);
    }
  });

  test.each(["long edge", "short edge"] as const)(
    "held to the light, turned on the %s, have each cross in a ring of its own",
    (turning) => {
      const sides = sheets(some, paper, turning, cutting, notes);
      const [fronts, backs] = [sides[0]!, sides[1]!];
      const crosses = marksOn(fronts, "path").flatMap(crossMiddle);
      const rings = marksOn(backs, "circle").flatMap(({ part, item }) =>
        item.kind === "circle" ? [moved(placing(part), item.cxMm, item.cyMm)] : [],
      );
      expect(crosses.length).toBeGreaterThanOrEqual(2);
      expect(rings).toHaveLength(crosses.length);
      const seen = rings.map((ring) => throughPaper(backs, turning, ring));
      for (const { xMm, yMm } of crosses) {
        expect(seen.filter((at) => Math.hypot(at.xMm - xMm, at.yMm - yMm) < 1e-6)).toHaveLength(1);
        for (const edge of [xMm, yMm, paper.widthMm - xMm, paper.heightMm - yMm])
          expect(edge).toBeGreaterThanOrEqual(unprintableMm + 2);
      }
    },
  );
});

/** A box with one line from corner to corner, which stands for words. */
function crossed(widthMm: number, heightMm: number): PathStep[] {
  return [
    ["M", 0, 0],
    ["L", widthMm, heightMm],
  ];
}

interface Span {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Whether a mark comes inside a card; along its edge, or along the fold in its middle, it does not. */
function overlap(card: Span, mark: Span): boolean {
  const least = 1e-6;
  const [across, down] = [
    Math.min(card.right, mark.right) - Math.max(card.left, mark.left),
    Math.min(card.bottom, mark.bottom) - Math.max(card.top, mark.top),
  ];
  const within = (at: number, from: number, to: number) => at > from + least && at < to - least;
  if (mark.right - mark.left < least) return within(mark.left, card.left, card.right) && down > least;
  if (mark.bottom - mark.top < least) return within(mark.top, card.top, card.bottom) && across > least;
  return across > least && down > least;
}

/** Each straight line of an item; curves are the rounded corners of the cut. */
function segments(item: Item): Span[] {
  if (item.kind === "circle") {
    const { cxMm: x, cyMm: y, radiusMm: r } = item;
    return [{ left: x - r, right: x + r, top: y - r, bottom: y + r }];
  }
  if (item.kind !== "path" || item.steps.some(([letter]) => letter === "C")) return [];
  const spans: Span[] = [];
  item.steps.forEach((step, i) => {
    const before = item.steps[i - 1];
    if (step[0] !== "L" || before === undefined || before[0] === "Z" || before[0] === "C") return;
    const [[, x1, y1], [, x2, y2]] = [before, step];
    spans.push({
      left: Math.min(x1, x2),
      right: Math.max(x1, x2),
      top: Math.min(y1, y2),
      bottom: Math.max(y1, y2),
    });
  });
  return spans;
}

function placedBox(part: Placed, { left, right, top, bottom }: Span): Span {
  const [a, b] = [moved(placing(part), left, top), moved(placing(part), right, bottom)];
  return {
    left: Math.min(a.xMm, b.xMm),
    right: Math.max(a.xMm, b.xMm),
    top: Math.min(a.yMm, b.yMm),
    bottom: Math.max(a.yMm, b.yMm),
  };
}

function marksOn(side: PaperSide, kind: Item["kind"]) {
  return side.parts
    .filter((part) => !isFace(part))
    .flatMap((part) => part.items.filter((item) => item.kind === kind).map((item) => ({ part, item })));
}

/** The middle of a cross as thick as those to be seen through paper; nothing for other marks. */
function crossMiddle({ part, item }: { readonly part: Placed; readonly item: Item }) {
  if (item.kind !== "path" || item.steps.length !== 4) return [];
  const [across, down] = segments(item);
  if (!across || !down || across.top !== across.bottom || down.left !== down.right) return [];
  if ((item.stroke?.widthMm ?? 0) < 0.2) return [];
  return [moved(placing(part), down.left, across.top)];
}

test("more cards than a sheet takes go on more sheets, front and back in turn", () => {
  const sides = sheets(cards(11), paperSizes.A4, "long edge", "apart", notes);
  expect(sides.map((side) => side.parts.filter(isFace).length)).toEqual([8, 8, 3, 3]);
});

test("papers have the sizes of their standards", () => {
  // ISO 216:2007; ANSI/ASME Y14.1 for Letter, which is 8.5 × 11 in of 25.4 mm.
  const sizes = Object.entries(paperSizes).map(([name, { widthMm, heightMm }]) => [name, widthMm, heightMm]);
  expect(sizes.sort()).toEqual(
    [
      ["A4", 210, 297],
      ["A5", 148, 210],
      ["A6", 105, 148],
      ["A7", 74, 105],
      ["Letter", 215.9, 279.4],
      ["half Letter", 139.7, 215.9],
      ["quarter Letter", 107.95, 139.7],
    ].sort(),
  );
});

test("no cards make no sheet", () => {
  expect(sheets([], paperSizes.A4, "fold", "apart", notes)).toEqual([]);
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
      expect(off).toBeLessThanOrEqual(apartMm / 2 + 1e-9);
    }
  });

  // Source: ISO/IEC 7810:2019, ID-1: corners are rounded to 3.18 mm ± 0.30 mm.
  test("each corner is rounded on the cut line, along a circle of the standard's radius", () => {
    const card = { xMm: 10, yMm: 20, widthMm: 85.6, heightMm: 53.98 };
    const [mark] = roundedCorners([card]);
    const curves = steps(mark!).filter(([letter]) => letter === "C");
    expect(curves).toHaveLength(4);
    for (const [i, curve] of curves.entries()) {
      const [, x0, y0] = steps(mark!)[2 * i] as [string, number, number];
      const [, x1, y1, x2, y2, x3, y3] = curve as Extract<PathStep, readonly ["C", ...number[]]>;
      const middle = { x: x0, y: y3 };
      for (const t of [0, 0.25, 0.5, 0.75, 1]) {
        const bezier = (a: number, b: number, c: number, d: number) =>
          (1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * b + 3 * (1 - t) * t * t * c + t ** 3 * d;
        const radius = Math.hypot(bezier(x0, x1, x2, x3) - middle.x, bezier(y0, y1, y2, y3) - middle.y);
        expect(radius).toBeCloseTo(3.18, 2);
      }
      expect([10, 95.6].some((edge) => Math.abs(x3 - edge) < 1e-9)).toBe(true);
      expect([20, 73.98].some((edge) => Math.abs(y0 - edge) < 1e-9)).toBe(true);
    }
  });

  test("fold marks stand at both ends of the fold, outside a card that lies apart and inside one that does not", () => {
    const card = { xMm: 10, yMm: 20, widthMm: 100, heightMm: 50 };
    const places = (inside: boolean) =>
      steps(foldMarks([card], inside)[0]!).map((step) => step.slice(1) as [number, number]);
    for (const inside of [false, true]) {
      const [above, aboveEnd, below, belowEnd] = places(inside);
      for (const [x] of places(inside)) expect(x).toBe(10 + 100 / 2);
      // The same at either end.
      expect(above![1] - 20).toBeCloseTo(20 + 50 - belowEnd![1], 9);
      expect(aboveEnd![1] - 20).toBeCloseTo(20 + 50 - below![1], 9);
    }
    for (const [, y] of places(false)) expect(y < 20 || y > 70).toBe(true);
    for (const [, y] of places(true)) expect(y >= 20 && y <= 70).toBe(true);
  });

  /** An inch of 25.4 mm is the international one of 1959. */
  test.each([
    ["centimetres", undefined, 11, 10],
    ["half inches", { lengthMm: 101.6, parts: 8 }, 9, 12.7],
  ] as const)(
    "the check bar has its middle where it is asked for, and is divided into %s",
    (_, bar, count, apartMm) => {
      const [path] = checkBar(105, 280, bar);
      const ticks = steps(path!).slice(2);
      expect(ticks).toHaveLength(2 * count);
      for (const [i, [, x]] of ticks.entries())
        expect(x as number).toBeCloseTo(105 + (Math.floor(i / 2) - (count - 1) / 2) * apartMm, 9);
      const [from, to] = steps(path!);
      expect([from![1], to![1]]).toEqual([ticks[0]![1], ticks.at(-1)![1]]);
    },
  );
});
