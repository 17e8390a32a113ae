import type { Shot } from "../shot.ts";

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
  /** Heaviest first. */
  readonly kinds: readonly Kind[];
  /** Pull of one unit [g]. */
  readonly unitPullG: number;
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
  pullShare: number,
  mostPullG: number,
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
  for (let i = kinds.length - 1; i >= 0; i--) {
    const row = i * rowWords;
    reach.copyWithin(row, row + rowWords, row + 2 * rowWords);
    // Lots of 1, 2, 4 … shot and the rest: together they give every number up to the count and no more.
    const { units, count } = kinds[i]!;
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

/**
 * The sums, one for each metal, whose total pull does not exceed the target and is at most `withinG` less than the
 * largest such pull; closest first.
 *
 * @param targetPullG target, with what it may be exceeded by for the sake of rounding [g]
 */
export function closestSums(
  metals: readonly MetalSums[],
  targetPullG: number,
  withinG: number,
): readonly (readonly number[])[] {
  const last = metals.length - 1;
  const units = new Array<number>(metals.length).fill(0);
  let leastG = 0;
  let found: { readonly pullG: number; readonly units: readonly number[] }[] = [];

  const visit = (index: number, pullG: number) => {
    const metal = metals[index]!;
    let sum = nearestSum(metal, Math.floor((targetPullG - pullG) / metal.unitPullG));
    for (;;) {
      const totalG = pullG + sum * metal.unitPullG;
      units[index] = sum;
      if (index < last) visit(index + 1, totalG);
      else if (totalG < leastG) return;
      else {
        found.push({ pullG: totalG, units: units.slice() });
        if (totalG - withinG > leastG) {
          leastG = totalG - withinG;
          found = found.filter((one) => one.pullG >= leastG);
        }
      }
      if (sum === 0) return;
      sum = nearestSum(metal, sum - 1);
    }
  };
  visit(0, 0);
  return found.sort((a, b) => b.pullG - a.pullG).map((one) => one.units);
}
