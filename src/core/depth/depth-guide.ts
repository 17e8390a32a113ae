import { type Answer, answer, noAnswer } from "../finding.ts";
import { cockingPullG, cocks } from "../float/cocking.ts";
import { type Float, floatPullG, lengthMm } from "../float/float.ts";
import { checkFloat } from "../float/float-check.ts";
import { draughtMm, loadForTipG, tipShowingMm } from "../float/tip.ts";
import type { PlacedShot } from "../patterns/pattern.ts";
import { pullG } from "../tackle/shot.ts";
import type { Water } from "../water/water.ts";

export const floatStates = ["hangs", "rests on the bed", "drags under", "lies flat"] as const;
export type FloatState = (typeof floatStates)[number];

/** What to do next; each names a sentence in `content/words` under `guide-advice.`. */
export const guideAdvices = [
  /** Hook clear of the bed: go deeper by the step in hand to find it. */
  "deepen",
  /** Hook just on the bed: dead depth, the place to start. */
  "start-here",
  /** Bait on the bed, every shot clear of it. */
  "bait-on-bed",
  /** The lowest shot that touches is partly on the bed: tip and overdepth rise together. */
  "read-the-tip",
  /** Shot wholly on the bed and the tip still: bites are slow to show, go shallower. */
  "ease-back",
  /** The load takes the float under until a shot rests: go deeper until the tip shows. */
  "deepen-till-tip-shows",
  /** The load takes the float under whatever rests: take shot off. */
  "take-shot-off",
  /** Too little hangs from the float to make it stand: far too deep. */
  "far-too-deep",
  /** Running water, bait brushing the bed: hold back gently. */
  "trip-the-bait",
  /** Running water, a shot caught on the bed: raise the hook 2–5 cm. */
  "raise-the-hook",
] as const;
export type GuideAdvice = (typeof guideAdvices)[number];

/** One line of the depth guide: the hook set this much beyond the depth, and what the float then says. */
export interface GuideStep {
  readonly overdepthMm: number;
  /** Float's lower eye to the hook, along the line. */
  readonly floatToHookMm: number;
  readonly state: FloatState;
  /** Sizes that touch the bed, from the hook up. */
  readonly shotOnBed: readonly string[];
  /** Null where the float is taken under or lies flat. */
  readonly tipShowingMm: number | null;
  readonly advice: GuideAdvice;
}

export interface DepthGuideInput {
  readonly float: Float;
  readonly water: Water;
  /** Running water drags what touches the bed; still water lets it rest. */
  readonly flowing: boolean;
  readonly depthMm: number;
  /** Every shot, the lock too. */
  readonly shot: readonly PlacedShot[];
  readonly hookAndBaitPullG: number;
  /** The rig's own overdepth, which then has a line of its own [mm]. */
  readonly settingMm?: number;
}

/** How far the guide reaches to either side of dead depth, and how often it has a line [mm]. */
export const guideReachMm = 600;
const guideStepMm = 100;
/** Lines nearer to each other than this would print alike [mm]. */
const guideApartMm = 5;

/** Something that comes to rest on the bed as the hook is set deeper. */
interface Resting {
  readonly size: string | null;
  /** Overdepth at which it touches, and from which all its pull is off the float [mm]. */
  readonly touchesMm: number;
  readonly restsMm: number;
  readonly fromHookMm: number;
}

/** The float over still water: its hanging tip, and what its line brings to the bed. */
interface Hanging {
  readonly sunk: boolean;
  readonly tipMm: number;
  readonly draughtMm: number;
  readonly resting: readonly Resting[];
}

/**
 * What hangs below the float, from the hook up. A bait that floats lifts the lowest shot: it is held down by it and
 * comes off the float with it.
 */
