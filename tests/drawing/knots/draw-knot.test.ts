import { describe, expect, it } from "vitest";
import { directionAt, placeAt } from "../../../src/drawing/curve.ts";
import { checkKnot, knotFaultWords } from "../../../src/drawing/knots/check.ts";
import { crossingsOf } from "../../../src/drawing/knots/crossings.ts";
import { drawKnot, drawKnotStep, fitFrame, stepStrands } from "../../../src/drawing/knots/draw-knot.ts";
import type { KnotPicture, PathPart } from "../../../src/model/knot-picture.ts";
import { drawingFaults } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { knots, readKnot } from "../../support/knots.ts";
import { inked, raster } from "../../support/raster.ts";

/** As narrow as a handout has it: steps on whole sheets. */
const card = { widthMm: 52.8, heightMm: 37.4 };
const phone = { widthMm: 80, heightMm: 50 };
const sheet = { widthMm: 170, heightMm: 110 };
const boxes = [card, phone, sheet];

const steps = knots.flatMap((knot) => knot.steps.map((_, index) => [knot.id, index] as const));

/** A knot of one step with these paths. */
function loose(...paths: PathPart[][]): KnotPicture {
  return {
    id: "loose",
    title: "Loose line",
    joins: "nothing",
    frame: [40, 20],
    steps: [
      {
        caption: "Lay it down.",
        strands: paths.map((path, i) => ({ name: `strand ${i + 1}`, pattern: "line", path })),
        objects: [],
        arrows: [],
        labels: [],
      },
    ],
  };
}

describe("checking a knot", () => {
  it.each(knots.map((knot) => [knot.id, knot] as const))("finds nothing wrong with %s", (_, knot) => {
    expect(checkKnot(knot)).toEqual([]);
  });

  it("refuses two strands that cross without saying which is on top, and says where", () => {
    const across: PathPart[] = [
      [20, 2],
      [20, 18],
    ];
    const level: PathPart[] = [
      [2, 8],
      [38, 8],
    ];
    const faults = checkKnot(loose(level, across));
    expect(faults).toEqual([{ kind: "crossing", step: 1, strand: "strand 1", x: 20, y: 8 }]);
    expect(knotFaultWords(faults[0]!, drawingKit.words)).toBe(
      "Step 1: the strand 1 crosses at 20, 8 and nothing says which strand is on top. Give one of them a height there.",
    );
  });

  it("refuses a strand that crosses itself without saying which part is on top", () => {
    const found = checkKnot(
      loose([
        [4, 4],
        [20, 16],
        [36, 16],
        [36, 4],
        [20, 4],
        [4, 16],
      ]),
    );
    expect(found.map(({ kind }) => kind)).toEqual(["crossing"]);
  });

  it("takes the same crossing with a height for one of the strands", () => {
    expect(
      checkKnot(
        loose(
          [
            [2, 8],
            [38, 8],
          ],
          [
            [20, 2, 1],
            [20, 18, 1],
          ],
        ),
      ),
    ).toEqual([]);
  });

  it("refuses a strand that goes nowhere, and still draws the rest", () => {
    const still: PathPart[] = [
      [5, 5],
      [5, 5],
    ];
    const level: PathPart[] = [
      [2, 8],
      [38, 8],
    ];
    const knot = loose(still, level);
    expect(checkKnot(knot).map(({ kind, strand }) => [kind, strand])).toEqual([["short", "strand 1"]]);
    expect(drawKnotStep(knot, 0, card, drawingKit).items).toHaveLength(1);
  });

  it("refuses a strand that leaves the frame", () => {
    const found = checkKnot(
      loose([
        [2, 8],
        [41, 8],
      ]),
    );
    expect(found).toMatchObject([{ kind: "outside", strand: "strand 1", y: 8 }]);
  });
});

describe.each(steps)("%s, step index %i", (id, index) => {
  const knot = readKnot(id);

  it.each(boxes)("is clear at $widthMm × $heightMm mm: in its frame, strokes to see, labels free", (box) => {
    const drawing = drawKnotStep(knot, index, box, drawingKit);
    expect(drawingFaults(drawing)).toEqual([]);
  });

  it("tells what it shows, the joint and every label, and not what its caption says beside it", () => {
    const step = knot.steps[index]!;
    const { title, description } = drawKnotStep(knot, index, card, drawingKit);
    expect(title).toBe(`${knot.title}, step ${index + 1} of ${knot.steps.length}`);
    for (const told of [knot.joins, ...step.labels.map(({ text }) => text)]) {
      expect(description).toContain(told);
    }
    expect(description).not.toContain(step.caption);
  });
});

