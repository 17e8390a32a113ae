import { type Answer, answer, noAnswer } from "../finding.ts";
import { type KitNeed, kitKey } from "../tackle/kit.ts";

/** A made-up pack of one rig: what is in it, and how many are to lie ready. */
export interface Pack<Need extends KitNeed = KitNeed> {
  readonly id: string;
  readonly needs: readonly Need[];
  readonly wanted: number;
}

/** How many packs of a rig a shelf gives. */
export interface PackStock<Need extends KitNeed = KitNeed> {
  readonly id: string;
  readonly wanted: number;
  /** If nothing else is made up from the shelf. */
  readonly alone: number;
  /** After those before it in the list have had theirs, up to what is wanted. */
  readonly inTurn: number;
  /** What there are too few of for one more, if nothing else is made up. */
  readonly shortOf: readonly Need[];
}

/** A share of a piece too small to count keeps rounding from losing a pack. */
const wholePacks = (stock: number, each: number) => Math.floor(stock / each + 1e-9);

/**
 * What can be made up from a shelf: of each pack alone, and of one after the other as they stand in the list.
 *
 * @param stockOf pieces of a thing on the shelf, metres of a line
 * @returns no answer for a pack that holds nothing
 */
export function packsFrom<Need extends KitNeed>(
  packs: readonly Pack<Need>[],
  stockOf: (need: Need) => number,
): Answer<readonly PackStock<Need>[]> {
  const used = new Map<string, number>();
  const made: PackStock<Need>[] = [];
  for (const { id, needs, wanted } of packs) {
    const things = needs.filter(({ count }) => count > 0);
    if (things.length === 0) return noAnswer("kit-count", { name: id });
    const left = (need: Need) => stockOf(need) - (used.get(kitKey(need)) ?? 0);
    const alone = Math.min(...things.map((need) => wholePacks(stockOf(need), need.count)));
    const inTurn = Math.min(wanted, ...things.map((need) => wholePacks(left(need), need.count)));
    for (const need of things) {
      used.set(kitKey(need), (used.get(kitKey(need)) ?? 0) + inTurn * need.count);
    }
    const shortOf = things.filter((need) => wholePacks(stockOf(need), need.count) === alone);
    made.push({ id, wanted, alone, inTurn, shortOf });
  }
  return answer(made);
}
