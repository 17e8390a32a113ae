import type { Shot } from "../tackle/shot.ts";
import type { G } from "../units.ts";
import { halvesOf, type Start, startOf, startOfSeveral, type Way, waysToDivide } from "./divide.ts";
import type { Fewest } from "./fewest.ts";

/** A mix with the figures that say which of two is better. */
export interface DividedMix {
  readonly differenceG: G;
  readonly kindsUsed: number;
  readonly heavier: readonly Shot[];
  readonly lighter: readonly Shot[];
}

/** One way for each metal, and on which side of the float the heavier half of each goes. */
interface Pick {
  readonly ways: readonly Way[];
  readonly differenceG: G;
  readonly shotUsed: number;
  readonly kindsUsed: number;
  readonly signs: readonly number[];
}

/** The heavier half of near-equal ones pulls at most this share of the whole. Common practice, no source. */
const nearEqualShareMax = 0.6;

/** The largest difference between halves that are near-equal [g]. */
export function nearEqualDifferenceG(pullG: G): number {
  return (2 * nearEqualShareMax - 1) * pullG;
}

/**
 * The best mix for given sums of the metals when each is made with its fewest shot: halves as nearly equal in pull as
 * can be, then fewest kinds.
 *
 * @param units the sum of each metal
 * @param starts where the making of each begins
 * @param halves false to leave the mix in one group
 */
export function fewestDivision(
  metals: readonly Fewest[],
  units: readonly number[],
  starts: readonly Start[],
  toleranceG: G,
  halves: boolean,
): DividedMix {
  const mostG = (halves ? balancedDifferenceG(metals, units, starts) : 0) + toleranceG;
  const waysOf = waysWithin(metals, units, starts, mostG, halves);
  return dividedMix(metals, bestPick(metals, waysOf, mostG, Number.POSITIVE_INFINITY, toleranceG)!);
}

/**
 * The best near-equal halves for given sums of the metals: fewest shot, then most nearly equal, then fewest kinds.
 *
 * @param mostShot shot that may be used in all
 * @returns undefined where so few shot have no such halves
 */
export function nearEqualDivision(
  metals: readonly Fewest[],
  units: readonly number[],
  mostShot: number,
  toleranceG: G,
): DividedMix | undefined {
  const fewest = metals.map((metal, k) => metal.fewest(0, units[k]!));
  const spare = mostShot - fewest.reduce((sum, count) => sum + count, 0);
  const starts = fewest.map((count): Start => ({ kind: 0, count: count + spare }));
  const pullG = metals.reduce((sum, { sums }, k) => sum + units[k]! * sums.unitPullG, 0);
  const mostG = nearEqualDifferenceG(pullG) + pullRoundingG;
  const pick = bestPick(metals, waysWithin(metals, units, starts, mostG, true), mostG, mostShot, toleranceG);
  return pick && dividedMix(metals, pick);
}

/** What rounding may add to a difference [g]. */
const pullRoundingG = 1e-9;

/** The ways of each metal that the others can even out to a difference. */
function waysWithin(
  metals: readonly Fewest[],
  units: readonly number[],
  starts: readonly Start[],
  mostG: G,
  halves: boolean,
): readonly Way[][] {
  return metals.map((metal, k) => {
    const othersG = metals.reduce((sum, one, j) => sum + (j === k ? 0 : units[j]! * one.sums.unitPullG), 0);
    const most = Math.floor((othersG + mostG) / metal.sums.unitPullG);
    return waysToDivide(metal, starts[k]!, units[k]!, most, halves);
  });
}

function dividedMix(metals: readonly Fewest[], pick: Pick): DividedMix {
  const { heavier, lighter } = shotOf(metals, pick);
  return { differenceG: Math.abs(pick.differenceG), kindsUsed: pick.kindsUsed, heavier, lighter };
}

/**
 * The choice of one way for each metal with the fewest shot, then the least difference, then the fewest kinds.
 *
 * @param mostG larger differences are of no interest
 * @param mostShot nor are mixes of more shot
 * @returns undefined where there is none
 */
