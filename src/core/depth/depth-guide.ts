import { type Answer, answer, type Finding, noAnswer, warning } from "../finding.ts";
import { cockingPullG, cocks } from "../float/cocking.ts";
import { type Float, floatPullG, lengthMm } from "../float/float.ts";
import { checkFloat } from "../float/float-check.ts";
import { draughtMm, loadForTipG } from "../float/tip.ts";
import { first, last } from "../lists.ts";
import type { PlacedShot } from "../patterns/pattern.ts";
import { pullG } from "../tackle/shot.ts";
import type { G, Mm } from "../units.ts";
import type { Water } from "../water/water.ts";
import type { GuideStep } from "./guide-step.ts";
import { wholeSettingMm } from "./setting.ts";
import { type HangingLoad, type StillHang, stillHang, stillReading } from "./still-reading.ts";

export interface DepthGuideInput {
  readonly float: Float;
  readonly water: Water;
  readonly depthMm: Mm;
  /** Every shot, the lock too. */
  readonly shot: readonly PlacedShot[];
  readonly hookAndBaitPullG: G;
  /** The rig's own overdepth: where to start, where the float can be fished so [mm]. */
  readonly settingMm: Mm;
}

/** How far the guide reaches at least to either side of dead depth, and how often it has a line [mm]. */
export const guideReachMm = 600;
export const guideStepMm = 100;
/** Lines nearer to each other than this would print alike, to the centimetre [mm]. */
export const guideApartMm = 10;
/** The farthest over depth that a guide is made for [mm]: more line than any rig lays on the bed. */
const overdepthMaxMm = 10_000;

/** Least tip that is seen from the bank [mm]. Common practice, no source. */
const seenTipMm = 5;

/** What hangs below the float, from the hook up. */
function hangingLoads({ shot, hookAndBaitPullG, water }: DepthGuideInput): readonly HangingLoad[] {
  const line = shot
    .filter(({ role }) => role !== "lock")
    .map(({ size, massG, metal, fromHookMm }) => ({ size, fromHookMm, pullG: pullG(massG, metal, water) }))
    .sort((a, b) => a.fromHookMm - b.fromHookMm);
  return [{ size: null, fromHookMm: 0, pullG: hookAndBaitPullG }, ...line];
}

/**
 * Overdepths worth a line: the rig's own, dead depth, every 10 cm, and the whole centimetre at which something touches or rests. The guide
 * reaches 60 cm to either side (half the depth, if that is less, off the bed), on to the rig's own setting, and until the
 * first shot wholly rests.
 */
function guideOverdepthsMm({ depthMm, settingMm }: DepthGuideInput, { resting }: StillHang): number[] {
  const firstShot = resting.find(({ size }) => size !== null);
  const leastMm = Math.min(settingMm, -Math.min(guideReachMm, depthMm / 2));
  const restsMm = Math.min(wholeSettingMm(firstShot?.restsMm ?? 0), overdepthMaxMm);
  const mostMm = Math.max(settingMm, guideReachMm, restsMm);
  const events = resting
    .flatMap(({ touchesMm, restsMm }) =>
      restsMm - touchesMm < guideApartMm ? [restsMm] : [restsMm, touchesMm],
    )
    .map(wholeSettingMm);
  const firstMm = Math.ceil(leastMm / guideStepMm) * guideStepMm;
  const steps = Array.from(
    { length: Math.floor((mostMm - firstMm) / guideStepMm) + 1 },
    (_, i) => firstMm + i * guideStepMm,
  );
  const inReach = [settingMm, 0, leastMm, mostMm, ...events, ...steps].filter(
    (overdepthMm) => overdepthMm >= leastMm && overdepthMm <= mostMm,
  );
  return apart(inReach);
}

/** Settings that print apart, by rising overdepth: of those that would not, the one given first. */
export function apart(settingsMm: readonly Mm[]): number[] {
  const kept: number[] = [];
  for (const one of settingsMm)
    if (kept.every((other) => Math.abs(other - one) >= guideApartMm)) kept.push(one);
  return kept.sort((a, b) => a - b);
}

/** What stands in the way of a guide. */
function guideFault({ float, water, depthMm, shot, hookAndBaitPullG, settingMm }: DepthGuideInput) {
  const floatFaults = checkFloat(float, water).filter(({ severity }) => severity === "error");
  if (floatFaults.length > 0) return { ok: false as const, findings: floatFaults };
  if (!(depthMm > 0 && depthMm < Infinity)) return noAnswer("depth-not-positive");
  if (!(settingMm > -depthMm && settingMm <= overdepthMaxMm))
    return noAnswer("setting-figure", { mostMm: overdepthMaxMm });
  const bad = shot.find(
    ({ massG, fromHookMm }) => !(massG > 0 && fromHookMm >= 0 && massG + fromHookMm < Infinity),
  );
  if (bad) return noAnswer("shot-not-on-line", { size: bad.size });
  const capacityPullG = floatPullG(float, water);
  if (!Number.isFinite(hookAndBaitPullG)) return noAnswer("hook-and-bait-figure");
  if (hookAndBaitPullG < 0) return noAnswer("hook-and-bait-float", { liftG: -hookAndBaitPullG });
  if (hookAndBaitPullG >= capacityPullG) {
    return noAnswer("capacity-below-hook-and-bait", { pullG: capacityPullG, hookAndBaitPullG });
  }
  return undefined;
}

