import { bestDivision, type DividedMix, startsFor } from "./best-division.ts";
import type { Start } from "./divide.ts";
import { type Fewest, fewestOf } from "./fewest.ts";
import { closestSums, type MetalSums } from "./sums.ts";

/**
 * The best of the mixes whose pulls tie for the closest: fewest shot, halves most nearly equal, fewest kinds, closest.
 *
 * @param mostPullG target, with what it may be exceeded by for the sake of rounding [g]
 * @param withinG pulls this close count as equal [g]
 * @param halves false to leave the mix in one group
 */
export function bestMix(
  sums: readonly MetalSums[],
  mostPullG: number,
  withinG: number,
  halves: boolean,
): DividedMix {
  const byMetal = sums.map(fewestOf);
  const closestFirst = closestSums(sums, mostPullG, withinG);
  const divided = withFewestShot(byMetal, closestFirst, halves).map(({ units, starts }) =>
    bestDivision(byMetal, units, starts, withinG, halves),
  );
  const leastG = Math.min(...divided.map(({ differenceG }) => differenceG));
  return divided
    .filter(({ differenceG }) => differenceG <= leastG + withinG)
    .reduce((a, b) => (b.kindsUsed < a.kindsUsed ? b : a));
}

interface Making {
  readonly units: readonly number[];
  readonly starts: readonly Start[];
}

/** Of some sums of the metals, those that take fewest shot, in the order given; of halves, a mix of one goes last. */
function withFewestShot(
  byMetal: readonly Fewest[],
  sums: readonly (readonly number[])[],
  halves: boolean,
): Making[] {
  const floors = sums.map((units) =>
    byMetal.reduce((count, metal, k) => count + metal.atLeast(0, units[k]!), 0),
  );
  let fewest = Number.POSITIVE_INFINITY;
  let makings: Making[] = [];
  sums.forEach((units, i) => {
    if (floors[i]! > fewest) return;
    const starts = startsFor(byMetal, units, halves);
    const count = starts.reduce((sum, start) => sum + start.count, 0);
    const order = halves && count === 1 ? Number.POSITIVE_INFINITY : count;
    if (order > fewest) return;
    if (order < fewest) makings = [];
    fewest = order;
    makings.push({ units, starts });
  });
  return makings;
}
