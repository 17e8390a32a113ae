import { groundbaitBallMm } from "../core/feed/groundbait.ts";
import type { InWater, LiftAndPull, TooLight } from "../model/in-water.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedRig } from "../model/solved.ts";
import { feedTable, groundbaitBallKgM3 } from "../solve/feed-in-water.ts";
import { fishRiseMs, knockMm } from "../solve/lift-and-pull.ts";
import { mayLiftMm } from "../solve/too-light.ts";
import { cm, rounded } from "./data-figures.ts";

const seconds = (s: number) => rounded(s, 3);

/** How a rig sinks, how its bite feels and how it hangs at one depth, with what was assumed beside. */
export function inWaterData(water: InWater, rig: Rig) {
  const { sink, sister, againstFeed, ball, lift, flow, holdBackMax, tooLight } = water;
  return {
    sink: sink.map(sinkData),
    ...(sister && { sisterPattern: sister.arrangement, sisterSink: sister.sink.map(sinkData) }),
    ...(againstFeed && {
      feedTenthsS: againstFeed.feedTenthsS.map(seconds),
      baitAgainstFeedByThird: againstFeed.thirds,
    }),
    groundbaitBall: {
      timeS: seconds(ball.timeS),
      drift: ball.drifts.map(({ paceMs, driftMm }) => ({ paceMs: rounded(paceMs), driftCm: cm(driftMm) })),
    },
    lift: lift.map(liftData),
    flow: flow.map((figure) => ({
      paceMs: rounded(figure.paceMs),
      heldBackShare: figure.heldBackShare,
      floatPaceMs: rounded(figure.floatPaceMs, 4),
      leadCm: rounded(figure.leadMm / 10, 2),
      hookDepthCm: rounded(figure.hookDepthMm / 10, 2),
      offBedCm: rounded(figure.offBedMm / 10, 2),
      promisedOffBedCm: cm(figure.promisedOffBedMm),
      extraDepthCm: figure.extraDepthMm === null ? null : rounded(figure.extraDepthMm / 10, 2),
      angleAtFloatDeg: rounded(figure.angleAtFloatDeg, 2),
      feedWithCast: {
        upstreamCm: rounded(figure.feed.upstreamOfCastMm / 10, 2),
        meetsBelowCm: rounded(figure.feed.belowCastMm / 10, 2),
        afterS: seconds(figure.feed.afterS),
      },
    })),
    holdBackMax: holdBackMax.map(({ paceMs, share, bottomOnlyShare, topAndBottomShare }) => ({
      paceMs: rounded(paceMs),
      share: rounded(share, 3),
      bottomOnlyShare: rounded(bottomOnlyShare, 3),
      topAndBottomShare: rounded(topAndBottomShare, 3),
    })),
    ...(tooLight && { tooLight: tooLightData(tooLight) }),
    assumed: assumedData(water, rig),
  };
}

function sinkData({ landing, tenthsS, thirdsS }: InWater["sink"][number]) {
  return { landing, tenthsS: tenthsS.map(seconds), thirdsS: thirdsS.map(seconds) };
}

/** An entry for each centimetre that the fish has risen, from 0. */
function liftData({ arrangement, own, steps, hardestStepG }: LiftAndPull) {
  return {
    pattern: arrangement,
    own,
    hardestStepG: rounded(hardestStepG, 4),
    feltGByCm: steps.map(({ feltG }) => rounded(feltG, 4)),
    tipRiseMmByCm: steps.map(({ tipRiseMm }) => rounded(tipRiseMm, 2)),
  };
}

function tooLightData({ paceMs, needed }: TooLight) {
  return {
    mayLiftCm: cm(mayLiftMm),
    heldBackShare: 0,
    fromPaceMs: paceMs === null ? null : rounded(paceMs, 3),
    neededLoadShare: needed.map((one) => ({
      paceMs: rounded(one.paceMs),
      share: one.loadShare === null ? null : rounded(one.loadShare, 3),
    })),
  };
}

function assumedData({ assumed }: InWater, rig: Rig) {
  return {
    floatDragAreaCm2: rounded(assumed.floatDragAreaCm2, 3),
    floatMassG: rounded(assumed.floatMassG, 4),
    feedFallMs: rounded(assumed.feedFallMs, 4),
    mainLineDiameterMm: rig.mainLine.diameterMm,
    hookLineDiameterMm: rig.hookLine.diameterMm,
    bait: rig.bait.id,
    baitFallMs: rig.bait.fallMs ?? null,
    waterTempC: rig.conditions.tempC,
    fishRiseMs,
    hardestStepWithinCm: cm(knockMm),
    groundbaitBall: { diameterMm: groundbaitBallMm, densityKgM3: groundbaitBallKgM3 },
  };
}

/** Where loose feed goes in, a row a pace and a column a depth; nothing in still water. */
export function feedData({ rig, depths }: SolvedRig) {
  const fallMs = depths[0]?.inWater?.assumed.feedFallMs;
  if (rig.pacesMs.length === 0 || fallMs === undefined) return {};
  const depthsMm = depths.map(({ depthMm }) => depthMm);
  const feed = feedTable(fallMs, rig.pacesMs, depthsMm);
  if (!feed.ok) return {};
  const { upstreamOfSpotMm } = feed.value;
  return {
    feedPlaces: {
      feedFallMs: rounded(fallMs, 4),
      pacesMs: rig.pacesMs.map((paceMs) => rounded(paceMs)),
      depthsCm: depthsMm.map(cm),
      upstreamOfSpotCm: upstreamOfSpotMm.map((row) => row.map(cm)),
    },
  };
}
