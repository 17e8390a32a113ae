import { rising } from "../core/lists.ts";
import type { Mm, Share } from "../core/units.ts";

/** A shot's pull and where it sits. */
interface PullAt {
  readonly pullG: number;
  readonly fromHookMm: Mm;
}

/**
 * How unlike two ways of shotting a line are: how far along it the pull would have to be moved, on average, to make the
 * one of the other, as a share of the line. 0 where they pull alike at every place, 1 where all sits at the hook in one
 * and at the float in the other.
 *
 * Formula: the earth mover's distance in one dimension, the area between the two cumulated shares of the pull.
 *
 * @param lineMm from float to hook
 */
export function movedShare(one: readonly PullAt[], other: readonly PullAt[], lineMm: Mm): Share {
  const places = rising([...one, ...other].map(({ fromHookMm }) => fromHookMm));
  let area = 0;
  for (const [i, at] of places.entries()) {
    const next = places[i + 1] ?? lineMm;
    area += Math.abs(shareUpTo(one, at) - shareUpTo(other, at)) * Math.max(0, next - at);
  }
  return area / lineMm;
}

function shareUpTo(shot: readonly PullAt[], atMm: Mm): Share {
  const sum = (some: readonly PullAt[]) => some.reduce((pull, { pullG }) => pull + pullG, 0);
  return sum(shot.filter(({ fromHookMm }) => fromHookMm <= atMm)) / sum(shot) || 0;
}
