import { entry, last, paired } from "../lists.ts";
import type { G } from "../units.ts";
import {
  type DividedMix,
  fewestDivision,
  type MetalPart,
  nearEqualDivision,
  startsFor,
} from "./best-division.ts";
import { type Fewest, fewestOf } from "./fewest.ts";
import { closestPullG, heaviestPullG, type MetalSums, nearestSum } from "./sums.ts";

/**
 * The best of the mixes whose pulls tie for the closest. With halves: near-equal ones where that can be, fewest shot,
 * halves most nearly equal, fewest kinds, closest. In one group: fewest shot, fewest kinds, closest.
 *
 * @param sums of each metal, the one with the heaviest shot first
 * @param mostPullG target, with what it may be exceeded by for the sake of rounding [g]
 * @param withinG pulls this close count as equal [g]
 * @param halves false to leave the mix in one group
 */
export function bestMix(sums: readonly MetalSums[], mostPullG: G, withinG: G, halves: boolean): DividedMix {
  const range: PullRange = {
    metals: sums.map(fewestOf),
    leastPullG: closestPullG(sums, mostPullG) - withinG,
    mostPullG,
  };
  return (halves && nearEqualMix(range, withinG)) || mixOfFewest(range, withinG, halves);
}

/** The sums that count as closest, and the metals that make them. */
interface PullRange {
  readonly metals: readonly Fewest[];
  readonly leastPullG: G;
  readonly mostPullG: G;
}

/** A sum for each metal. */
interface Making {
  readonly pullG: G;
  readonly parts: readonly MetalPart[];
}

/** Least difference, then fewest kinds, then closest pull. */
function bestOf(divided: readonly DividedMix[], withinG: G): DividedMix {
  const leastG = Math.min(...divided.map(({ differenceG }) => differenceG));
  return divided
    .filter(({ differenceG }) => differenceG <= leastG + withinG)
    .reduce((a, b) => (b.kindsUsed < a.kindsUsed ? b : a));
}

/**
 * The mix of fewest shot that has near-equal halves. A few shot more than the fewest mostly do; where they do not, twice
 * as many more are allowed until the tub has no more to give.
 *
 * @returns undefined where no mix has such halves
 */
function nearEqualMix(range: PullRange, withinG: G): DividedMix | undefined {
  const { metals } = range;
  let fewest = Number.POSITIVE_INFINITY;
  eachMaking(
    range,
    () => fewest,
    (_, count) => {
      fewest = Math.min(fewest, count);
    },
  );
  const most = metals.reduce((sum, metal) => sum + mostShot(metal), 0);
  for (let more = 0; ; more = Math.max(1, 2 * more)) {
    const makings: Making[] = [];
    let limit = fewest + more;
    eachMaking(
      range,
      () => limit,
      (making) => makings.push(making),
    );
    let found: DividedMix[] = [];
    for (const { parts } of makings.sort((a, b) => b.pullG - a.pullG)) {
      const divided = nearEqualDivision(parts, limit, withinG);
      if (divided === undefined) continue;
      const count = divided.heavier.length + divided.lighter.length;
      if (count < limit) found = [];
      limit = count;
      found.push(divided);
    }
    if (found.length > 0) return bestOf(found, withinG);
    if (limit >= most) return undefined;
  }
}

/** The most shot that can make a sum of a metal. */
function mostShot({ sums: { kinds, maxUnits } }: Fewest): number {
  const all = kinds.reduce((sum, { count }) => sum + count, 0);
  return Math.min(all, Math.floor(maxUnits / last(kinds).units));
}

/** The mix of fewest shot; of halves, a mix of one shot goes last. */
function mixOfFewest(range: PullRange, withinG: G, halves: boolean): DividedMix {
  let fewest = Number.POSITIVE_INFINITY;
  let makings: Making[] = [];
  eachMaking(
    range,
    () => fewest,
    (making) => {
      const count = startsFor(making.parts, halves).reduce((sum, { start }) => sum + start.count, 0);
      const order = halves && count === 1 ? Number.POSITIVE_INFINITY : count;
      if (order > fewest) return;
      if (order < fewest) makings = [];
      fewest = order;
      makings.push(making);
    },
  );
  const divided = makings
    .sort((a, b) => b.pullG - a.pullG)
    .map(({ parts }) => fewestDivision(startsFor(parts, halves), withinG, halves));
  return bestOf(divided, withinG);
}

/**
 * Goes through the sums of the metals whose pull together is in the range and that so many shot or fewer can make.
 *
 * @param limit the most shot, asked for anew each time
 * @param found told of each with the fewest shot that make it
 */
function eachMaking(
  { metals, leastPullG, mostPullG }: PullRange,
  limit: () => number,
  found: (making: Making, count: number) => void,
): void {
  const lastIndex = metals.length - 1;
  const heaviestG = metals.map(({ sums }) => heaviestPullG(sums));
  const units = new Array<number>(metals.length).fill(0);

  const visit = (index: number, pullG: G, atLeast: number) => {
    const { sums, atLeast: atLeastFor } = entry(metals, index);
    const heaviestLeftG = Math.max(...heaviestG.slice(index + 1));
    let sum = nearestSum(sums, Math.floor((mostPullG - pullG) / sums.unitPullG));
    for (;;) {
      const totalG = pullG + sum * sums.unitPullG;
      if (index === lastIndex && totalG < leastPullG) return;
      const soFar = atLeast + atLeastFor(0, sum);
      units[index] = sum;
      if (index < lastIndex) {
        if (soFar + (leastPullG - totalG) / heaviestLeftG <= limit()) visit(index + 1, totalG, soFar);
      } else if (soFar <= limit()) {
        const parts = paired(metals, units).map(([of, sumUnits]) => ({ metal: of, units: sumUnits }));
        const count = parts.reduce((all, part) => all + part.metal.fewest(0, part.units), 0);
        // No shot at all is no mix, however little is wanted.
        if (count > 0 && count <= limit()) found({ pullG: totalG, parts }, count);
      }
      if (sum === 0) return;
      sum = nearestSum(sums, sum - 1);
    }
  };
  visit(0, 0, 0);
}
