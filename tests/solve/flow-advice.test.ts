/**
 * Advice closes the loop: what a rig in running water is told to do is done here, to the model itself, and what was
 * promised must come out. Over every rig that is shipped, and over a seeded set of random ones.
 */
import { describe, expect, it } from "vitest";
import { pullToSinkG } from "../../src/core/float/tip.ts";
import { feelForBed, firstDip, raiseFurtherMm } from "../../src/core/flow/feel-for-bed.ts";
import { type FlowHang, hangInCurrent } from "../../src/core/flow/hang.ts";
import type { FlowRig } from "../../src/core/flow/line-balance.ts";
import { paceAtMmS } from "../../src/core/flow/profile.ts";
import { terminalFallMs } from "../../src/core/sink/body-fall.ts";
import type { Rig } from "../../src/model/rig.ts";
import { allShot, type SolvedDepth, type SolvedRig } from "../../src/model/solved.ts";
import { inFlow } from "../../src/solve/flow-figures.ts";
import { flowRig } from "../../src/solve/hanging-rig.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { tooLight } from "../../src/solve/too-light.ts";
import { valueIn } from "../core/sink/rigs.ts";
import { heldBack } from "../support/held-back.ts";
import { randomRiverRigs } from "../support/river-rigs.ts";
import { shippedLibrary } from "../support/shipped-library.ts";

const shipped = shippedLibrary.rigs.flatMap(({ rig }) => (rig.water === "flowing" ? [rig] : []));
const random = randomRiverRigs(shipped, { count: 8, seed: 20 });

/** How many advices of each kind were followed. */
const followed = new Map<string, number>();
const count = (advice: string) => followed.set(advice, (followed.get(advice) ?? 0) + 1);

/** What is asked of a rig more than once is reckoned once: many advices lead to the same setting. */
const settings = new WeakMap<SolvedDepth, Map<number, FlowRig>>();
const hangs = new WeakMap<FlowRig, Map<string, FlowHang>>();

/** The rig with its float moved on the line by so much; what locks it goes with it. */
function moved(rig: Rig, depth: SolvedDepth, byMm: number): FlowRig {
  return kept(settings, depth, byMm, () => {
    const floatToHookMm = depth.floatToHookMm + byMm;
    const lockShot = depth.lockShot.map((shot) => ({ ...shot, fromHookMm: floatToHookMm }));
    return flowRig(rig, { ...depth, floatToHookMm, lockShot });
  });
}

const hangOf = (rig: FlowRig, paceMs: number, share: number): FlowHang =>
  kept(hangs, rig, `${paceMs} ${share}`, () => valueIn(hangInCurrent(rig, paceMs, share)));

function kept<O extends object, K, V>(all: WeakMap<O, Map<K, V>>, of: O, key: K, make: () => V): V {
  const known = all.get(of) ?? new Map<K, V>();
  all.set(of, known);
  const value = known.get(key) ?? make();
  known.set(key, value);
  return value;
}

const offBedMm = (rig: FlowRig, paceMs: number, share: number) =>
  rig.depthMm - hangOf(rig, paceMs, share).hookDepthMm;

/** How high over the bed the bait hangs where a rig is set for a depth, its float held as its guide has it [mm]. */
function heightWhenSet({ rig }: SolvedRig, depth: SolvedDepth) {
  const { paceMs, heldBackShare } = depth.guidedFlow!;
  return (settingMm: number) =>
    offBedMm(moved(rig, depth, settingMm - depth.depthMm - depth.overdepthMm), paceMs, heldBackShare);
}

/** Lowest of the shot on the line, over the bed [mm]. */
function lowestShotMm(rig: FlowRig, depth: SolvedDepth, paceMs: number, share: number): number {
  const { shape } = hangOf(rig, paceMs, share);
  return Math.min(
    ...depth.lineShot.map(({ fromHookMm }) => {
      const at = shape.find((point) => point.fromHookMm >= fromHookMm - 1e-6)!;
      return rig.depthMm - at.depthMm;
    }),
  );
}

const solvedRigs = (some: readonly Rig[]): readonly SolvedRig[] =>
  some.flatMap((rig) => {
    const solved = solveRig(rig);
    return solved.ok ? [solved.value] : [];
  });
const all = [...solvedRigs(shipped), ...solvedRigs(random)];
const cases = all.flatMap((solved) =>
  solved.depths.map((depth) => {
    const rig = flowRig(solved.rig, depth);
    const feedFallMs = valueIn(terminalFallMs(rig.bait, rig.water));
    const { figures, holdBackMax } = valueIn(inFlow(solved, depth, feedFallMs));
    return { solved, depth, feedFallMs, dragAreaCm2: rig.floatDragAreaCm2, flow: figures, holdBackMax };
  }),
);

