import { bestDivision, type DividedMix, startsFor } from "./best-division.ts";
import type { Start } from "./divide.ts";
import { type Fewest, fewestOf } from "./fewest.ts";
import { closestPullG, heaviestPullG, type MetalSums, nearestSum } from "./sums.ts";

/**
 * The best of the mixes whose pulls tie for the closest: fewest shot, halves most nearly equal, fewest kinds, closest.
 *
 * @param sums of each metal, the one with the heaviest shot first
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
  const metals = sums.map(fewestOf);
  const leastPullG = closestPullG(sums, mostPullG) - withinG;
  const divided = withFewestShot(metals, leastPullG, mostPullG, halves)
    .sort((a, b) => b.pullG - a.pullG)
    .map(({ units, starts }) => bestDivision(metals, units, starts, withinG, halves));
  const leastG = Math.min(...divided.map(({ differenceG }) => differenceG));
  return divided
    .filter(({ differenceG }) => differenceG <= leastG + withinG)
    .reduce((a, b) => (b.kindsUsed < a.kindsUsed ? b : a));
}

/** A sum for each metal, and where the making of each begins. */
interface Making {
  readonly pullG: number;
  readonly units: readonly number[];
  readonly starts: readonly Start[];
}

/** Of the sums whose pull is in a range, those that take fewest shot; of halves, a mix of one shot goes last. */
function withFewestShot(
  metals: readonly Fewest[],
  leastPullG: number,
  mostPullG: number,
  halves: boolean,
): Making[] {
  const last = metals.length - 1;
  const heaviestG = metals.map(({ sums }) => heaviestPullG(sums));
  const units = new Array<number>(metals.length).fill(0);
  let fewest = Number.POSITIVE_INFINITY;
  let makings: Making[] = [];

  const consider = (pullG: number) => {
    const starts = startsFor(metals, units, halves);
    const count = starts.reduce((sum, start) => sum + start.count, 0);
    const order = halves && count === 1 ? Number.POSITIVE_INFINITY : count;
    if (order > fewest) return;
    if (order < fewest) makings = [];
    fewest = order;
    makings.push({ pullG, units: units.slice(), starts });
  };
  const visit = (index: number, pullG: number, atLeast: number) => {
    const { sums, atLeast: atLeastFor } = metals[index]!;
    const heaviestLeftG = Math.max(...heaviestG.slice(index + 1));
    let sum = nearestSum(sums, Math.floor((mostPullG - pullG) / sums.unitPullG));
    for (;;) {
      const totalG = pullG + sum * sums.unitPullG;
      if (index === last && totalG < leastPullG) return;
      const soFar = atLeast + atLeastFor(0, sum);
      units[index] = sum;
      if (index === last) {
        if (soFar <= fewest) consider(totalG);
      } else if (soFar + (leastPullG - totalG) / heaviestLeftG <= fewest) visit(index + 1, totalG, soFar);
      if (sum === 0) return;
      sum = nearestSum(sums, sum - 1);
    }
  };
  visit(0, 0, 0);
  return makings;
}
