import { type Answer, answer, type Finding, noAnswer, warning } from "../finding.ts";
import { cockingPullG, cocks } from "../float/cocking.ts";
import { type Float, floatPullG, lengthMm } from "../float/float.ts";
import { checkFloat } from "../float/float-check.ts";
import { draughtMm, loadForTipG } from "../float/tip.ts";
import type { PlacedShot } from "../patterns/pattern.ts";
import { pullG } from "../tackle/shot.ts";
import type { G, Mm } from "../units.ts";
import type { Water } from "../water/water.ts";
import type { GuideReading, GuideStep } from "./guide-step.ts";
import { type HangingLoad, type StillHang, stillHang, stillReading } from "./still-reading.ts";

export interface DepthGuideInput {
  readonly float: Float;
  readonly water: Water;
  /** Running water drags what touches the bed; still water lets it rest. */
  readonly flowing: boolean;
  readonly depthMm: Mm;
  /** Every shot, the lock too. */
  readonly shot: readonly PlacedShot[];
  readonly hookAndBaitPullG: G;
  /** The rig's own overdepth: where to start, where the float can be fished so [mm]. */
  readonly settingMm: Mm;
}

/** How far the guide reaches at least to either side of dead depth, and how often it has a line [mm]. */
const guideReachMm = 600;
const guideStepMm = 100;
/** Lines nearer to each other than this would print alike [mm]. */
const guideApartMm = 5;
/** The farthest over depth that a guide is made for [mm]: more line than any rig lays on the bed. */
const overdepthMaxMm = 10_000;

/** Least tip that is seen from the bank [mm]. Common practice, no source. */
const seenTipMm = 5;

/**
 * What hangs below the float, from the hook up. A bait that floats lifts the lowest shot: it is held down by it and
 * comes off the float with it.
 */
function hangingLoads({ shot, hookAndBaitPullG, water }: DepthGuideInput): readonly HangingLoad[] {
  const line = shot
    .filter(({ role }) => role !== "lock")
    .map(({ size, massG, metal, fromHookMm }) => ({ size, fromHookMm, pullG: pullG(massG, metal, water) }))
    .sort((a, b) => a.fromHookMm - b.fromHookMm);
  let liftG = 0;
  return [{ size: null, fromHookMm: 0, pullG: hookAndBaitPullG }, ...line].map((load) => {
    const netG = load.pullG + liftG;
    liftG = Math.min(0, netG);
    return { ...load, pullG: Math.max(0, netG) };
  });
}

function flowingReading({ resting, tipMm, sunk }: StillHang, overdepthMm: Mm): GuideReading {
  const shotOnBed = resting.flatMap(({ size, fromHookMm }) =>
    size !== null && fromHookMm <= overdepthMm ? [size] : [],
  );
  if (sunk || shotOnBed.length > 0) return { state: "drags under", tipShowingMm: null, shotOnBed };
  return { state: overdepthMm < 0 ? "hangs" : "rests on the bed", tipShowingMm: tipMm, shotOnBed };
}

/**
 * Overdepths worth a line: the rig's own, dead depth, every 10 cm, and where something touches or rests. The guide
 * reaches 60 cm to either side (half the depth, if that is less, off the bed), on to the rig's own setting, and in still
 * water until the first shot wholly rests.
 */
function guideOverdepthsMm(
  { depthMm, settingMm, flowing }: DepthGuideInput,
  { resting }: StillHang,
): number[] {
  const firstShot = resting.find(({ size }) => size !== null);
  const leastMm = Math.min(settingMm, -Math.min(guideReachMm, depthMm / 2));
  const restsMm = flowing ? 0 : Math.min(firstShot?.restsMm ?? 0, overdepthMaxMm);
  const mostMm = Math.max(settingMm, guideReachMm, restsMm);
  const events = flowing
    ? resting.map(({ fromHookMm }) => fromHookMm)
    : resting.flatMap(({ touchesMm, restsMm }) => [restsMm, touchesMm]);
  const firstMm = Math.ceil(leastMm / guideStepMm) * guideStepMm;
  const steps = Array.from(
    { length: Math.floor((mostMm - firstMm) / guideStepMm) + 1 },
    (_, i) => firstMm + i * guideStepMm,
  );
  const kept: number[] = [];
  for (const overdepthMm of [settingMm, 0, leastMm, mostMm, ...events, ...steps]) {
    const inReach = overdepthMm >= leastMm && overdepthMm <= mostMm;
    if (inReach && kept.every((other) => Math.abs(other - overdepthMm) >= guideApartMm))
      kept.push(overdepthMm);
  }
  return kept.sort((a, b) => a - b);
}