function bestPick(
  metals: readonly Fewest[],
  waysOf: readonly Way[][],
  mostG: G,
  mostShot: number,
  toleranceG: G,
): Pick | undefined {
  const last = metals.length - 1;
  const lastUnitG = metals[last]!.sums.unitPullG;
  const lastWays = [...waysOf[last]!].sort((a, b) => a.differenceUnits - b.differenceUnits);

  const none: Pick = { ways: [], differenceG: 0, shotUsed: 0, kindsUsed: 0, signs: [] };
  let fewest = mostShot;

  /** Goes through the choices; of the last metal only those ways that come nearest to evening out the others. */
  const visit = (k: number, pick: Pick, within: () => number, found: (pick: Pick) => void) => {
    if (pick.shotUsed > fewest) return;
    if (k < last) {
      for (const way of waysOf[k]!) {
        const ownG = way.differenceUnits * metals[k]!.sums.unitPullG;
        visit(k + 1, extended(pick, way, ownG, 1), within, found);
        if (k > 0 && ownG > 0) visit(k + 1, extended(pick, way, ownG, -1), within, found);
      }
      return;
    }
    const wantedG = Math.abs(pick.differenceG);
    const sign = pick.differenceG > 0 ? -1 : 1;
    const from = firstAtLeast(lastWays, (wantedG - within()) / lastUnitG);
    for (let i = from; i < lastWays.length; i++) {
      const ownG = lastWays[i]!.differenceUnits * lastUnitG;
      if (ownG - wantedG > within()) return;
      found(extended(pick, lastWays[i]!, ownG, sign));
    }
  };
  let leastG = Number.POSITIVE_INFINITY;
  visit(
    0,
    none,
    () => mostG,
    ({ shotUsed, differenceG }) => {
      if (shotUsed < fewest) leastG = Number.POSITIVE_INFINITY;
      if (shotUsed <= fewest) leastG = Math.min(leastG, Math.abs(differenceG));
      fewest = Math.min(fewest, shotUsed);
    },
  );
  if (leastG === Number.POSITIVE_INFINITY) return undefined;
  let best: Pick | undefined;
  visit(
    0,
    none,
    () => Math.min(mostG, leastG + toleranceG),
    (pick) => {
      if (pick.shotUsed > fewest) return;
      if (best === undefined || pick.kindsUsed < best.kindsUsed) best = pick;
    },
  );
  return best;
}

function extended(pick: Pick, way: Way, ownG: G, sign: number): Pick {
  return {
    ways: [...pick.ways, way],
    differenceG: pick.differenceG + sign * ownG,
    shotUsed: pick.shotUsed + way.shotUsed,
    kindsUsed: pick.kindsUsed + way.kindsUsed,
    signs: [...pick.signs, sign],
  };
}

/** Index of the first way, sorted by difference, whose difference is at least `units`. */
function firstAtLeast(ways: readonly Way[], units: number): number {
  let low = 0;
  let high = ways.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ways[middle]!.differenceUnits < units) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Where each metal begins so that, with halves, no mix of one shot is taken while two would do. */
export function startsFor(metals: readonly Fewest[], units: readonly number[], halves: boolean): Start[] {
  const starts = metals.map((metal, k) => startOf(metal, units[k]!));
  if (!halves || starts.reduce((sum, start) => sum + start.count, 0) !== 1) return starts;
  const alone = starts.findIndex((start) => start.count === 1);
  const several = startOfSeveral(metals[alone]!, units[alone]!);
  if (several === undefined) return starts;
  return starts.map((start, k) => (k === alone ? several : start));
}

/** A difference that can surely be had: the shot of one mix dealt out, heaviest first, to the lighter side [g]. */
function balancedDifferenceG(
  metals: readonly Fewest[],
  units: readonly number[],
  starts: readonly Start[],
): number {
  const pullsG: number[] = [];
  metals.forEach((metal, k) => {
    const way = waysToDivide(metal, starts[k]!, units[k]!, 0, false)[0]!;
    halvesOf(metal.sums, way).heavier.forEach((count, kind) => {
      for (let n = 0; n < count; n++) pullsG.push(metal.sums.kinds[kind]!.units * metal.sums.unitPullG);
    });
  });
  pullsG.sort((a, b) => b - a);
  return pullsG.reduce((difference, pullG) => Math.abs(difference - pullG), 0);
}

/** The shot of a choice, the half that pulls harder first. */
function shotOf(metals: readonly Fewest[], pick: Pick): { heavier: Shot[]; lighter: Shot[] } {
  const sides: [Shot[], Shot[]] = [[], []];
  metals.forEach((metal, k) => {
    const counts = halvesOf(metal.sums, pick.ways[k]!);
    const flip = pick.signs[k]! < 0;
    metal.sums.kinds.forEach(({ shot }, kind) => {
      const [first, second] = flip
        ? [counts.lighter[kind]!, counts.heavier[kind]!]
        : [counts.heavier[kind]!, counts.lighter[kind]!];
      for (let n = 0; n < first; n++) sides[0].push(shot);
      for (let n = 0; n < second; n++) sides[1].push(shot);
    });
  });
  const [one, other] = sides;
  return pick.differenceG < 0 ? { heavier: other, lighter: one } : { heavier: one, lighter: other };
}