describe("advice for running water, followed", () => {
  it("has rigs of every kind to follow it on", () => {
    expect(solvedRigs(shipped)).toHaveLength(shipped.length);
    expect(solvedRigs(random).length).toBeGreaterThan(0.7 * random.length);
  });

  it("the height is that at which a rig off the bottom is set, and 1 to 3 inches for every other", () => {
    // Common practice, no source, for both.
    for (const { depth, flow } of cases) {
      for (const { promisedOffBedMm } of flow) {
        if (depth.overdepthMm < 0) expect(depth.overdepthMm + promisedOffBedMm).toBe(0);
        else expect(Math.abs(promisedOffBedMm - 2 * 25.4)).toBeLessThanOrEqual(25.4);
      }
    }
    expect(cases.some(({ depth }) => depth.overdepthMm < 0)).toBe(true);
  });

  it("a setting said to bring the bait to a height brings it there within 2 cm, to the printed centimetre", () => {
    for (const { solved, depth, flow } of cases) {
      for (const { paceMs, heldBackShare, promisedOffBedMm, extraDepthMm } of flow) {
        if (extraDepthMm === null) continue;
        const printedMm = Math.round(extraDepthMm / 10) * 10;
        const set = moved(solved.rig, depth, printedMm);
        const label = `${solved.rig.id} ${depth.depthMm} ${paceMs} ${heldBackShare} ${printedMm}`;
        const height = offBedMm(set, paceMs, heldBackShare);
        expect(Math.abs(height - promisedOffBedMm), label).toBeLessThanOrEqual(20);
        expect(lowestShotMm(set, depth, paceMs, heldBackShare), label).toBeGreaterThan(10);
        count("set deeper by");
      }
    }
  });

  it("where no setting is said to keep the bait there, none that can be cast does", () => {
    for (const { solved, depth, flow } of cases.filter((_, i) => i % 5 === 1)) {
      for (const { paceMs, heldBackShare, promisedOffBedMm, extraDepthMm } of flow) {
        if (extraDepthMm !== null) continue;
        const longest = Math.min(1.5 * depth.depthMm, solved.rig.rodLengthMm - 300) - depth.floatToHookMm;
        // The float may come down to the highest shot. A setting that need not be kept to the millimetre shows in
        // three steps of 3 cm.
        const shortest =
          Math.max(...depth.lineShot.map(({ fromHookMm }) => fromHookMm)) - depth.floatToHookMm;
        const steps = Math.ceil((longest - shortest - 1) / 30);
        const isThere = (step: number) => {
          if (step < 0 || step >= steps) return false;
          const set = moved(solved.rig, depth, shortest + 1 + 30 * step);
          return Math.abs(offBedMm(set, paceMs, heldBackShare) - promisedOffBedMm) <= 15;
        };
        const threeFrom = (step: number) => isThere(step) && isThere(step + 1) && isThere(step + 2);
        // Of any three steps on end one is a third one.
        for (let step = 2; step < steps; step += 3) {
          const kept = isThere(step) && [step - 2, step - 1, step].some(threeFrom);
          expect(kept, `${solved.rig.id} ${depth.depthMm} ${paceMs} ${heldBackShare}`).toBe(false);
        }
        count("no setting keeps it there");
      }
    }
  });

  it("each line of the depth guide says what the model does there, or within a centimetre of there", () => {
    for (const { solved, depth } of cases) {
      const { paceMs, heldBackShare } = depth.guidedFlow!;
      for (const step of depth.depthGuide) {
        const set = (byMm: number) => moved(solved.rig, depth, step.overdepthMm + byMm - depth.overdepthMm);
        const label = `${solved.rig.id} ${depth.depthMm} at ${step.overdepthMm}`;
        const heightMm = (byMm: number) => offBedMm(set(byMm), paceMs, heldBackShare);
        if (step.state === "hangs") {
          const [high, low] = [heightMm(-10), heightMm(10)];
          expect(step.hookOffBedMm, label).toBeLessThan(high + 15);
          expect(step.hookOffBedMm, label).toBeGreaterThan(low - 15);
        }
        if (step.state === "rests on the bed") expect(heightMm(10), label).toBeLessThan(20);
        if (step.state === "drags under") {
          expect(lowestShotMm(set(10), depth, paceMs, heldBackShare), label).toBeLessThan(20);
        }
        count("line of the guide");
      }
    }
  });

  it("moved as a line of the guide says, the rig is where it says to start, its bait clear of the bed", () => {
    for (const { solved, depth } of cases) {
      const { paceMs, heldBackShare } = depth.guidedFlow!;
      for (const { overdepthMm, moveMm } of depth.depthGuide) {
        const set = moved(solved.rig, depth, overdepthMm + moveMm - depth.overdepthMm);
        expect(offBedMm(set, paceMs, heldBackShare), `${solved.rig.id} ${depth.depthMm}`).toBeGreaterThan(5);
        count("move to where to start");
      }
    }
  });

  it("the setting that the guide of the same stream promises is none at which it says that the float goes under", () => {
    for (const { solved, depth, flow } of cases) {
      const { paceMs, heldBackShare } = depth.guidedFlow!;
      const figure = flow.find((one) => one.paceMs === paceMs && one.heldBackShare === heldBackShare)!;
      if (figure.extraDepthMm === null) continue;
      const setTo = depth.overdepthMm + figure.extraDepthMm;
      const before = depth.depthGuide.filter(({ overdepthMm }) => overdepthMm <= setTo).at(-1);
      expect(before?.state, `${solved.rig.id} ${depth.depthMm}`).toBe("hangs");
      count("promise against guide");
    }
  });

  it("felt for run by run, the bed is found where the model has it, and the hook raised till the bait is off it", () => {
    for (const { solved, depth } of cases) {
      const dips = firstDip(depth.depthGuide);
      if (!dips) continue;
      const told = valueIn(feelForBed(depth.depthMm + dips.overdepthMm, 1000));
      const heightAt = heightWhenSet(solved, depth);
      let settingMm = 1000;
      while (heightAt(settingMm) > 10) settingMm += 150;
      expect(Math.abs(settingMm - told.foundMm)).toBeLessThanOrEqual(150);
      while (heightAt(settingMm) <= 10) settingMm -= 50;
      expect(Math.abs(settingMm - told.cleanMm), `${solved.rig.id} ${depth.depthMm}`).toBeLessThanOrEqual(50);
      count("feel for the bed");
    }
  });

  it("raised as much more as is then said, the rig is within a raise of where the guide says to start", () => {
    for (const { solved, depth } of cases) {
      const dips = firstDip(depth.depthGuide);
      if (!dips) continue;
      const heightAt = heightWhenSet(solved, depth);
      const rightMm = depth.depthMm + dips.overdepthMm + dips.moveMm;
      const label = `${solved.rig.id} ${depth.depthMm}`;
      for (const guessMm of [970, 1020]) {
        let settingMm = guessMm;
        while (heightAt(settingMm) > 10) settingMm += 150;
        while (heightAt(settingMm) <= 10) settingMm -= 50;
        settingMm -= raiseFurtherMm(-dips.moveMm);
        // A raise, and what the guide finds its lines to.
        expect(Math.abs(settingMm - rightMm), label).toBeLessThanOrEqual(50 + 10);
        expect(heightAt(settingMm), label).toBeGreaterThan(10);
        count("raise further");
      }
    }
  });

  it("feed thrown with the cast where it is said to go comes down where the bait then is", () => {
    for (const { solved, depth, flow, feedFallMs } of cases) {
      for (const { paceMs, heldBackShare, feed } of flow) {
        const set = moved(solved.rig, depth, 0);
        const hang = hangOf(set, paceMs, heldBackShare);
        // The feed followed down in a thousand layers of the profile, the float along the surface meanwhile.
        const layers = 1000;
        const layerS = depth.depthMm / 1000 / feedFallMs / layers;
        let feedMm = -feed.upstreamOfCastMm;
        for (let i = 0; i < layers; i++) {
          feedMm += paceAtMmS(((i + 0.5) / layers) * depth.depthMm, depth.depthMm, paceMs * 1000) * layerS;
        }
        const baitMm = hang.floatPaceMs * 1000 * layers * layerS + hang.leadMm;
        const label = `${solved.rig.id} ${depth.depthMm} ${paceMs} ${heldBackShare}`;
        // Within a tenth of a metre, and a five-hundredth of the way.
        const withinMm = 100 + Math.abs(baitMm) / 500;
        expect(Math.abs(feedMm - baitMm), label).toBeLessThan(withinMm);
        expect(Math.abs(feed.belowCastMm - baitMm), label).toBeLessThan(withinMm);
        count("feed with the cast");
      }
    }
  });

  it("held back by as much as it is said to stand, a float stays up, and by a little more it goes under", () => {
    for (const { solved, depth, dragAreaCm2, holdBackMax } of cases) {
      const { rig, hookAndBaitPullG } = solved;
      const loadG = depth.pullG + hookAndBaitPullG;
      const float = {
        dragAreaCm2,
        loadG,
        tipPullG: pullToSinkG(rig.float, loadG, rig.conditions),
      };
      for (const { paceMs, bottomOnlyShare, topAndBottomShare } of holdBackMax) {
        const freeMs = hangOf(moved(rig, depth, 0), paceMs, 0).floatPaceMs;
        const under = (attachment: "bottom" | "top and bottom", share: number) =>
          heldBack(float, attachment, paceMs - (1 - share) * freeMs, rig.conditions).goesUnder;
        const label = `${rig.id} ${depth.depthMm} ${paceMs} ${bottomOnlyShare}`;
        if (bottomOnlyShare > 0) expect(under("bottom", 0.98 * bottomOnlyShare), label).toBe(false);
        if (bottomOnlyShare < 1) expect(under("bottom", bottomOnlyShare + 0.02), label).toBe(true);
        expect(under("top and bottom", topAndBottomShare)).toBe(false);
        count("hold back");
      }
    }
  });

  it("with as many times its shot as it is said to need, the bait is kept as deep as it is said to be", () => {
    for (const { solved, depth } of cases.slice(0, 24)) {
      const rig = moved(solved.rig, depth, 0);
      const { paceMs: limitMs, needed } = valueIn(tooLight(rig, solved.rig.pacesMs));
      const stillMm = Math.min(rig.draughtMm + rig.floatToHookMm, rig.depthMm);
      const liftMm = (one: FlowRig, paceMs: number) => stillMm - hangOf(one, paceMs, 0).hookDepthMm;
      if (limitMs !== null) {
        expect(liftMm(rig, limitMs + 0.01)).toBeGreaterThan(200);
        expect(liftMm(rig, limitMs - 0.02)).toBeLessThanOrEqual(200);
        count("too light from");
      }
      for (const { paceMs, loadShare } of needed) {
        if (loadShare === null) continue;
        const heavier = { ...rig, shot: rig.shot.map((one) => ({ ...one, massG: one.massG * loadShare })) };
        expect(liftMm(heavier, paceMs)).toBeLessThanOrEqual(201);
        count("load needed");
      }
    }
  });
});

