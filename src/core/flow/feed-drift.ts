import { type Answer, answer, noAnswer } from "../finding.ts";
import { cube } from "../power.ts";
import { type Body, fallTimeS } from "../sink/body-fall.ts";
import type { KgM3, Mm, Ms, S } from "../units.ts";
import type { Water } from "../water/water.ts";
import { meanPaceShare } from "./profile.ts";

/**
 * How far loose feed drifts while it sinks to the bed: `∫u(z)dz / w`, which for the power profile is
 * `pace · depth / ((1 + n) · fall)`.
 *
 * The grains fall at their steady pace from the surface on and go along with the water at once.
 *
 * @param paceMs surface pace [m/s], 0 or more
 * @param fallMs steady fall of the feed in still water [m/s], above 0
 * @returns drift [mm]; an error `feed-drift` for what cannot be
 */
export function feedDriftMm(paceMs: Ms, depthMm: Mm, fallMs: Ms): Answer<number> {
  if (!(paceMs >= 0 && depthMm > 0 && fallMs > 0)) return noAnswer("feed-drift");
  return answer((meanPaceShare * paceMs * depthMm) / fallMs);
}

/** Feed and bait that come to the same place of the bed at the same time. */
export interface FeedMeeting {
  /** Where the feed goes in, upstream of where the float does; below 0 is downstream [mm]. */
  readonly upstreamOfCastMm: Mm;
  /** Where they meet, downstream of where the float goes in [mm]. */
  readonly belowCastMm: Mm;
  readonly afterS: S;
}

/**
 * Where to throw loose feed, as the float is cast, for it to come down on the bed where the bait then is: the feed
 * drifts, and the float goes on meanwhile with its bait behind or ahead of it.
 *
 * @param driftMm way of the feed along the bed while it sinks
 * @param afterS time that it takes
 * @param floatPaceMs pace of the float over the bed [m/s]; 0 where it is stopped
 * @param leadMm bait downstream of the float; below 0 where it trails
 */
export function meetTheBait(driftMm: Mm, afterS: S, floatPaceMs: Ms, leadMm: Mm): FeedMeeting {
  const belowCastMm = floatPaceMs * 1000 * afterS + leadMm;
  return { upstreamOfCastMm: driftMm - belowCastMm, belowCastMm, afterS };
}

/** Drift of the feed for each pace (rows) and depth (columns) [mm]. */
export function feedDriftTable(
  pacesMs: readonly Ms[],
  depthsMm: readonly Mm[],
  fallMs: Ms,
): Answer<readonly (readonly number[])[]> {
  const table: number[][] = [];
  for (const paceMs of pacesMs) {
    const row: number[] = [];
    for (const depthMm of depthsMm) {
      const drift = feedDriftMm(paceMs, depthMm, fallMs);
      if (!drift.ok) return drift;
      row.push(drift.value);
    }
    table.push(row);
  }
  return answer(table);
}

/** A ball of groundbait as a body. */
export function groundbaitBall(diameterMm: Mm, densityKgM3: KgM3): Body {
  return { massG: densityKgM3 * 1e-6 * (Math.PI / 6) * cube(diameterMm), densityKgM3 };
}

/** How a ball of groundbait gets down. */
interface BallFall {
  readonly timeS: S;
  /** How far it drifts, taken along at the water's mean pace. */
  readonly driftMm: Mm;
}

/**
 * Fall of a ball that holds together until it is on the bed.
 *
 * @returns an error `fall-floats` for a ball no denser than the water
 */
export function ballFall(ball: Body, depthMm: Mm, paceMs: Ms, water: Water): Answer<BallFall> {
  const time = fallTimeS(ball, depthMm, water);
  if (!time.ok) return time;
  return answer({ timeS: time.value, driftMm: meanPaceShare * paceMs * 1000 * time.value });
}
