import { entry, first, last } from "../lists.ts";
import type { Shot } from "../tackle/shot.ts";
import type { G } from "../units.ts";
import { halvesOf, type Start, startOf, startOfSeveral, type Way, waysToDivide } from "./divide.ts";
import type { Fewest } from "./fewest.ts";
import type { MetalSums } from "./sums.ts";

/** A mix with the figures that say which of two is better. */
export interface DividedMix {
  readonly differenceG: G;
  readonly kindsUsed: number;
  readonly heavier: readonly Shot[];
  readonly lighter: readonly Shot[];
}

/** A metal and the sum of it that goes into a mix. */
export interface MetalPart {
  readonly metal: Fewest;
  readonly units: number;
}

/** The same, with where the making of the sum begins. */
interface StartedPart extends MetalPart {
  readonly start: Start;
}

/** The ways to make and divide a metal's sum. */
interface MetalWays {
  readonly sums: MetalSums;
  readonly ways: readonly Way[];
}

/** A way for one metal, and on which side of the float the heavier half of it goes. */
interface PickedWay {
  readonly sums: MetalSums;
  readonly way: Way;
  readonly sign: 1 | -1;
}

/** One way for each metal. */
interface Pick {
  readonly picked: readonly PickedWay[];
  readonly differenceG: G;
  readonly shotUsed: number;
  readonly kindsUsed: number;
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
 * @param halves false to leave the mix in one group
 */
export function fewestDivision(parts: readonly StartedPart[], toleranceG: G, halves: boolean): DividedMix {
  const mostG = (halves ? balancedDifferenceG(parts) : 0) + toleranceG;
  const pick = bestPick(waysWithin(parts, mostG, halves), mostG, Number.POSITIVE_INFINITY, toleranceG);
  if (pick === undefined) throw new RangeError("the sums cannot be made with their fewest shot");
  return dividedMix(pick);
}

/**
 * The best near-equal halves for given sums of the metals: fewest shot, then most nearly equal, then fewest kinds.
 *
 * @param mostShot shot that may be used in all
 * @returns undefined where so few shot have no such halves
 */
export function nearEqualDivision(
  parts: readonly MetalPart[],
  mostShot: number,
  toleranceG: G,
): DividedMix | undefined {
  const counted = parts.map((part) => ({ ...part, fewest: part.metal.fewest(0, part.units) }));
  const spare = mostShot - counted.reduce((sum, { fewest }) => sum + fewest, 0);
  const started = counted.map(({ metal, units, fewest }): StartedPart => {
    return { metal, units, start: { kind: 0, count: fewest + spare } };
  });
  const pullG = parts.reduce((sum, { metal, units }) => sum + units * metal.sums.unitPullG, 0);
  const mostG = nearEqualDifferenceG(pullG) + pullRoundingG;
  const pick = bestPick(waysWithin(started, mostG, true), mostG, mostShot, toleranceG);
  return pick && dividedMix(pick);
}

/** What rounding may add to a difference [g]. */
const pullRoundingG = 1e-9;

/** The ways of each metal that the others can even out to a difference. */
function waysWithin(parts: readonly StartedPart[], mostG: G, halves: boolean): readonly MetalWays[] {
  return parts.map((part) => {
    const { metal, units, start } = part;
    const othersG = parts.reduce((sum, one) => {
      return sum + (one === part ? 0 : one.units * one.metal.sums.unitPullG);
    }, 0);
    const most = Math.floor((othersG + mostG) / metal.sums.unitPullG);
    return { sums: metal.sums, ways: waysToDivide(metal, start, units, most, halves) };
  });
}

function dividedMix(pick: Pick): DividedMix {
  const { heavier, lighter } = shotOf(pick);
  return { differenceG: Math.abs(pick.differenceG), kindsUsed: pick.kindsUsed, heavier, lighter };
}

const nothingPicked: Pick = { picked: [], differenceG: 0, shotUsed: 0, kindsUsed: 0 };

/**
 * The choice of one way for each metal with the fewest shot, then the least difference, then the fewest kinds.
 *
 * @param mostG larger differences are of no interest
 * @param mostShot nor are mixes of more shot
 * @returns undefined where there is none
 */
function bestPick(waysOf: readonly MetalWays[], mostG: G, mostShot: number, toleranceG: G): Pick | undefined {
  let fewest = mostShot;
  let leastG = Number.POSITIVE_INFINITY;
  eachPick(
    waysOf,
    () => fewest,
    () => mostG,
    ({ shotUsed, differenceG }) => {
      if (shotUsed < fewest) leastG = Number.POSITIVE_INFINITY;
      if (shotUsed <= fewest) leastG = Math.min(leastG, Math.abs(differenceG));
      fewest = Math.min(fewest, shotUsed);
    },
  );
  if (leastG === Number.POSITIVE_INFINITY) return undefined;
  let best: Pick | undefined;
  eachPick(
    waysOf,
    () => fewest,
    () => Math.min(mostG, leastG + toleranceG),
    (pick) => {
      if (pick.shotUsed > fewest) return;
      if (best === undefined || pick.kindsUsed < best.kindsUsed) best = pick;
    },
  );
  return best;
}

/**
 * Goes through the choices; of the last metal only those ways that come nearest to evening out the others.
 *
 * @param mostShot the most shot for all metals but the last, asked for anew each time
 * @param withinG the largest difference, asked for anew each time
 */
function eachPick(
  waysOf: readonly MetalWays[],
  mostShot: () => number,
  withinG: () => number,
  found: (pick: Pick) => void,
): void {
  const evening = last(waysOf);
  const lastWays = evening.ways.toSorted((a, b) => a.differenceUnits - b.differenceUnits);
  const lastUnitG = evening.sums.unitPullG;

  const visit = (k: number, pick: Pick) => {
    if (pick.shotUsed > mostShot()) return;
    if (k < waysOf.length - 1) {
      const { sums, ways } = entry(waysOf, k);
      for (const way of ways) {
        const ownG = way.differenceUnits * sums.unitPullG;
        visit(k + 1, extended(pick, { sums, way, sign: 1 }, ownG));
        if (k > 0 && ownG > 0) visit(k + 1, extended(pick, { sums, way, sign: -1 }, ownG));
      }
      return;
    }
    const wantedG = Math.abs(pick.differenceG);
    const sign = pick.differenceG > 0 ? -1 : 1;
    for (let i = firstAtLeast(lastWays, (wantedG - withinG()) / lastUnitG); i < lastWays.length; i++) {
      const way = entry(lastWays, i);
      const ownG = way.differenceUnits * lastUnitG;
      if (ownG - wantedG > withinG()) return;
      found(extended(pick, { sums: evening.sums, way, sign }, ownG));
    }
  };
  visit(0, nothingPicked);
}

function extended(pick: Pick, next: PickedWay, ownG: G): Pick {
  return {
    picked: [...pick.picked, next],
    differenceG: pick.differenceG + next.sign * ownG,
    shotUsed: pick.shotUsed + next.way.shotUsed,
    kindsUsed: pick.kindsUsed + next.way.kindsUsed,
  };
}

/** Index of the first way, sorted by difference, whose difference is at least `units`. */
function firstAtLeast(ways: readonly Way[], units: number): number {
  let low = 0;
  let high = ways.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (entry(ways, middle).differenceUnits < units) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Where each metal begins so that, with halves, no mix of one shot is taken while two would do. */
export function startsFor(parts: readonly MetalPart[], halves: boolean): StartedPart[] {
  const started = parts.map((part) => ({ ...part, start: startOf(part.metal, part.units) }));
  if (!halves || started.reduce((sum, { start }) => sum + start.count, 0) !== 1) return started;
  return started.map((part) => {
    const several = part.start.count === 1 ? startOfSeveral(part.metal, part.units) : undefined;
    return several === undefined ? part : { ...part, start: several };
  });
}

/** A difference that can surely be had: the shot of one mix dealt out, heaviest first, to the lighter side [g]. */
function balancedDifferenceG(parts: readonly StartedPart[]): number {
  const pullsG = parts.flatMap(({ metal, units, start }) => {
    const way = first(waysToDivide(metal, start, units, 0, false));
    return halvesOf(metal.sums, way).flatMap(({ kind, heavier }) =>
      new Array<number>(heavier).fill(kind.units * metal.sums.unitPullG),
    );
  });
  pullsG.sort((a, b) => b - a);
  return pullsG.reduce((difference, pullG) => Math.abs(difference - pullG), 0);
}

/** The shot of a choice, the half that pulls harder first. */
function shotOf({ picked, differenceG }: Pick): { heavier: Shot[]; lighter: Shot[] } {
  const one: Shot[] = [];
  const other: Shot[] = [];
  for (const { sums, way, sign } of picked) {
    const [heavierSide, lighterSide] = sign > 0 ? [one, other] : [other, one];
    for (const { kind, heavier, lighter } of halvesOf(sums, way)) {
      heavierSide.push(...new Array<Shot>(heavier).fill(kind.shot));
      lighterSide.push(...new Array<Shot>(lighter).fill(kind.shot));
    }
  }
  return differenceG < 0 ? { heavier: other, lighter: one } : { heavier: one, lighter: other };
}