describe("drawing strands", () => {
  it("draws every step of a knot to the same scale", () => {
    expect(drawKnot(readKnot("half-blood"), card, drawingKit)).toHaveLength(4);
    expect(() => drawKnotStep(readKnot("half-blood"), 4, card, drawingKit)).toThrow(RangeError);
  });

  // How often it goes round is each knot's own, as its words say: common practice, no source.
  it.each([
    ["stop-knot", 1, 5],
    ["half-blood", 1, 7],
    ["half-blood", 2, 7],
    ["half-blood", 3, 0],
    ["overhand-loop", 1, 0],
  ])("numbers the turns of %s, step index %i, while they lie open: %i", (id, index, turns) => {
    const { items, description } = drawKnotStep(readKnot(id), index, card, drawingKit);
    const numbers = items.flatMap((item) =>
      item.kind === "text" && /^\d+$/.test(item.text) ? [item.text] : [],
    );
    expect(numbers).toEqual(Array.from({ length: turns }, (_, i) => String(i + 1)));
    expect(description.includes(`from 1 to ${turns}.`)).toBe(turns > 0);
  });

  const copy = { dpi: 300, box: { widthMm: 90, heightMm: 52 } };

  it("leaves white on both sides of the strand on top, where the one below is broken", () => {
    const knot = readKnot("loop-to-loop");
    const picture = raster(drawKnotStep(knot, 0, copy.box, drawingKit), copy.dpi);
    const { strands } = stepStrands(knot.steps[0]!, fitFrame(knot.frame, copy.box));
    const crossings = crossingsOf(strands);
    expect(crossings).toHaveLength(2);
    for (const { x, y, over, under } of crossings) {
      const [top, bottom] = [strands[over.strand]!, strands[under.strand]!];
      const across = { x: -over.direction.y, y: over.direction.x };
      const beside = top.widthMm / 2 + 0.22;
      for (const side of [1, -1]) {
        expect(inked(picture, x + side * beside * across.x, y + side * beside * across.y)).toBe(false);
      }
      const further = directionAt(bottom.curve, under.s);
      expect(inked(picture, x + 3 * further.x, y + 3 * further.y)).toBe(true);
    }
  });

  it("tells line, hook length and tag end apart in a black-and-white copy", () => {
    const inkAlong = (id: string, index: number, name: string, from: number, to: number) => {
      const knot = readKnot(id);
      const picture = raster(drawKnotStep(knot, index, copy.box, drawingKit), copy.dpi);
      const { strands } = stepStrands(knot.steps[index]!, fitFrame(knot.frame, copy.box));
      const { curve } = strands.find((strand) => strand.name === name)!;
      const places = Array.from({ length: 200 }, (_, i) =>
        placeAt(curve, curve.length * (from + ((to - from) * i) / 199)),
      );
      const marks = places.map(({ x, y }) => inked(picture, x, y));
      return {
        share: marks.filter(Boolean).length / marks.length,
        changes: marks.filter((mark, i) => i > 0 && mark !== marks[i - 1]).length,
      };
    };
    const line = inkAlong("stop-knot", 0, "main line", 0.02, 0.6);
    const hookLength = inkAlong("half-blood", 0, "hook length", 0.02, 0.4);
    const tag = inkAlong("half-blood", 0, "hook length", 0.8, 0.98);
    const cord = inkAlong("stop-knot", 0, "cord", 0.02, 0.3);
    expect(line).toEqual({ share: 1, changes: 0 });
    expect(hookLength).toEqual({ share: 0, changes: 0 });
    for (const barred of [tag, cord]) {
      expect(barred.changes).toBeGreaterThan(10);
      expect(barred.share).toBeGreaterThan(0.15);
      expect(barred.share).toBeLessThan(0.85);
    }
  });
});

it("a frame so large that places come out at one is drawn or refused, and its tag end found", () => {
  const knot = { ...loose([[5, 10], [6, 10], [7, 10], "tag", [9, 10]]), frame: [1e12, 1e12] as const };
  expect(() => checkKnot(knot)).not.toThrow();
  const [strand] = stepStrands(knot.steps[0]!, fitFrame(knot.frame, card)).strands;
  expect(strand!.tagFromMm).toBeLessThanOrEqual(strand!.curve.length);
});
