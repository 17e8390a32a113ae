import { entry, first } from "../lists.ts";
import type { Shot } from "../tackle/shot.ts";
import type { G, Share } from "../units.ts";

/** Some shot of one size and metal, its mass in whole units of its metal's sums. */
export interface Kind {
  readonly shot: Shot;
  readonly units: number;
  readonly count: number;
}

/**
 * What the shot of one metal can add up to. Masses are whole milligrams, so sums are whole numbers of a unit, the
 * greatest milligram figure that divides every mass.
 */
export interface MetalSums {
  /** Those that do not exceed the largest sum, heaviest first. */
  readonly kinds: readonly Kind[];
  /** Pull of one unit [g]. */
  readonly unitPullG: G;
  /** Largest sum in the table [units]. */
  readonly maxUnits: number;
  /**
   * One bit for each sum that can be made; one row for the kinds from each on, and one for none left. A set of bits
   * takes in a lot of shot by one shift.
   */
  readonly reach: Uint32Array;
  readonly rowWords: number;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/**
 * The sums of one metal.
 *
 * @param stock shot of one metal, each with its mass [mg], heaviest first, and how many there are
 * @param pullShare pull per mass in air
 * @param mostPullG largest pull asked for [g]
 */
export function metalSums(
  stock: readonly { readonly shot: Shot; readonly massMg: number; readonly count: number }[],
  pullShare: Share,
  mostPullG: G,
): MetalSums {
  const unitMg = stock.reduce((divisor, { massMg }) => greatestCommonDivisor(divisor, massMg), 0);
  const unitPullG = (unitMg / 1000) * pullShare;
  const limit = Math.floor(mostPullG / unitPullG);
  const kinds = stock
    .map(({ shot, massMg, count }) => {
      const units = massMg / unitMg;
      return { shot, units, count: Math.min(count, Math.floor(limit / units)) };
    })
    .filter((kind) => kind.count > 0);
  const maxUnits = Math.min(
    limit,
    kinds.reduce((sum, kind) => sum + kind.units * kind.count, 0),
  );

  const rowWords = (maxUnits >> 5) + 1;
  const reach = new Uint32Array((kinds.length + 1) * rowWords);
  reach[kinds.length * rowWords] = 1;
  for (const [i, { units, count }] of [...kinds.entries()].reverse()) {
    const row = i * rowWords;
    reach.copyWithin(row, row + rowWords, row + 2 * rowWords);
    // Lots of 1, 2, 4 … shot and the rest: together they give every number up to the count and no more.
    for (let lot = 1, left = count; left > 0; left -= lot, lot *= 2) {
      addShifted(reach, row, rowWords, Math.min(lot, left) * units);
    }
  }
  return { kinds, unitPullG, maxUnits, reach, rowWords };
}

/** Adds to a row of bits the same bits moved up. */
function addShifted(bits: Uint32Array, row: number, rowWords: number, by: number): void {
  const words = by >> 5;
  const rest = by & 31;
  for (let i = rowWords - 1; i >= words; i--) {
    const from = row + i - words;
    const carried = rest > 0 && i > words ? bits[from - 1]! >>> (32 - rest) : 0;
    bits[row + i]! |= (bits[from]! << rest) | carried;
  }
}

/** Whether the kinds from `kind` on can make a sum. */
export function canReach(sums: MetalSums, kind: number, units: number): boolean {
  return ((sums.reach[kind * sums.rowWords + (units >> 5)]! >>> (units & 31)) & 1) === 1;
}

/** The largest sum up to `units` that can be made; 0 always can. */
export function nearestSum({ reach, maxUnits }: MetalSums, units: number): number {
  const from = Math.min(units, maxUnits);
  let word = from >> 5;
  let bits = reach[word]! & (0xffffffff >>> (31 - (from & 31)));
  while (bits === 0) bits = reach[--word]!;
  return word * 32 + 31 - Math.clz32(bits);
}

/** Pull of the heaviest of a metal's shot [g]. */
export function heaviestPullG({ kinds, unitPullG }: MetalSums): number {
  return first(kinds).units * unitPullG;
}

/** The largest pull of sums of the metals together that does not exceed a pull [g]. */
export function closestPullG(metals: readonly MetalSums[], mostPullG: G): number {
  let closestG = 0;
  const visit = (index: number, pullG: G) => {
    const metal = entry(metals, index);
    let sum = nearestSum(metal, Math.floor((mostPullG - pullG) / metal.unitPullG));
    if (index === metals.length - 1) {
      closestG = Math.max(closestG, pullG + sum * metal.unitPullG);
      return;
    }
    for (;;) {
      visit(index + 1, pullG + sum * metal.unitPullG);
      if (sum === 0) return;
      sum = nearestSum(metal, sum - 1);
    }
  };
  visit(0, 0);
  return closestG;
}