function hangingLoads({ shot, hookAndBaitPullG, water }: DepthGuideInput) {
  const line = shot
    .filter(({ role }) => role !== "lock")
    .map(({ size, massG, metal, fromHookMm }) => ({ size, fromHookMm, pullG: pullG(massG, metal, water) }))
    .sort((a, b) => a.fromHookMm - b.fromHookMm);
  const loads: { size: string | null; fromHookMm: number; pullG: number }[] = [];
  let liftG = 0;
  for (const load of [{ size: null, fromHookMm: 0, pullG: hookAndBaitPullG }, ...line]) {
    const netG = load.pullG + liftG;
    liftG = Math.min(0, netG);
    loads.push({ ...load, pullG: Math.max(0, netG) });
  }
  return loads;
}

/**
 * The float with everything hanging, and where each load touches and rests. With the hook set δ too deep and the
 * float risen by r, a load at a from the hook touches once δ − r = a. From there r = δ − a, until all its pull is
 * off; then the float stands still, so the next touches at its own distance plus the rise so far.
 */
function hanging(input: DepthGuideInput, totalPullG: number): Hanging {
  const { float, water } = input;
  const hangingTip = tipShowingMm(float, totalPullG, water);
  const tipMm = hangingTip ?? 0;
  let offG = 0;
  let riseMm = 0;
  const resting = hangingLoads(input).map((load) => {
    const touchesMm = load.fromHookMm + riseMm;
    offG += load.pullG;
    riseMm = Math.max(riseMm, (tipShowingMm(float, totalPullG - offG, water) ?? 0) - tipMm);
    return { ...load, touchesMm, restsMm: load.fromHookMm + riseMm };
  });
  const sunk = hangingTip === null;
  return { sunk, tipMm, draughtMm: draughtMm(float, totalPullG, water), resting };
}

/** Rise of the float in still water at an overdepth [mm], and what touches the bed there. */
function restAt(resting: readonly Resting[], overdepthMm: number) {
  const last = resting.findLast(({ touchesMm }) => touchesMm <= overdepthMm);
  const riseMm = last ? Math.min(overdepthMm, last.restsMm) - last.fromHookMm : 0;
  const touching = resting.filter(({ fromHookMm }) => last && fromHookMm <= last.fromHookMm);
  return { riseMm, touching, partly: last !== undefined && overdepthMm < last.restsMm };
}

type Reading = Pick<GuideStep, "state" | "tipShowingMm" | "advice" | "shotOnBed">;

function stillReading({ float, water }: DepthGuideInput, hang: Hanging, overdepthMm: number): Reading {
  const { riseMm, touching, partly } = restAt(hang.resting, overdepthMm);
  const shotOnBed = touching.flatMap(({ size }) => size ?? []);
  if (hang.sunk && riseMm <= 0) {
    const canRise = hang.resting.some(({ restsMm, fromHookMm }) => restsMm > fromHookMm);
    const advice = canRise ? "deepen-till-tip-shows" : "take-shot-off";
    return { state: "drags under", tipShowingMm: null, advice, shotOnBed };
  }
  const showingMm = hang.tipMm + riseMm;
  if (!cocks(float, loadForTipG(float, showingMm, water), water)) {
    return { state: "lies flat", tipShowingMm: null, advice: "far-too-deep", shotOnBed };
  }
  if (overdepthMm < 0) return { state: "hangs", tipShowingMm: showingMm, advice: "deepen", shotOnBed };
  const advice = restingAdvice(overdepthMm, shotOnBed.length > 0, partly);
  return { state: "rests on the bed", tipShowingMm: showingMm, advice, shotOnBed };
}

function restingAdvice(overdepthMm: number, shotOnBed: boolean, partly: boolean): GuideAdvice {
  if (overdepthMm === 0) return "start-here";
  if (!shotOnBed) return "bait-on-bed";
  return partly ? "read-the-tip" : "ease-back";
}

function flowingReading(hang: Hanging, overdepthMm: number): Reading {
  const shotOnBed = hang.resting.flatMap(({ size, fromHookMm }) =>
    size !== null && fromHookMm <= overdepthMm ? [size] : [],
  );
  if (hang.sunk || shotOnBed.length > 0) {
    const advice = hang.sunk ? "take-shot-off" : "raise-the-hook";
    return { state: "drags under", tipShowingMm: null, advice, shotOnBed };
  }
  return overdepthMm < 0
    ? { state: "hangs", tipShowingMm: hang.tipMm, advice: "deepen", shotOnBed }
    : { state: "rests on the bed", tipShowingMm: hang.tipMm, advice: "trip-the-bait", shotOnBed };
}

