import type { Curve, Place } from "../../../src/drawing/curve.ts";
import { crossingsOf, type Pass } from "../../../src/drawing/knots/crossings.ts";

/** Straight lines from place to place and back to the first. */
export function closed(places: readonly Place[]): Curve {
  let s = 0;
  const samples = [...places, places[0]!].map((place, i, all) => {
    const before = all[i - 1] ?? place;
    s += Math.hypot(place.x - before.x, place.y - before.y);
    return { ...place, s };
  });
  return { cubics: [], samples, length: s, closed: true };
}

/**
 * The knot made of a strand whose ends are joined by a wide way round, given from the strand's end to its start, far
 * above everything it may pass.
 */
export function closedOver(strand: Curve, way: readonly (readonly [number, number])[], height = 100): Curve {
  const high = way.map(([x, y]) => ({ x, y, height }));
  return closed([
    ...strand.samples.filter((_, i) => i % 4 === 0 || i === strand.samples.length - 1),
    ...high,
  ]);
}

/** Right- or left-handed: the sign of a crossing between two directed strands. */
function sign(over: Pass, under: Pass): number {
  // y points down the page, so a positive turn on paper is clockwise.
  return Math.sign(over.direction.y * under.direction.x - over.direction.x * under.direction.y);
}

/** Linking number of two closed curves: half the sum of the signs of their crossings. */
export function linking(a: Curve, b: Curve): number {
  const mixed = crossingsOf([
    { name: "a", curve: a },
    { name: "b", curve: b },
  ]).filter(({ over, under }) => over.strand !== under.strand);
  return mixed.reduce((sum, { over, under }) => sum + sign(over, under), 0) / 2;
}

/**
 * Determinant of a knot, from the colouring matrix of its diagram: each crossing gives a row `2·over − in − out` on
 * the arcs; strike one row and one column (R. H. Fox; see C. Livingston 1993, Knot Theory, chapter 3).
 */
export function determinant(knot: Curve): bigint {
  const crossings = crossingsOf([{ name: "knot", curve: knot }]);
  const breaks = crossings.map(({ under }) => under.s).sort((a, b) => a - b);
  const count = breaks.length;
  if (count < 2) return 1n;
  /** Arcs run from one pass below to the next; arc 0 spans the start of the curve. */
  const arcAt = (s: number) => breaks.filter((b) => b < s).length % count;
  const rows = crossings.map(({ over, under }) => {
    const row = Array.from({ length: count }, () => 0n);
    const into = breaks.indexOf(under.s);
    for (const [arc, times] of [
      [arcAt(over.s), 2n],
      [into, -1n],
      [(into + 1) % count, -1n],
    ] as const) {
      row[arc] = row[arc]! + times;
    }
    return row;
  });
  return absolute(bareiss(rows.slice(1).map((row) => row.slice(1))));
}

const absolute = (n: bigint) => (n < 0n ? -n : n);

/** Exact determinant of a matrix of whole numbers (E. Bareiss 1968). */
function bareiss(matrix: bigint[][]): bigint {
  const size = matrix.length;
  let signOf = 1n;
  let before = 1n;
  for (let k = 0; k < size - 1; k++) {
    if (matrix[k]![k] === 0n) {
      const swap = matrix.findIndex((row, i) => i > k && row[k] !== 0n);
      if (swap < 0) return 0n;
      [matrix[k], matrix[swap]] = [matrix[swap]!, matrix[k]!];
      signOf = -signOf;
    }
    for (let i = k + 1; i < size; i++) {
      for (let j = k + 1; j < size; j++) {
        matrix[i]![j] = (matrix[i]![j]! * matrix[k]![k]! - matrix[i]![k]! * matrix[k]![j]!) / before;
      }
    }
    before = matrix[k]![k]!;
  }
  return signOf * (size > 0 ? matrix[size - 1]![size - 1]! : 1n);
}
