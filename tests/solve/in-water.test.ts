import { describe, expect, it } from "vitest";
import { readLibrary } from "../../src/content/read-library.ts";
import type { InWater } from "../../src/model/in-water.ts";
import type { Rig } from "../../src/model/rig.ts";
import { solveInWater, withWater } from "../../src/solve/in-water.ts";
import { fishRiseMs } from "../../src/solve/lift-and-pull.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

const plainRig = readLibrary(sourcesOf(contentWith())).value!.rigs[0]!.rig;

function inWater(changes: Partial<Rig> = {}): InWater {
  const rig = { ...plainRig, ...changes };
  const solved = solveRig(rig);
  if (!solved.ok) throw new Error(JSON.stringify(solved.findings));
  const water = solveInWater(solved.value, solved.value.depths[0]!);
  if (!water.ok) throw new Error(JSON.stringify(water.findings));
  return water.value;
}

const flowing: Partial<Rig> = { water: "flowing", pacesMs: [0.2, 0.5] };

describe("a rig in still water", () => {
  it("sinks ever deeper, sooner in a heap than laid out straight", () => {
    const [straight, heap] = inWater().sink;
    expect([straight!.landing, heap!.landing]).toEqual(["straight", "heap"]);
    for (const { tenthsS } of [straight!, heap!]) {
      expect(tenthsS).toHaveLength(10);
      expect(tenthsS.every((time, i) => time > (tenthsS[i - 1] ?? 0))).toBe(true);
    }
    expect(heap!.tenthsS[9]).toBeLessThan(straight!.tenthsS[9]!);
  });

  it("sinks as from a heap alone where the float slides, and has no sister without its bulk", () => {
    const sliding = inWater({ float: { ...plainRig.float, attachment: "sliding", heldByShot: false } });
    expect(sliding.sink.map(({ landing }) => landing)).toEqual(["heap"]);
    expect(sliding.sister).toBe(undefined);
  });

  it("spends its fall in three thirds that add up to the last tenth's time", () => {
    const [straight] = inWater().sink;
    const sum = straight!.thirdsS.reduce((total, third) => total + third, 0);
    expect(sum).toBeCloseTo(straight!.tenthsS[9]!, 9);
  });

  it("has a sister whose bait ends at the same depth", () => {
    const { sink, sister } = inWater({ depthsMm: [2000] });
    expect(sister!.sink.map(({ landing, hangMm }) => [landing, hangMm])).toEqual(
      sink.map(({ landing, hangMm }) => [landing, hangMm]),
    );
  });

  it("feels the same at the end of the lift in every way of hanging its shot, in harder steps gathered", () => {
    const { lift } = inWater({ depthsMm: [2000] });
    expect(lift.map(({ arrangement }) => arrangement)).toEqual(["strung out", "spread bulk", "bulk"]);
    const hardest = lift.map(({ hardestStepG }) => hardestStepG);
    expect(hardest).toEqual(hardest.toSorted((a, b) => a - b));
    expect(hardest[0]).toBeLessThan(hardest[2]!);
    const [, spreadBulk, bulk] = lift.map(({ steps }) => steps.at(-1)!.feltG);
    expect(spreadBulk).toBeCloseTo(bulk!, 9);
    lift[0]!.steps.forEach(({ liftMm, timeS }, cm) => {
      expect(liftMm).toBe(10 * cm);
      expect(timeS).toBeCloseTo(cm / 100 / fishRiseMs, 9);
    });
  });

  it("has no flow and no pace that it is too light for, and says how its bait falls against the feed", () => {
    expect(inWater().flow).toEqual([]);
    const solved = solveRig(plainRig);
    const full = solved.ok ? withWater(solved.value) : solved;
    expect(full.ok && full.value.depths.map(({ inWater }) => inWater && "tooLight" in inWater)).toEqual([
      false,
      false,
    ]);
    expect(inWater().againstFeed?.thirds).toHaveLength(3);
  });
});

