import { expect, test } from "vitest";
import {
  ballFall,
  feedDriftMm,
  feedDriftTable,
  groundbaitBall,
  meetTheBait,
} from "../../../src/core/flow/feed-drift.ts";
import { meanPaceShare, paceAtMmS } from "../../../src/core/flow/profile.ts";
import { valueIn } from "../sink/rigs.ts";

/** ∫u dz / w by Simpson's rule, with the depth counted so that the profile's steep end at the bed is evened out. */
function driftByIntegralMm(paceMs: number, depthMm: number, fallMs: number): number {
  const n = 2000;
  const f = (t: number) => {
    const height = t ** 7;
    return paceAtMmS(depthMm * (1 - height), depthMm, paceMs * 1000) * 7 * t ** 6 * depthMm;
  };
  let sum = f(0) + f(1);
  for (let i = 1; i < n; i++) sum += (i % 2 ? 4 : 2) * f(i / n);
  return sum / (3 * n) / (fallMs * 1000);
}

test.each([
  [0.4, 2000, 0.05],
  [0.1, 600, 0.12],
  [1.2, 4500, 0.3],
])("feed at %d m/s in %d mm drifts as the power profile's closed form has it", (paceMs, depthMm, fallMs) => {
  const drift = valueIn(feedDriftMm(paceMs, depthMm, fallMs));
  expect(Math.abs(drift / driftByIntegralMm(paceMs, depthMm, fallMs) - 1)).toBeLessThan(1e-6);
});

test("the mean pace over the depth is that of gauging with floats", () => {
  // River gauging multiplies a surface float's pace by 0.85–0.88 (from memory).
  expect(meanPaceShare).toBeGreaterThan(0.85);
  expect(meanPaceShare).toBeLessThan(0.88);
});

test("thrown with the cast, feed and bait come to one place of the bed at one time", () => {
  // Feed followed down step by step through the profile, and a float that goes on all the while.
  for (const [paceMs, depthMm, fallMs, floatPaceMs, leadMm] of [
    [0.5, 2000, 0.05, 0.46, -500],
    [0.5, 2000, 0.05, 0.23, 1140],
    [0.3, 1200, 0.08, 0, 900],
  ] as const) {
    const drift = valueIn(feedDriftMm(paceMs, depthMm, fallMs));
    const meeting = meetTheBait(drift, depthMm / 1000 / fallMs, floatPaceMs, leadMm);
    let feedMm = -meeting.upstreamOfCastMm;
    let timeS = 0;
    const stepS = 1e-3;
    for (let down = 0; down < depthMm; down += fallMs * 1000 * stepS) {
      feedMm += paceAtMmS(down + 500 * fallMs * stepS, depthMm, paceMs * 1000) * stepS;
      timeS += stepS;
    }
    expect(timeS).toBeCloseTo(meeting.afterS, 2);
    const baitMm = floatPaceMs * 1000 * timeS + leadMm;
    expect(Math.abs(feedMm - baitMm)).toBeLessThan(20);
    expect(Math.abs(feedMm - meeting.belowCastMm)).toBeLessThan(20);
  }
});

test("feed for a float that runs free goes in at the float, for a stopped one far above it", () => {
  // 2 m at 10 m in 20 s with maggots at 5 cm a second: 40 s down, 17.5 m along, and a float at 0.46 m/s is 18.4 m on.
  const drift = valueIn(feedDriftMm(0.5, 2000, 0.05));
  expect(drift).toBeCloseTo(17_500, 6);
  expect(meetTheBait(drift, 40, 0.46, -500).upstreamOfCastMm).toBeCloseTo(-400, 6);
  expect(meetTheBait(drift, 40, 0.23, 1100).upstreamOfCastMm).toBeCloseTo(7200, 6);
  expect(meetTheBait(drift, 40, 0, 1650).upstreamOfCastMm).toBeCloseTo(15_850, 6);
});

test("the table runs over paces and depths", () => {
  const table = valueIn(feedDriftTable([0.1, 0.2], [1000, 2000, 3000], 0.05));
  expect(table).toHaveLength(2);
  expect(table[1]![2]).toBeCloseTo(6 * table[0]![0]!, 9);
});

test("a ball of groundbait weighs what a ball of its size and density does", () => {
  // By hand: π/6 · 60³ = 113 097 mm³, at 1.25 g/ml 141.372 g.
  expect(groundbaitBall(60, 1250)).toEqual({ massG: expect.closeTo(141.372, 3), densityKgM3: 1250 });
});

test("a ball of groundbait gets down in seconds and drifts a fraction of what loose feed does", () => {
  const water = { tempC: 12, salinity: 0 };
  const fall = valueIn(ballFall(groundbaitBall(60, 1250), 2000, 0.3, water));
  // Steady fall √(4/3·g·d·(ρ−1)/C) with C = 0.47: about 0.65 m/s.
  expect(fall.timeS).toBeGreaterThan(2000 / 650);
  expect(fall.timeS).toBeLessThan(1.2 * (2000 / 650) + 0.2);
  expect(fall.driftMm).toBeLessThan(0.15 * valueIn(feedDriftMm(0.3, 2000, 0.05)));
  const floats = ballFall(groundbaitBall(60, 990), 2000, 0.3, water);
  expect(floats.ok ? "" : floats.findings[0]!.code).toBe("fall-floats");
});

test("feed that does not fall has no drift", () => {
  for (const found of [
    feedDriftMm(0.3, 2000, 0),
    feedDriftMm(-1, 2000, 0.1),
    feedDriftTable([0.1], [0], 0.1),
  ]) {
    expect(found.ok).toBe(false);
  }
});
