import { groundbaitBallMm } from "../core/feed/groundbait.ts";
import { type Answer, answer } from "../core/finding.ts";
import { ballFall, feedDriftTable, groundbaitBall } from "../core/flow/feed-drift.ts";
import type { Mm, Ms } from "../core/units.ts";
import type { Water } from "../core/water/water.ts";
import type { BallDown } from "../model/in-water.ts";

/** A wet ball between 1100 and 1400. From memory. */
export const groundbaitBallKgM3 = 1250;

/** Where loose feed must go in, a row a pace, a column a depth [mm]. */
export interface FeedTable {
  readonly fallMs: Ms;
  readonly pacesMs: readonly number[];
  readonly depthsMm: readonly Mm[];
  /** Upstream of the place where the fish are, at which it is to reach the bed. */
  readonly upstreamOfSpotMm: readonly (readonly number[])[];
}

export function feedTable(fallMs: Ms, pacesMs: readonly Ms[], depthsMm: readonly Mm[]): Answer<FeedTable> {
  const drift = feedDriftTable(pacesMs, depthsMm, fallMs);
  if (!drift.ok) return drift;
  return answer({ fallMs, pacesMs, depthsMm, upstreamOfSpotMm: drift.value });
}

export function ballDown(depthMm: Mm, pacesMs: readonly Ms[], water: Water): Answer<BallDown> {
  const ball = groundbaitBall(groundbaitBallMm, groundbaitBallKgM3);
  const still = ballFall(ball, depthMm, 0, water);
  if (!still.ok) return still;
  const drifts: { paceMs: Ms; driftMm: Mm }[] = [];
  for (const paceMs of pacesMs) {
    const fall = ballFall(ball, depthMm, paceMs, water);
    if (!fall.ok) return fall;
    drifts.push({ paceMs, driftMm: fall.value.driftMm });
  }
  return answer({ timeS: still.value.timeS, drifts });
}