describe("a rig in running water", () => {
  it("has a figure for each pace and each share held back", () => {
    const pairs = inWater(flowing).flow.map(({ paceMs, heldBackShare }) => [paceMs, heldBackShare]);
    expect(pairs).toEqual([0.2, 0.5].flatMap((pace) => [0, 0.1, 0.5, 1].map((share) => [pace, share])));
  });

  it("trails when it runs free and leads when it is stopped", () => {
    for (const { heldBackShare, leadMm } of inWater(flowing).flow) {
      if (heldBackShare === 0) expect(leadMm).toBeLessThan(0);
      if (heldBackShare === 1) expect(leadMm).toBeGreaterThan(0);
    }
  });

  it("wants its feed the further upstream the faster the water and the more it is held back", () => {
    const { flow } = inWater(flowing);
    const stopped = flow.filter(({ heldBackShare }) => heldBackShare === 1);
    expect(stopped[1]!.feed.upstreamOfCastMm).toBeGreaterThan(stopped[0]!.feed.upstreamOfCastMm);
    for (const paceMs of flowing.pacesMs!) {
      const places = flow.flatMap((one) => (one.paceMs === paceMs ? [one.feed.upstreamOfCastMm] : []));
      expect(places).toEqual(places.toSorted((a, b) => a - b));
    }
  });

  it("lets its feed drift with the mean pace of the water for as long as it falls", () => {
    const { flow, assumed } = inWater(flowing);
    for (const { paceMs, feed } of flow) {
      expect(feed.afterS).toBeCloseTo(plainRig.depthsMm[0]! / 1000 / assumed.feedFallMs, 6);
      // The mean of u ~ z^(1/7) over the depth is seven eighths of the surface's pace (Prandtl's seventh-root law).
      const driftMm = feed.upstreamOfCastMm + feed.belowCastMm;
      expect(driftMm / (1000 * paceMs * feed.afterS)).toBeCloseTo(7 / 8, 6);
    }
  });

  it("lets a float held top and bottom be stopped, where one held by its foot goes under", () => {
    const atFoot = inWater(flowing).holdBackMax;
    const float = { ...plainRig.float, attachment: "top and bottom" as const };
    const atBoth = inWater({ ...flowing, float }).holdBackMax;
    expect(atBoth.map(({ share }) => share)).toEqual([1, 1]);
    expect(atFoot[1]!.share).toBeLessThan(1);
    for (const { share, bottomOnlyShare, topAndBottomShare } of atFoot) {
      expect(share).toBe(bottomOnlyShare);
      expect(topAndBottomShare).toBe(1);
    }
  });

  it("lets a float stand as much with a heavy hook as with a light one, the shot making up its load with either", () => {
    const shareWith = (hookG: number) => {
      const hook = { ...plainRig.hook, massG: hookG };
      return inWater({ ...flowing, pacesMs: [0.2], hook }).holdBackMax[0]!.share;
    };
    expect(shareWith(0.03)).toBeLessThan(0.9);
    expect(Math.abs(shareWith(0.43) - shareWith(0.03))).toBeLessThan(0.01);
  });

  it("says from which pace it is too light where there is time for it, and what load would do", () => {
    expect(inWater(flowing).tooLight).toBeUndefined();
    const solved = solveRig({ ...plainRig, ...flowing });
    const full = solved.ok ? withWater(solved.value) : solved;
    const { tooLight, flow } = full.ok ? full.value.depths[0]!.inWater! : {};
    expect(tooLight!.needed.map(({ paceMs }) => paceMs)).toEqual(flowing.pacesMs);
    for (const { paceMs, loadShare } of tooLight!.needed) {
      // Free, the hook hangs no more than the 20 cm higher exactly in the paces that are not too light.
      const free = flow!.find((figure) => figure.paceMs === paceMs && figure.heldBackShare === 0)!;
      expect(loadShare === 1).toBe(1000 - free.hookDepthMm <= 200);
      expect(loadShare === 1).toBe(tooLight!.paceMs === null || paceMs < tooLight!.paceMs);
    }
  });
});
