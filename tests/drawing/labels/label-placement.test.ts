import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { placeInOrder, type WantedLabel } from "../../../src/drawing/labels/label-placement.ts";

const gapMm = 0.5;
const wanted = fc
  .array(
    fc.record({ atMm: fc.double({ min: 0, max: 100, noNaN: true }), sizeMm: fc.constantFrom(3, 4, 8) }),
    {
      minLength: 1,
      maxLength: 7,
    },
  )
  .map((labels) => labels.sort((a, b) => a.atMm - b.atMm));

function cost(labels: readonly WantedLabel[], places: readonly number[]): number {
  return labels.reduce((sum, label, i) => sum + (places[i]! - label.atMm) ** 2, 0);
}

/**
 * Least cost by trying every way of standing in touching blocks, each block at its mean or against an end of the
 * range: the best lawful one is the optimum of this convex problem.
 */
function exhaustive(labels: readonly WantedLabel[], fromMm: number, toMm: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (let cuts = 0; cuts < 2 ** (labels.length - 1); cuts += 1) {
    const blocks: WantedLabel[][] = [[labels[0]!]];
    for (const [i, label] of labels.slice(1).entries())
      if (cuts & (1 << i)) blocks.push([label]);
      else blocks.at(-1)!.push(label);
    const places = blocks.flatMap((block) => {
      const offsets = block.map((_, i) =>
        block.slice(0, i).reduce((sum, one, j) => sum + (one.sizeMm + block[j + 1]!.sizeMm) / 2 + gapMm, 0),
      );
      const mean = block.reduce((sum, one, i) => sum + one.atMm - offsets[i]!, 0) / block.length;
      const low = fromMm + block[0]!.sizeMm / 2;
      const high = toMm - block.at(-1)!.sizeMm / 2 - offsets.at(-1)!;
      const start = Math.max(low, Math.min(high, mean));
      return offsets.map((offset) => start + offset);
    });
    if (lawful(labels, places, fromMm, toMm)) best = Math.min(best, cost(labels, places));
  }
  return best;
}

function lawful(labels: readonly WantedLabel[], places: readonly number[], fromMm: number, toMm: number) {
  const slack = 1e-6;
  return labels.every(({ sizeMm }, i) => {
    const top = places[i]! - sizeMm / 2;
    const bottom = places[i]! + sizeMm / 2;
    const after = places[i + 1];
    const clear = after === undefined || bottom + gapMm <= after - labels[i + 1]!.sizeMm / 2 + slack;
    return top >= fromMm - slack && bottom <= toMm + slack && clear;
  });
}

describe("placing labels in order", () => {
  test("keeps order, gaps and range, and moves them least, as trying every arrangement does", () => {
    fc.assert(
      fc.property(wanted, (labels) => {
        const places = placeInOrder(labels, 0, 100, gapMm)!;
        expect(lawful(labels, places, 0, 100)).toBe(true);
        expect(cost(labels, places)).toBeCloseTo(exhaustive(labels, 0, 100), 5);
      }),
      { numRuns: 400, seed: 5 },
    );
  });

  test("leaves labels that do not touch where they want to be", () => {
    const labels = [10, 20, 40].map((atMm) => ({ atMm, sizeMm: 4 }));
    expect(placeInOrder(labels, 0, 50, 1)).toEqual([10, 20, 40]);
  });

  test("spreads labels that want one place evenly about it", () => {
    const labels = [20, 20, 20].map((atMm) => ({ atMm, sizeMm: 4 }));
    expect(placeInOrder(labels, 0, 50, 1)).toEqual([15, 20, 25]);
  });

  test("says when they do not fit, and fits them when they just do", () => {
    const labels = [5, 5].map((atMm) => ({ atMm, sizeMm: 4 }));
    expect(placeInOrder(labels, 0, 8.9, 1)).toBeUndefined();
    expect(placeInOrder(labels, 0, 9, 1)).toEqual([2, 7]);
    expect(placeInOrder([], 0, 9, 1)).toEqual([]);
  });
});
