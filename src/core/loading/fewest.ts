import { entry } from "../lists.ts";
import { canReach, type MetalSums } from "./sums.ts";

/** Answers how few shot of one metal make a sum, remembering what it has found. */
export interface Fewest {
  readonly sums: MetalSums;
  /** Fewest shot of the kinds from `kind` on that make a sum, or `Infinity`. */
  fewest(kind: number, units: number): number;
  /** Whether the kinds from `kind` on make a sum with so many shot or fewer. */
  canMake(kind: number, units: number, count: number): boolean;
  /** No fewer shot of the kinds from `kind` on make a sum; quick, and mostly right. */
  atLeast(kind: number, units: number): number;
}

/**
 * Searches from the heaviest kind down, most of it first, and turns back where even the heaviest shot left are too
 * few or where the sum cannot be made at all.
 */
export function fewestOf(sums: MetalSums): Fewest {
  const { kinds, maxUnits } = sums;
  /** The most shot known not to be enough for a sum, and the fewest known to be. */
  const tooFew = new Map<number, number>();
  const enough = new Map<number, number>();

  const atLeast = (kind: number, units: number): number => {
    let count = 0;
    let left = units;
    for (let i = kind; left > 0; i++) {
      const heaviest = kinds[i];
      if (heaviest === undefined) return Number.POSITIVE_INFINITY;
      const taken = Math.min(heaviest.count, Math.ceil(left / heaviest.units));
      count += taken;
      left -= taken * heaviest.units;
    }
    return count;
  };

  const canMake = (kind: number, units: number, count: number): boolean => {
    if (units === 0) return true;
    if (!canReach(sums, kind, units) || atLeast(kind, units) > count) return false;
    const key = kind * (maxUnits + 1) + units;
    if ((enough.get(key) ?? Number.POSITIVE_INFINITY) <= count) return true;
    if ((tooFew.get(key) ?? -1) >= count) return false;
    const each = entry(kinds, kind);
    for (let taken = Math.min(each.count, Math.floor(units / each.units)); taken >= 0; taken--) {
      const left = units - taken * each.units;
      // Fewer of the heavier kind never make up for it.
      if (taken + atLeast(kind + 1, left) > count && taken < count) break;
      if (taken <= count && canMake(kind + 1, left, count - taken)) {
        enough.set(key, count);
        return true;
      }
    }
    tooFew.set(key, count);
    return false;
  };

  const fewest = (kind: number, units: number): number => {
    if (!canReach(sums, kind, units)) return Number.POSITIVE_INFINITY;
    let count = atLeast(kind, units);
    while (!canMake(kind, units, count)) count++;
    return count;
  };
  return { sums, fewest, canMake, atLeast };
}
