import { groundbaitBallMm } from "../core/feed/groundbait.ts";
import { type Answer, answer } from "../core/finding.ts";
import { ballFall, feedDriftTable, feedUpstreamMm, groundbaitBall } from "../core/flow/feed-drift.ts";
import type { Mm, Ms } from "../core/units.ts";
import type { Water } from "../core/water/water.ts";
import type { BallDown } from "../model/in-water.ts";

/** A wet ball between 1100 and 1400. From memory. */
export const groundbaitBallKgM3 = 1250;

/** A float put in here catches so far down the swim [mm]. Common practice, no source. */
export const downTheSwimMm = 5000;

/** Where loose feed must go in, a row a pace, a column a depth [mm]. */
export interface FeedTable {
  readonly fallMs: Ms;
  readonly pacesMs: readonly Ms[];
  readonly depthsMm: readonly Mm[];
  /** Upstream of the spot at which it is to reach the bed. */
  readonly upstreamOfSpotMm: readonly (readonly number[])[];
  /** Upstream of where a float is put in that catches `downTheSwimMm` further down; below 0 is downstream. */
  readonly upstreamOfStartMm: readonly (readonly number[])[];
}

export function feedTable(fallMs: Ms, pacesMs: readonly Ms[], depthsMm: readonly Mm[]): Answer<FeedTable> {
  const drift = feedDriftTable(pacesMs, depthsMm, fallMs);
  if (!drift.ok) return drift;
  const spot = { kind: "downstream", distanceMm: downTheSwimMm } as const;
  const fromStart = drift.value.map((row) => row.map((driftMm) => feedUpstreamMm(driftMm, spot)));
  return answer({ fallMs, pacesMs, depthsMm, upstreamOfSpotMm: drift.value, upstreamOfStartMm: fromStart });
}

export function ballDown(depthMm: Mm, pacesMs: readonly Ms[], water: Water): Answer<BallDown> {
  const ball = groundbaitBall(groundbaitBallMm, groundbaitBallKgM3);
  const still = ballFall(ball, depthMm, 0, water);
  if (!still.ok) return still;
  const drifts: { paceMs: number; driftMm: number }[] = [];
  for (const paceMs of pacesMs) {
    const fall = ballFall(ball, depthMm, paceMs, water);
    if (!fall.ok) return fall;
    drifts.push({ paceMs, driftMm: fall.value.driftMm });
  }
  return answer({ timeS: still.value.timeS, drifts });
}