/**
 * The depth of still water read off the float, from 60 cm (or half the depth, if less) off the bottom to 60 cm over
 * depth, and on to the rig's own setting and the first shot at rest where those are farther; `flowGuide` is for running
 * water.
 *
 * What rests on the bed comes off the float, bait and hook from dead depth on, then the shot one after the other; the
 * line below is slack. Always `draught + floatToHookMm = depthMm + overdepthMm`, with the draught of the hanging rig
 * (the whole float where its load takes it under). The line is taken to hang straight down.
 *
 * Where the float comes down onto the highest shot it takes them along: gathered at its foot they pull as before.
 *
 * One line says to start there: that of the rig's own setting or, with a warning, the nearest where the float shows a
 * tip. Every other says how much deeper or shallower that is.
 *
 * @param finerMm lines as far apart as this in place of those that are told, for somebody who draws through them
 * @returns lines by rising overdepth: every 10 cm and wherever something touches or comes to rest; only settings that
 *   bring the hook up to the float are left out. No answer where the load takes the float under at every one.
 */
export function depthGuide(input: DepthGuideInput, finerMm?: Mm): Answer<readonly GuideStep[]> {
  const hung = hangingFloat(input);
  if (!hung.ok) return hung;
  const { float, water, depthMm } = input;
  const { hang, draughtMm } = hung.value;
  const told = guideOverdepthsMm(input, hang);
  const readings = (finerMm === undefined ? told : every(finerMm, told))
    .map((overdepthMm) => ({
      overdepthMm,
      floatToHookMm: depthMm + overdepthMm - draughtMm,
      hookOffBedMm: Math.max(0, -overdepthMm),
      ...stillReading(float, water, hang, overdepthMm),
    }))
    .filter(({ floatToHookMm }) => floatToHookMm > 0);
  return withAdvice(input, readings, ({ tipShowingMm }) => (tipShowingMm ?? 0) >= seenTipMm);
}

/** From the first to the last of some settings in even steps. */
function every(stepMm: Mm, settingsMm: readonly Mm[]): readonly Mm[] {
  const [fromMm, toMm] = [Math.ceil(first(settingsMm) / stepMm), Math.floor(last(settingsMm) / stepMm)];
  return Array.from({ length: toMm - fromMm + 1 }, (_, i) => (fromMm + i) * stepMm);
}

/** A float with everything hanging clear of the bed. */
interface HangingFloat {
  readonly hang: StillHang;
  readonly draughtMm: Mm;
}

/** The float with everything hanging, where a guide can be had at all. */
export function hangingFloat(input: DepthGuideInput): Answer<HangingFloat> {
  const fault = guideFault(input);
  if (fault) return fault;
  const { float, water, depthMm, settingMm } = input;
  const totalPullG = totalPull(input);
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
  return answer({ hang, draughtMm: hangingDraughtMm });
}

const totalPull = ({ shot, water, hookAndBaitPullG }: DepthGuideInput) =>
  shot.reduce((sum, { massG, metal }) => sum + pullG(massG, metal, water), hookAndBaitPullG);

type PlacedReading = Omit<GuideStep, "advice" | "moveMm">;

/**
 * Every line with what to do from there: start at the rig's own setting or, with a warning, at the nearest that can be
 * fished.
 *
 * @param found what to say of a rig that is not set where to start
 */
export function withAdvice(
  input: DepthGuideInput,
  readings: readonly PlacedReading[],
  canBeFished: (reading: PlacedReading) => boolean,
  found = settingFindings,
): Answer<readonly GuideStep[]> {
  const { float, water, settingMm } = input;
  const startMm = nearestMm(readings.filter(canBeFished), settingMm);
  if (startMm === undefined) {
    return noAnswer("load-sinks-float", {
      pullG: totalPull(input),
      mostPullG: loadForTipG(float, 0, water),
    });
  }
  return answer(
    readings.map((reading) => advised(reading, startMm)),
    found(settingMm, startMm),
  );
}

function nearestMm(readings: readonly PlacedReading[], settingMm: Mm): number | undefined {
  const offMm = ({ overdepthMm }: PlacedReading) => Math.abs(overdepthMm - settingMm);
  return [...readings].sort((a, b) => offMm(a) - offMm(b))[0]?.overdepthMm;
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
