import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Curve, curveThrough, type Place } from "../../../src/drawing/curve.ts";
import { crossingsOf } from "../../../src/drawing/knots/crossings.ts";
import { stepStrands } from "../../../src/drawing/knots/draw-knot.ts";
import { strandPath } from "../../../src/drawing/knots/strand-path.ts";
import { knots, readKnot } from "../../support/knots.ts";
import { closed, closedOver, determinant, linking } from "./topology.ts";

const atUnitScale = { scale: 1, xMm: 0, yMm: 0 };

function step(id: string, number: number) {
  const { strands, eyes } = stepStrands(readKnot(id).steps[number - 1]!, atUnitScale);
  const strand = (name: string) => strands.find((s) => s.name === name)!;
  return { strand, curve: (name: string) => strand(name).curve, eye: eyes[0]?.curve };
}

const ring = (...points: readonly (readonly [number, number, number])[]): Curve =>
  closed(points.map(([x, y, height]): Place => ({ x, y, height })));

const part = (curve: Curve, from: number, to: number) =>
  curve.samples.filter(({ s }, i) => s >= from && s <= to && i % 4 === 0);

/** Every crossing of a strand with itself as the two distances along it, the earlier first. */
function selfCrossings(curve: Curve) {
  return crossingsOf([{ name: "strand", curve }]).map(({ over, under }) => ({
    early: Math.min(over.s, under.s),
    late: Math.max(over.s, under.s),
    lateOnTop: over.s > under.s,
  }));
}

describe("the measures that knots are held against", () => {
  // Determinants tabled in D. Rolfsen 1976, Knots and Links, appendix C: 3_1 → 3, 5_1 → 5, 7_1 → 7.
  it.each([
    [3, 3n],
    [5, 5n],
    [7, 7n],
  ])("give the tabled determinant of the (2, %i) torus knot", (halfTurns, tabled) => {
    const count = 16 * halfTurns;
    const points = Array.from({ length: count }, (_, i): Place => {
      const around = (4 * Math.PI * i) / count;
      const phase = (halfTurns * around) / 2;
      const radius = 30 + 8 * Math.cos(phase);
      return { x: radius * Math.cos(around), y: radius * Math.sin(around), height: 2 * Math.sin(phase) };
    });
    expect(determinant(closed(points))).toBe(tabled);
  });

  it("give 1 for a ring that crosses itself and is not knotted", () => {
    expect(determinant(ring([0, 0, 0], [9, 9, 1], [9, 0, 0], [0, 9, -1]))).toBe(1n);
  });

  it("tell two links of a chain from two rings lying on each other", () => {
    const flat = ring([0, 0, 0], [8, 0, 0], [8, 8, 0], [0, 8, 0]);
    const other = (height: number) => ring([4, 3, 1], [14, 3, 1], [14, 5, height], [4, 5, height]);
    expect(Math.abs(linking(flat, other(-1)))).toBe(1);
    expect(linking(flat, other(1))).toBe(0);
  });
});

// Shot and rubbers are no knots, and leave the line its strength.
it("every knot that is shipped has measures of its own here", () => {
  const own = readFileSync(import.meta.filename, "utf8");
  expect(
    knots
      .flatMap(({ id, strengthShare }) => (strengthShare ? [id] : []))
      .filter((id) => !own.includes(`"${id}"`)),
  ).toEqual([]);
});

