import { entry, first, last, neighbours, sum } from "../lists.ts";
import type { Shot } from "../tackle/shot.ts";
import type { Mm } from "../units.ts";
import { aboveLoopMm, apartMm, floatClearMm, highestMm } from "./clearance.ts";
import type { LineRoom } from "./pattern.ts";

/** Places from the hook up, or the height that the highest of them would need. */
type Places =
  | { readonly ok: true; readonly atMm: readonly Mm[] }
  | { readonly ok: false; readonly neededMm: Mm };

/** A group of shot, given from the hook up, each touching the next. */
export function stackedMm(shot: readonly Shot[], lowestMm: Mm): number[] {
  const atMm: number[] = shot.slice(0, 1).map(() => lowestMm);
  for (const [below, one] of neighbours(shot)) atMm.push(last(atMm) + apartMm(below, one));
  return atMm;
}

/**
 * Shot spread between the lowest shot and the float, each gap in proportion to its weight. Above a telltale on the
 * hook length the others start at the loop's upper side, if the first of them would otherwise stand below it.
 *
 * @param shot from the hook up, without the lowest
 * @param weights one for the gap below each shot and one for the gap up to the float
 */
export function spreadMm(
  lowest: Shot,
  lowestMm: Mm,
  shot: readonly Shot[],
  weights: readonly number[],
  room: LineRoom,
): Places {
  const fromLowest = scaled(lowest, lowestMm, shot, weights, room);
  const loopMm = aboveLoopMm(room);
  const [nearest, ...others] = shot;
  if (lowestMm >= loopMm || nearest === undefined) return fromLowest;
  if (fromLowest.ok && first(fromLowest.atMm) >= loopMm) return fromLowest;
  const rest = scaled(nearest, loopMm, others, weights.slice(1), room);
  return rest.ok ? { ok: true, atMm: [loopMm, ...rest.atMm] } : rest;
}

function scaled(
  lowest: Shot,
  lowestMm: Mm,
  shot: readonly Shot[],
  weights: readonly number[],
  room: LineRoom,
): Places {
  const upTo = (count: number) => sum(weights.slice(0, count));
  const wholeWeight = upTo(shot.length + 1);
  const shotWeight = upTo(shot.length);
  const evenMm = (room.floatToHookMm - lowestMm) / wholeWeight;
  const clearMm = shotWeight > 0 ? (highestMm(room) - lowestMm) / shotWeight : evenMm;
  const unitMm = Math.min(evenMm, clearMm);

  const leastUnitMm = Math.max(
    0,
    ...neighbours([lowest, ...shot]).map(([below, one], i) => apartMm(below, one) / entry(weights, i)),
  );
  if (unitMm < leastUnitMm || lowestMm > highestMm(room)) {
    return {
      ok: false,
      neededMm: lowestMm + Math.max(leastUnitMm * shotWeight, leastUnitMm * wholeWeight - floatClearMm),
    };
  }
  return { ok: true, atMm: shot.map((_, i) => lowestMm + unitMm * upTo(i + 1)) };
}

/**
 * Droppers evenly between the group above and the telltale. With a telltale on the hook length they keep above the
 * loop where there is room for them; where the group stands right above the loop, they go down the hook length too.
 * None of them comes to stand on the knot.
 *
 * @param count how many
 * @param leastMm least gap between neighbours
 */
export function droppersMm(
  count: number,
  telltaleMm: Mm,
  groupMm: Mm,
  leastMm: Mm,
  room: LineRoom,
): number[] {
  const even = Array.from(
    { length: count },
    (_, i) => telltaleMm + ((groupMm - telltaleMm) * (i + 1)) / (count + 1),
  );
  const loopMm = aboveLoopMm(room);
  if (telltaleMm >= loopMm || even.every((atMm) => atMm >= loopMm)) return even;
  const gapMm = (groupMm - loopMm) / count;
  if (gapMm >= Math.max(leastMm, dropperGapMinMm)) {
    return Array.from({ length: count }, (_, i) => loopMm + gapMm * i);
  }
  const belowLoopMm = 2 * room.hookLengthMm - loopMm;
  return even.map((atMm) => (atMm > belowLoopMm && atMm < loopMm ? belowLoopMm : atMm));
}

/** Droppers closer than this to each other act as one (common practice, no source). */
const dropperGapMinMm = 50;
