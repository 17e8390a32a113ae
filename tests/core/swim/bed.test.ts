import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bedDepth, bedOf, gapsOf, ledgesOf, type Sounding, shelfOf } from "../../../src/core/swim/bed.ts";

/** Metres from the bank and metres deep. */
const bed = (...soundings: readonly (readonly [number, number])[]) =>
  bedOf(soundings.map(([from, deep]) => ({ fromBankMm: 1000 * from, depthMm: 1000 * deep })));

const shelf = bed([0, 0.5], [1.5, 1], [4.5, 1.1], [5.5, 1.9], [14, 2.1]);

describe("the depth of a bed", () => {
  it("is that of each sounding where it was plumbed, in whatever order they were written", () => {
    const mixed = bed([5.5, 1.9], [0, 0.5], [14, 2.1], [1.5, 1], [4.5, 1.1]);
    for (const { fromBankMm, depthMm } of shelf.soundings) {
      expect(bedDepth(mixed, fromBankMm)).toMatchObject({ depthMm, nearestMm: 0, isNear: true });
    }
  });

  it("is nobody's to tell where nobody plumbed", () => {
    expect(bedDepth(shelf, -1)).toBeUndefined();
    expect(bedDepth(shelf, 14_001)).toBeUndefined();
    expect(bedDepth(bed([2, 1], [3, 1]), 1999)).toBeUndefined();
  });

  it("says where no sounding is near, and how far the nearest is", () => {
    expect(bedDepth(shelf, 9000)).toMatchObject({ nearestMm: 3500, isNear: false });
    expect(gapsOf(shelf)).toEqual([{ fromMm: 7000, toMm: 12_500 }]);
    expect(bedDepth(shelf, 7000)).toMatchObject({ nearestMm: 1500, isNear: true });
    expect(bedDepth(shelf, 7050)).toMatchObject({ nearestMm: 1550, isNear: false });
  });

  it("lies between what the steepest stretch that was plumbed allows, by hand", () => {
    // The ledge falls 0.8 m in 1 m. Half a metre beyond its foot a bed as steep may rise by 0.4 m, or fall by as much;
    // and 3 cm is how well a depth is plumbed.
    const { shallowestMm, deepestMm } = bedDepth(shelf, 6000)!;
    expect(shallowestMm).toBeCloseTo(1900 - 400 - 30, 6);
    expect(deepestMm).toBeCloseTo(1900 + 400 + 30, 6);
  });

  it("holds every bed through the soundings that is no steeper, and the curve itself", () => {
    const soundings = fc
      .uniqueArray(fc.integer({ min: 0, max: 200 }), { minLength: 2, maxLength: 10 })
      .chain((places) =>
        fc.tuple(
          ...places.map((place) =>
            fc.record({ place: fc.constant(place), deep: fc.integer({ min: 1, max: 40 }) }),
          ),
        ),
      );
    fc.assert(
      fc.property(soundings, fc.double({ min: 0, max: 1, noNaN: true }), (all, share) => {
        const list: Sounding[] = all.map(({ place, deep }) => ({
          fromBankMm: 100 * place,
          depthMm: 100 * deep,
        }));
        const made = bedOf(list);
        const from = Math.min(...list.map((one) => one.fromBankMm));
        const to = Math.max(...list.map((one) => one.fromBankMm));
        const at = bedDepth(made, from + share * (to - from))!;
        expect(at.shallowestMm).toBeLessThanOrEqual(at.depthMm);
        expect(at.deepestMm).toBeGreaterThanOrEqual(at.depthMm);
        // The straight line between neighbours is a bed that is no steeper.
        const straight = straightDepth(made.soundings, from + share * (to - from));
        expect(at.shallowestMm).toBeLessThanOrEqual(straight + 1e-6);
        expect(at.deepestMm).toBeGreaterThanOrEqual(straight - 1e-6);
      }),
      { seed: 21, numRuns: 300 },
    );
  });
});

function straightDepth(soundings: readonly Sounding[], x: number): number {
  const at = Math.max(
    1,
    soundings.findIndex((one) => one.fromBankMm >= x),
  );
  const [a, b] = [soundings[at - 1]!, soundings[at]!];
  return a.depthMm + ((b.depthMm - a.depthMm) * (x - a.fromBankMm)) / (b.fromBankMm - a.fromBankMm);
}

describe("ledges", () => {
  it("are found where the bed drops, with the depth on either side", () => {
    expect(ledgesOf(shelf)).toEqual([
      { fromMm: 4500, toMm: 5500, shallowMm: 1100, deepMm: 1900, isDrop: true },
    ]);
  });

  it("are found on the far side of a channel too, where the bed rises", () => {
    const canal = bed([0, 0.4], [2, 0.75], [3, 1.2], [4.5, 1.5], [7.5, 1.5], [9, 1.1], [10, 0.6], [11, 0.5]);
    expect(ledgesOf(canal)).toEqual([
      { fromMm: 2000, toMm: 3000, shallowMm: 750, deepMm: 1200, isDrop: true },
      { fromMm: 9000, toMm: 10_000, shallowMm: 600, deepMm: 1100, isDrop: false },
    ]);
  });

  it("have the shelf beside them as far as it was plumbed nearly level, where there is one", () => {
    // By hand: the rise from 0.5 m to 1 m within the first 1.5 m is the bank's; then 5 cm in 1.5 m.
    expect(shelfOf(shelf, ledgesOf(shelf)[0]!)).toEqual({ fromMm: 1500, toMm: 4500 });
    const sloping = bed([0, 0.4], [2, 1], [3, 1.6], [8, 1.7]);
    expect(shelfOf(sloping, ledgesOf(sloping)[0]!)).toBeUndefined();
  });

  it("are one where several steep stretches follow one another", () => {
    expect(ledgesOf(bed([0, 0.5], [3, 0.6], [4, 1.2], [5, 1.7], [9, 1.8]))).toEqual([
      { fromMm: 3000, toMm: 5000, shallowMm: 600, deepMm: 1700, isDrop: true },
    ]);
  });

  it("are as steep as that at the least: 35 cm down over a metre is one, 34 cm is none", () => {
    const drop = (depthM: number) => ledgesOf(bed([0, 1], [3, 1], [4, depthM], [7, depthM]));
    expect(drop(1.35)).toHaveLength(1);
    expect(drop(1.34)).toEqual([]);
  });

  it("are neither the bank itself, nor a slope, nor a step of a hand's height", () => {
    expect(ledgesOf(bed([0, 0], [1, 1], [2, 1.8], [6, 1.9]))).toEqual([]);
    expect(ledgesOf(bed([0, 0.5], [4, 1.5], [8, 2.5]))).toEqual([]);
    expect(ledgesOf(bed([0, 1], [3, 1.05], [3.4, 1.25], [6, 1.3]))).toEqual([]);
  });
});