/** Overdepths worth a line: every 10 cm, dead depth, the rig's own, and where something touches or rests. */
function guideOverdepthsMm(
  { depthMm, settingMm = 0, flowing }: DepthGuideInput,
  { resting }: Hanging,
): number[] {
  const leastMm = -Math.min(guideReachMm, depthMm / 2);
  const events = flowing
    ? resting.map(({ fromHookMm }) => fromHookMm)
    : resting.flatMap(({ touchesMm, restsMm }) => [restsMm, touchesMm]);
  const steps = Array.from(
    { length: (2 * guideReachMm) / guideStepMm + 1 },
    (_, i) => i * guideStepMm - guideReachMm,
  );
  const kept: number[] = [];
  for (const overdepthMm of [0, settingMm, leastMm, guideReachMm, ...events, ...steps]) {
    const inReach = overdepthMm >= leastMm && overdepthMm <= guideReachMm;
    if (inReach && kept.every((other) => Math.abs(other - overdepthMm) >= guideApartMm))
      kept.push(overdepthMm);
  }
  return kept.sort((a, b) => a - b);
}

/** What stands in the way of a guide. */
function guideFault({ float, water, depthMm, shot, hookAndBaitPullG }: DepthGuideInput) {
  const floatFaults = checkFloat(float, water).filter(({ severity }) => severity === "error");
  if (floatFaults.length > 0) return { ok: false as const, findings: floatFaults };
  if (!(depthMm > 0 && depthMm < Infinity)) return noAnswer("depth-not-positive");
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
 * The depth read off the float, from 60 cm (or half the depth, if less) off the bottom to 60 cm over depth.
 *
 * Still water: what rests on the bed comes off the float, bait and hook from dead depth on, then the shot one after
 * the other; the line below is slack. Running water: the bait may trip along the bed, but a shot there drags the
 * float under. Always `draught + floatToHookMm = depthMm + overdepthMm`, with the draught of the hanging rig (the
 * whole float where its load takes it under). The line is taken to hang straight down.
 *
 * Where the float comes down onto the highest shot it takes them along: gathered at its foot they pull as before.
 *
 * @returns lines by rising overdepth: every 10 cm and wherever something touches or comes to rest; only settings that
 *   bring the hook up to the float are left out
 */
export function depthGuide(input: DepthGuideInput): Answer<readonly GuideStep[]> {
  const fault = guideFault(input);
  if (fault) return fault;
  const { float, water, flowing, depthMm, shot } = input;
  const totalPullG = shot.reduce((sum, s) => sum + pullG(s.massG, s.metal, water), input.hookAndBaitPullG);
  const hang = hanging(input, totalPullG);
  if (hang.draughtMm >= depthMm) {
    return noAnswer("depth-below-draught", { depthMm, draughtMm: hang.draughtMm, lengthMm: lengthMm(float) });
  }
  if (!cocks(float, totalPullG, water)) {
    return noAnswer("load-does-not-cock", {
      pullG: totalPullG,
      neededPullG: cockingPullG(float, water) ?? floatPullG(float, water),
    });
  }
  const highestMm = Math.max(...hang.resting.map(({ fromHookMm }) => fromHookMm));
  const roomMm = depthMm + guideReachMm - hang.draughtMm;
  if (highestMm >= roomMm)
    return noAnswer("shot-above-float", { fromHookMm: highestMm, floatToHookMm: roomMm });
  const steps = guideOverdepthsMm(input, hang).map((overdepthMm) => ({
    overdepthMm,
    floatToHookMm: depthMm + overdepthMm - hang.draughtMm,
    ...(flowing ? flowingReading(hang, overdepthMm) : stillReading(input, hang, overdepthMm)),
  }));
  return answer(steps.filter(({ floatToHookMm }) => floatToHookMm > 0));
}
