import { describe, expect, it } from "vitest";
import { z } from "zod";
import { rigData } from "../../src/build/data.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

const sink = z.array(
  z.strictObject({
    landing: z.enum(["straight", "heap"]),
    tenthsS: z.array(z.number().positive()).length(10),
    thirdsS: z.array(z.number().positive()).length(3),
  }),
);
const share = z.number().min(0).max(1);

/** The published form of how a rig is in the water; fields may be added to it, never renamed. */
const depthInWater = z.object({
  sink: sink.length(2),
  sisterPattern: z.enum(["strung out", "bulk"]).optional(),
  sisterSink: sink.length(2).optional(),
  groundbaitBall: z.object({ timeS: z.number().positive() }),
  lift: z.array(
    z.object({
      pattern: z.string(),
      own: z.boolean(),
      hardestStepG: z.number(),
      feltGByCm: z.array(z.number()),
      tipRiseMmByCm: z.array(z.number().min(0)),
    }),
  ),
  flow: z.array(
    z.object({
      paceMs: z.number().positive(),
      heldBackShare: share,
      leadCm: z.number(),
      hookDepthCm: z.number().positive(),
      offBedCm: z.number().min(0),
      promisedOffBedCm: z.number().positive(),
      extraDepthCm: z.number().nullable(),
      feedWithCast: z.object({ upstreamCm: z.number(), meetsBelowCm: z.number(), afterS: z.number() }),
    }),
  ),
  holdBackMax: z.array(z.object({ paceMs: z.number(), bottomOnlyShare: share, topAndBottomShare: share })),
  assumed: z.object({
    floatDragAreaCm2: z.number().positive(),
    floatMassG: z.number().positive(),
    feedFallMs: z.number().positive(),
    mainLineDiameterMm: z.number().positive(),
    hookLineDiameterMm: z.number().positive(),
    bait: z.string(),
    waterTempC: z.number(),
    fishRiseMs: z.number().positive(),
  }),
});

const data = (id: string) => {
  const solved = shippedGuide.rigs.find(({ rig }) => rig.id === id)!;
  return JSON.parse(JSON.stringify(rigData(solved)));
};

describe("the data of a rig in the water", () => {
  it("has, in still water, its sinking and its sister's, and no current", () => {
    for (const depth of data("laid-on-in-wind").depths) {
      const water = depthInWater.parse(depth);
      expect(water.sisterPattern).toBe("strung out");
      expect(water.flow).toEqual([]);
      expect(water.lift.map(({ own }) => own)).toEqual([false, false, true]);
    }
  });

  it("has, in running water, a figure for each pace and hold-back, what load would do, and where feed goes in", () => {
    const rig = data("stick-shirt-button");
    for (const depth of rig.depths) {
      expect(depthInWater.parse(depth).flow).toHaveLength(8);
      expect(depth.tooLight).toMatchObject({ mayLiftCm: 20, heldBackShare: 0 });
      expect(depth.tooLight.neededLoadShare).toHaveLength(2);
    }
    const { pacesMs, depthsCm, feedFallMs, upstreamOfSpotCm } = rig.feedPlaces;
    // 7/8 of the surface pace, for as long as the feed falls.
    expect(upstreamOfSpotCm[1][0]).toBeCloseTo(((7 / 8) * pacesMs[1] * depthsCm[0]) / feedFallMs, 2);
  });
});
