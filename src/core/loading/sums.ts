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
  /** Largest sum in the tables [units]. */
  readonly maxUnits: number;
  /** `fewest[i][s]`: fewest shot of the kinds from `i` on that add up to `s`, or `unreachable`. */
  readonly fewest: readonly Uint16Array[];
  /** `nearest[s]`: the largest sum up to `s` that can be made; 0 always can. */
  readonly nearest: Int32Array;
}

/** More shot than any sum takes. */
export const unreachable = 0xffff;

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/**
 * Tables of the sums of one metal.
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

  const fewest: Uint16Array[] = new Array(kinds.length + 1);
  let table = new Uint16Array(maxUnits + 1).fill(unreachable);
  table[0] = 0;
  fewest[kinds.length] = table;
  let reach = 0;
  for (let i = kinds.length - 1; i >= 0; i--) {
    const { units, count } = kinds[i]!;
    table = table.slice();
    reach = Math.min(maxUnits, reach + units * count);
    addKind(table, units, count, reach);
    fewest[i] = table;
  }

  const nearest = new Int32Array(maxUnits + 1);
  for (let s = 1; s <= maxUnits; s++) nearest[s] = table[s] === unreachable ? nearest[s - 1]! : s;
  return { kinds, unitPullG, maxUnits, fewest, nearest };
}

/** Adds up to `count` shot of one mass to a table of fewest shot, for sums up to `reach`. */
function addKind(table: Uint16Array, units: number, count: number, reach: number): void {
  if (units * count >= reach) {
    for (let s = units; s <= reach; s++) {
      const one = table[s - units]! + 1;
      if (one < table[s]!) table[s] = one;
    }
    return;
  }
  // Lots of 1, 2, 4 … shot and the rest: together they give every number up to `count` and no more.
  for (let lot = 1, left = count; left > 0; left -= lot, lot *= 2) {
    const taken = Math.min(lot, left);
    const lotUnits = taken * units;
    for (let s = reach; s >= lotUnits; s--) {
      const withLot = table[s - lotUnits]! + taken;
      if (withLot < table[s]!) table[s] = withLot;
    }
  }
}

/**
 * The sums, one for each metal, whose total pull does not exceed the target and is at most `withinG` less than the
 * largest such pull.
 *
 * @param targetPullG target, with what it may be exceeded by for the sake of rounding [g]
 */
export function closestSums(
  metals: readonly MetalSums[],
  targetPullG: number,
  withinG: number,
  maxCount: number,
): number[][] {
  const units = new Array<number>(metals.length).fill(0);

  /** Goes through the sums of the metals from `index` on; of the last metal only those that may reach `least()`. */
  const visit = (index: number, pullG: number, shotLeft: number, least: () => number, found: Found) => {
    const { unitPullG, maxUnits, nearest, fewest } = metals[index]!;
    const last = index === metals.length - 1;
    let sum = nearest[Math.min(maxUnits, Math.floor((targetPullG - pullG) / unitPullG))]!;
    for (;;) {
      const totalG = pullG + sum * unitPullG;
      if (last && totalG < least()) return;
      const count = fewest[0]![sum]!;
      if (count <= shotLeft) {
        units[index] = sum;
        if (last) found(totalG);
        else visit(index + 1, totalG, shotLeft - count, least, found);
      }
      if (sum === 0) return;
      sum = nearest[sum - 1]!;
    }
  };

  let best = 0;
  visit(
    0,
    0,
    maxCount,
    () => best,
    (pullG) => {
      best = pullG;
    },
  );
  const tied: number[][] = [];
  visit(
    0,
    0,
    maxCount,
    () => best - withinG,
    () => {
      tied.push(units.slice());
    },
  );
  return tied;
}

type Found = (pullG: number) => void;
