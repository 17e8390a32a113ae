import { expect, it } from "vitest";
import { fewestOf } from "../../../src/core/loading/fewest.ts";
import { metalSums } from "../../../src/core/loading/sums.ts";

/** Masses of the trade's scale, heaviest first, and a tub with few of some [mg]. */
const tub: readonly (readonly [massMg: number, count: number])[] = [
  [1600, 2],
  [800, 1],
  [400, 3],
  [200, 2],
  [100, 1],
  [60, 4],
  [40, 3],
];
const stock = tub.map(([massMg, count]) => ({
  shot: { size: String(massMg), massG: massMg / 1000, metal: "tin" as const },
  massMg,
  count,
}));

/** The fewest of the kinds from one on for every sum, taking one kind after the other as often as there are. */
function byTable(fromKind: number, maxUnits: number, unitMg: number): number[] {
  const fewest: number[] = [0, ...Array<number>(maxUnits).fill(Number.POSITIVE_INFINITY)];
  for (const [massMg, count] of tub.slice(fromKind)) {
    for (let one = 0; one < count; one++) {
      for (let units = maxUnits; units >= massMg / unitMg; units--)
        fewest[units] = Math.min(fewest[units]!, fewest[units - massMg / unitMg]! + 1);
    }
  }
  return fewest;
}

it("so few shot make a sum, and no fewer, of all kinds or of the lighter ones", () => {
  const sums = metalSums(stock, 1, 6);
  const { fewest, canMake } = fewestOf(sums);
  expect(sums.unitPullG).toBeCloseTo(0.02, 12);
  for (const kind of [0, 2, 5]) {
    const table = byTable(kind, sums.maxUnits, 20);
    for (const [units, count] of table.entries()) {
      expect([kind, units, fewest(kind, units)]).toEqual([kind, units, count]);
      if (count === Number.POSITIVE_INFINITY) continue;
      expect([kind, units, canMake(kind, units, count)]).toEqual([kind, units, true]);
      if (count > 0) expect([kind, units, canMake(kind, units, count - 1)]).toEqual([kind, units, false]);
    }
  }
});