describe("half blood knot", () => {
  const outside = [
    [60, -30],
    [-20, -20],
  ] as const;
  /** Where the line is farthest from the rod: at the eye. */
  const atEye = (curve: Curve) => curve.samples.reduce((far, p) => (p.x > far.x ? p : far)).s;

  it.each([1, 2, 3, 4])("passes once through the eye of the hook (step %i)", (number) => {
    const { curve, eye } = step("half-blood", number);
    expect(Math.abs(linking(closedOver(curve("hook length"), outside), eye!))).toBe(1);
  });

  // Seven turns: common practice, no source.
  it.each([2, 3, 4])("winds the tag end seven times round the line (step %i)", (number) => {
    const { curve, tagFromMm } = step("half-blood", number).strand("hook length");
    const wraps = selfCrossings(curve).filter(
      ({ early, late }) => early < atEye(curve) && late > atEye(curve) && late <= tagFromMm,
    );
    expect(wraps.filter(({ lateOnTop }) => lateOnTop)).toHaveLength(7);
    expect(wraps.filter(({ lateOnTop }) => !lateOnTop)).toHaveLength(7);
  });

  it("winds away from the hook", () => {
    const { curve } = step("half-blood", 2);
    const wraps = selfCrossings(curve("hook length")).sort((a, b) => a.late - b.late);
    const earlier = wraps.map(({ early }) => early);
    expect(earlier).toEqual([...earlier].sort((a, b) => b - a));
  });

  it.each([3, 4])("ends by passing the tag end through the small loop at the eye (step %i)", (number) => {
    const { curve, tagFromMm } = step("half-blood", number).strand("hook length");
    const smallest = selfCrossings(curve)
      .filter(({ early, late }) => early < atEye(curve) && late > atEye(curve) && late <= tagFromMm)
      .reduce((small, c) => (c.late - c.early < small.late - small.early ? c : small));
    const loop = closed(part(curve, smallest.early, smallest.late));
    const tag = curveThrough(part(curve, tagFromMm, curve.length));
    const round = closedOver(tag, [
      [60, -30],
      [-20, -20],
      [-20, 60],
    ]);
    expect(Math.abs(linking(loop, round))).toBe(1);
  });

  // Off the hook and with its ends joined it is the twist knot with two half twists a turn, whose determinant is
  // 2n + 1 for n half twists: 4_1 → 5, 6_1 → 9, 8_1 → 13 in D. Rolfsen 1976, Knots and Links, appendix C.
  it.each([3, 4])("is a twist knot of fourteen half twists (step %i)", (number) => {
    expect(determinant(closedOver(step("half-blood", number).curve("hook length"), outside))).toBe(29n);
  });

  it("is no knot yet before the tag end goes through the loop", () => {
    expect(determinant(closedOver(step("half-blood", 2).curve("hook length"), outside))).toBe(1n);
  });
});

describe("overhand loop, double wrap", () => {
  const way = [
    [-20, 60],
    [-20, 30],
  ] as const;

  it.each([1, 2, 3, 4, 5])(
    "can be tied in the middle of a line: its ends joined are not knotted (step %i)",
    (number) => {
      expect(determinant(closedOver(step("overhand-loop", number).curve("hook length"), way))).toBe(1n);
    },
  );

  // The doubled line ties a double overhand knot, which with joined ends is 5_1; a plain one is 3_1 (Rolfsen's table).
  it.each([
    [2, 1n],
    [3, 3n],
    [4, 5n],
    [5, 5n],
  ])("ties a plain and then a double overhand knot in the doubled line (step %i)", (number, tabled) => {
    const parts = readKnot("overhand-loop").steps[number - 1]!.strands[0]!.path;
    const along = parts.flatMap((p) => (typeof p === "object" && "doubled" in p ? p.doubled.along : []));
    const spine = curveThrough(strandPath(along).points);
    expect(
      determinant(
        closedOver(spine, [
          [150, 90],
          [-30, 90],
        ]),
      ),
    ).toBe(tabled);
  });
});

describe("loop-to-loop join", () => {
  it("passes the hook length once through the main line's loop", () => {
    const { curve } = step("loop-to-loop", 2);
    const stem = closedOver(curve("hook length"), [
      [61, 90],
      [150, 90],
      [150, 28],
    ]);
    expect(Math.abs(linking(closed(part(curve("main line"), 0, 1e3)), stem))).toBe(1);
  });

  it("leaves the loops themselves unlinked, as both are closed before they are joined", () => {
    const { curve } = step("loop-to-loop", 3);
    const [main, hook] = [curve("main line"), curve("hook length")].map((c) => closed(part(c, 0, 1e3)));
    expect(linking(main!, hook!)).toBe(0);
  });

  // Two loops that lock are a reef (square) knot: joined end to end the sum of two trefoils, 3 × 3 (Rolfsen's table;
  // the determinant of a sum is the product).
  it("locks as a reef knot does", () => {
    const { curve } = step("loop-to-loop", 3);
    const main = part(curve("main line"), 0, 1e3);
    const hook = part(curve("hook length"), 0, 1e3).reverse();
    const below = [16, 104].map((x) => ({ x, y: 70, height: 100 }));
    const above = [120, 0].map((x) => ({ x, y: -10, height: 100 }));
    expect(determinant(closed([...main, ...below, ...hook, ...above]))).toBe(9n);
  });

  it("has both legs of each loop on the same side of the other's bend, unlike a granny knot", () => {
    const { curve } = step("loop-to-loop", 3);
    const [main, hook] = [curve("main line"), curve("hook length")];
    const passes = crossingsOf([
      { name: "main line", curve: main },
      { name: "hook length", curve: hook },
    ]);
    const along = (strand: number) =>
      passes
        .map(({ over, under }) =>
          over.strand === strand ? { s: over.s, top: true } : { s: under.s, top: false },
        )
        .sort((a, b) => a.s - b.s)
        .map(({ top }) => (top ? "over" : "under"));
    expect(along(0)).toEqual(["under", "over", "under", "under", "over", "under"]);
    expect(along(1)).toEqual(["over", "under", "over", "over", "under", "over"]);
  });
});

