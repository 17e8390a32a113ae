import { entry } from "../lists.ts";
import type { Fewest } from "./fewest.ts";
import type { Kind, MetalSums } from "./sums.ts";

/** One way to make a sum, and to divide it in two. A chain, from the heaviest kind to the lightest. */
export interface Way {
  readonly before: Way | null;
  readonly kind: number;
  readonly count: number;
  /** How many of them go to the half that was the heavier one so far. */
  readonly toHeavier: number;
  /** Whether the other half becomes the heavier one by it. */
  readonly turns: boolean;
  readonly leftUnits: number;
  readonly shotUsed: number;
  /** Heavier half less lighter half. */
  readonly differenceUnits: number;
  readonly kindsUsed: number;
}

/** Where the making of a sum begins, and how many shot it takes. */
export interface Start {
  readonly kind: number;
  readonly count: number;
}

/** The start for the fewest shot that make a sum. */
export function startOf({ fewest }: Fewest, units: number): Start {
  return { kind: 0, count: fewest(0, units) };
}

/** The start for the fewest shot, at least two, that make a sum; undefined where only one shot does. */
export function startOfSeveral({ sums, fewest }: Fewest, units: number): Start | undefined {
  // Two or more shot that make the sum are each lighter than it.
  const lighter = sums.kinds.findIndex((kind) => kind.units < units);
  if (lighter < 0) return undefined;
  const count = fewest(lighter, units);
  return Number.isFinite(count) ? { kind: lighter, count } : undefined;
}

/**
 * Every difference that the halves of a sum can have when it is made with so many shot or fewer; for each the way with
 * the fewest shot, of those the one with the fewest kinds, and of those the one with more of the heavier shot.
 *
 * A count of a kind belongs to a way where the kinds after it can make the rest with the shot that are left.
 *
 * @param start the most shot, and the heaviest kind they may be of
 * @param mostDifferenceUnits larger differences are of no interest; 0 with `halves` false
 * @param halves false to leave the sum in one group
 */
export function waysToDivide(
  metal: Fewest,
  start: Start,
  units: number,
  mostDifferenceUnits: number,
  halves: boolean,
): Way[] {
  const { sums, canMake, atLeast } = metal;
  const width = units + 1;
  let ways: Way[] = [
    {
      before: null,
      kind: -1,
      count: 0,
      toHeavier: 0,
      turns: false,
      leftUnits: units,
      shotUsed: 0,
      differenceUnits: 0,
      kindsUsed: 0,
    },
  ];
  for (let kind = start.kind; kind < sums.kinds.length; kind++) {
    const { units: each, count: stocked } = entry(sums.kinds, kind);
    // Ways come in order of preference among those of as many shot and kinds, and so do their successors.
    const next = new Map<number, Way>();
    for (const before of ways) {
      const { leftUnits } = before;
      const leftShot = start.count - before.shotUsed;
      for (let count = Math.min(stocked, leftShot, Math.floor(leftUnits / each)); count >= 0; count--) {
        const left = leftUnits - count * each;
        if (atLeast(kind + 1, left) > leftShot - count) break;
        if (!canMake(kind + 1, left, leftShot - count)) continue;
        const shotUsed = before.shotUsed + count;
        const kindsUsed = before.kindsUsed + (count > 0 ? 1 : 0);
        for (let toHeavier = halves ? 0 : count; toHeavier <= count; toHeavier++) {
          const signed = halves ? before.differenceUnits + (2 * toHeavier - count) * each : 0;
          const differenceUnits = Math.abs(signed);
          if (differenceUnits - left > mostDifferenceUnits) continue;
          const key = left * width + differenceUnits;
          const known = next.get(key);
          if (known !== undefined) {
            const fewer = shotUsed - known.shotUsed;
            if (fewer > 0 || (fewer === 0 && known.kindsUsed <= kindsUsed)) continue;
            next.delete(key);
          }
          next.set(key, {
            before,
            kind,
            count,
            toHeavier,
            turns: signed < 0,
            leftUnits: left,
            shotUsed,
            differenceUnits,
            kindsUsed,
          });
        }
      }
    }
    ways = [...next.values()];
  }
  return ways;
}

/** How many of a kind go to each half. */
interface KindHalves {
  readonly kind: Kind;
  readonly heavier: number;
  readonly lighter: number;
}

/** The kinds of a way with what goes to its heavier and to its lighter half, heaviest kind first. */
export function halvesOf({ kinds }: MetalSums, way: Way): KindHalves[] {
  const halves: KindHalves[] = [];
  let turned = false;
  for (let step: Way = way; step.before !== null; step = step.before) {
    turned = turned !== step.turns;
    const rest = step.count - step.toHeavier;
    const [heavier, lighter] = turned ? [rest, step.toHeavier] : [step.toHeavier, rest];
    halves.push({ kind: entry(kinds, step.kind), heavier, lighter });
  }
  return halves.reverse();
}