/** What stands in the way of a guide. */
function guideFault({ float, water, depthMm, shot, hookAndBaitPullG, settingMm }: DepthGuideInput) {
  const floatFaults = checkFloat(float, water).filter(({ severity }) => severity === "error");
  if (floatFaults.length > 0) return { ok: false as const, findings: floatFaults };
  if (!(depthMm > 0 && depthMm < Infinity)) return noAnswer("depth-not-positive");
  if (!(settingMm > -depthMm && settingMm <= overdepthMaxMm)) return noAnswer("setting-figure");
  const bad = shot.find(
    ({ massG, fromHookMm }) => !(massG > 0 && fromHookMm >= 0 && massG + fromHookMm < Infinity),
  );
  if (bad) return noAnswer("shot-not-on-line", { size: bad.size });
  const capacityPullG = floatPullG(float, water);
  if (!Number.isFinite(hookAndBaitPullG)) return noAnswer("hook-and-bait-figure");
  if (hookAndBaitPullG >= capacityPullG) {
    return noAnswer("capacity-below-hook-and-bait", { pullG: capacityPullG, hookAndBaitPullG });
  }
  return undefined;
}

/**
 * The depth read off the float, from 60 cm (or half the depth, if less) off the bottom to 60 cm over depth, and on to
 * the rig's own setting and the first shot at rest where those are farther.
 *
 * Still water: what rests on the bed comes off the float, bait and hook from dead depth on, then the shot one after
 * the other; the line below is slack. Running water: the bait may trip along the bed, but a shot there drags the
 * float under. Always `draught + floatToHookMm = depthMm + overdepthMm`, with the draught of the hanging rig (the
 * whole float where its load takes it under). The line is taken to hang straight down.
 *
 * Where the float comes down onto the highest shot it takes them along: gathered at its foot they pull as before.
 *
 * One line says to start there: that of the rig's own setting or, with a warning, the nearest where the float shows a
 * tip. Every other says how much deeper or shallower that is.
 *
 * @returns lines by rising overdepth: every 10 cm and wherever something touches or comes to rest; only settings that
 *   bring the hook up to the float are left out. No answer where the load takes the float under at every one.
 */
export function depthGuide(input: DepthGuideInput): Answer<readonly GuideStep[]> {
  const fault = guideFault(input);
  if (fault) return fault;
  const { float, water, flowing, depthMm, shot, settingMm } = input;
  const totalPullG = shot.reduce((sum, s) => sum + pullG(s.massG, s.metal, water), input.hookAndBaitPullG);
  const hang = stillHang(float, water, hangingLoads(input), totalPullG);
  const hangingDraughtMm = draughtMm(float, totalPullG, water);
  if (hangingDraughtMm >= depthMm) {
    return noAnswer("depth-below-draught", {
      depthMm,
      draughtMm: hangingDraughtMm,
      lengthMm: lengthMm(float),
    });
  }
  if (!cocks(float, totalPullG, water)) {
    return noAnswer("load-does-not-cock", {
      pullG: totalPullG,
      neededPullG: cockingPullG(float, water) ?? floatPullG(float, water),
    });
  }
  const highestMm = Math.max(...hang.resting.map(({ fromHookMm }) => fromHookMm));
  const roomMm = depthMm + Math.max(settingMm, guideReachMm) - hangingDraughtMm;
  if (highestMm >= roomMm)
    return noAnswer("shot-above-float", { fromHookMm: highestMm, floatToHookMm: roomMm });
  const readings = guideOverdepthsMm(input, hang)
    .map((overdepthMm) => ({
      overdepthMm,
      floatToHookMm: depthMm + overdepthMm - hangingDraughtMm,
      ...(flowing ? flowingReading(hang, overdepthMm) : stillReading(float, water, hang, overdepthMm)),
    }))
    .filter(({ floatToHookMm }) => floatToHookMm > 0);
  const startMm = startingPointMm(readings, settingMm);
  if (startMm === undefined) {
    return noAnswer("load-sinks-float", { pullG: totalPullG, mostPullG: loadForTipG(float, 0, water) });
  }
  return answer(
    readings.map((reading) => advised(reading, startMm)),
    settingFindings(settingMm, startMm),
  );
}

type PlacedReading = Omit<GuideStep, "advice" | "moveMm">;

/** The setting nearest to the rig's own at which the float shows a tip. */
function startingPointMm(readings: readonly PlacedReading[], settingMm: Mm): number | undefined {
  const fished = readings.filter(({ tipShowingMm }) => (tipShowingMm ?? 0) >= seenTipMm);
  const offMm = ({ overdepthMm }: PlacedReading) => Math.abs(overdepthMm - settingMm);
  return fished.sort((a, b) => offMm(a) - offMm(b))[0]?.overdepthMm;
}

function settingFindings(settingMm: Mm, startMm: Mm): readonly Finding[] {
  if (startMm > settingMm) return [warning("setting-too-shallow", { deeperMm: startMm - settingMm })];
  return startMm < settingMm ? [warning("setting-too-deep", { shallowerMm: settingMm - startMm })] : [];
}

function advised(reading: PlacedReading, startMm: Mm): GuideStep {
  const moveMm = startMm - reading.overdepthMm;
  const advice = moveMm === 0 ? "start-here" : moveMm > 0 ? "go-deeper" : "go-shallower";
  return { ...reading, advice, moveMm };
}