describe("the rigs of the guide", () => {
  const own = new Set(shipped.map(({ id }) => id));
  const ours = cases.filter(({ solved }) => own.has(solved.rig.id) && shipped.includes(solved.rig));

  it("say to start at their own setting, their bait clear of the bed", () => {
    for (const { solved, depth } of ours) {
      const start = depth.depthGuide.find(({ advice }) => advice === "start-here")!;
      expect(start.overdepthMm, solved.rig.id).toBe(depth.overdepthMm);
      expect(start.state).toBe("hangs");
    }
  });

  // 1 to 3 inches off the bottom for a stick in slow water: common practice, no source. A bait that is set off the
  // bottom or held back is meant to be higher.
  it("run their bait about 2 cm to 8 cm off the bed where they are set over depth or to it", () => {
    for (const { solved, depth } of ours) {
      const { rig } = solved;
      if (rig.overdepthMm < 0 || rig.heldBackShare !== undefined) continue;
      const start = depth.depthGuide.find(({ advice }) => advice === "start-here")!;
      expect(start.hookOffBedMm, `${rig.id} ${depth.depthMm}`).toBeGreaterThan(15);
      expect(start.hookOffBedMm, `${rig.id} ${depth.depthMm}`).toBeLessThan(85);
    }
  });

  it("hang every shot below the float's eye", () => {
    for (const { depth } of ours) {
      for (const { fromHookMm } of allShot(depth))
        expect(fromHookMm).toBeLessThanOrEqual(depth.floatToHookMm);
    }
  });
});

it("follows enough advice of every kind", () => {
  const least = {
    "set deeper by": 100,
    "no setting keeps it there": 12,
    "line of the guide": 350,
    "move to where to start": 350,
    "promise against guide": 16,
    "feel for the bed": 22,
    "raise further": 44,
    "feed with the cast": 170,
    "hold back": 38,
    "too light from": 16,
    "load needed": 30,
  };
  for (const [advice, times] of Object.entries(least))
    expect(followed.get(advice), advice).toBeGreaterThanOrEqual(times);
});