describe("the wrong loop-to-loop join", () => {
  // A lark's head (cow hitch): the bend of one loop passes in front of its own two legs, behind which it goes round
  // the other loop (C. W. Ashley 1944, The Ashley Book of Knots, from memory).
  it("shows one loop doubled back over its own legs and the other one left plain", () => {
    const { curve } = step("loop-to-loop", 4);
    const [main, hook] = [curve("main line"), curve("hook length")];
    expect(selfCrossings(main)).toEqual([]);
    const own = crossingsOf([{ name: "hook length", curve: hook }]);
    const middle = hook.length / 2;
    expect(own).toHaveLength(2);
    for (const { over, under } of own) {
      expect(Math.abs(over.s - middle)).toBeLessThan(Math.abs(under.s - middle));
    }
    const onMain = crossingsOf([
      { name: "main line", curve: main },
      { name: "hook length", curve: hook },
    ]).filter(({ over, under }) => over.strand !== under.strand);
    const along = onMain
      .map(({ over, under }) => (over.strand === 1 ? { s: over.s, top: true } : { s: under.s, top: false }))
      .sort((a, b) => a.s - b.s)
      .map(({ top }) => (top ? "over" : "under"));
    expect(along).toEqual(["over", "under", "under", "over"]);
  });
});

describe("stop knot", () => {
  const aside = [
    [130, 80],
    [0, 80],
  ] as const;
  const line = (curve: Curve) =>
    closedOver(curve, [
      [150, -40],
      [-40, -40],
    ]);

  // Five turns: common practice, no source.
  it.each([
    // Behind the line as it is laid there, its ends are joined behind it, too.
    [1, 0, -100],
    [2, 5, 100],
    [3, 5, 100],
  ])("winds the thread round the line (step %i: %i turns)", (number, turns, height) => {
    const { curve } = step("stop-knot", number);
    expect(Math.abs(linking(closedOver(curve("cord"), aside, height), line(curve("main line"))))).toBe(turns);
  });

  it.each([2, 3])("shows as many turns in front of the line as it has (step %i)", (number) => {
    const { curve } = step("stop-knot", number);
    const front = crossingsOf([
      { name: "cord", curve: curve("cord") },
      { name: "main line", curve: curve("main line") },
    ]).filter(({ over, under }) => over.strand === 0 && under.strand === 1);
    expect(front).toHaveLength(5);
  });

  // Off the line and with its ends joined, five turns through the loop make the (2, 11) torus knot, as an overhand
  // knot of n turns makes (2, 2n + 1), with determinant 2n + 1: 3_1, 5_1, 7_1, 9_1 in Rolfsen's table.
  it.each([2, 3])("is a five-turn overhand knot (step %i)", (number) => {
    expect(determinant(closedOver(step("stop-knot", number).curve("cord"), aside))).toBe(11n);
  });
});

describe("float locked by shot", () => {
  it.each([1, 2, 3])("has the line through the float's eye (step %i)", (number) => {
    const { curve, eye } = step("locking-shot", number);
    const line = closedOver(curve("main line"), [
      [150, 120],
      [-40, 120],
    ]);
    expect(Math.abs(linking(line, eye!))).toBe(1);
  });
});
