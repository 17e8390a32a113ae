import {
  apart,
  type DepthGuideInput,
  guideApartMm,
  guideReachMm,
  guideStepMm,
  hangingFloat,
  withAdvice,
} from "../depth/depth-guide.ts";
import type { GuideStep } from "../depth/guide-step.ts";
import { type Answer, noAnswer, warning } from "../finding.ts";
import { first, known, neighbours } from "../lists.ts";
import type { Mm, Ms, Share } from "../units.ts";
import { type Trotted, trot } from "./hang.ts";
import type { FlowRig, HangingLine } from "./line-balance.ts";
import { bedTouchMm, offBedMm, settle } from "./settle.ts";

/** A rig in the stream that a guide is for, and how its float is held. */
interface TrottedAs {
  readonly rig: FlowRig;
  /** Pace of the surface. */
  readonly paceMs: Ms;
  readonly heldBackShare: Share;
}

/** What a run tells at one setting. */
type Run = Pick<GuideStep, "state" | "hookOffBedMm" | "shotOnBed">;

/** Farther over depth than this nobody looks for the bed [mm]. */
const farthestMm = 1000;

/**
 * The depth of running water read off the float, from 60 cm (or half the depth, if less) off the bottom to where the
 * first shot is on the bed or a metre over depth, and 60 cm over depth at the least; from the line as it hangs, its shot staying where they are
 * on it.
 *
 * A bait on the bed checks the float now and then, a shot there takes it under. Shot and bait are on the bed where they
 * hang no higher than `bedTouchMm`.
 *
 * @returns lines by rising overdepth: every 10 cm, the rig's own, and where the bait or the first shot comes to the bed; an error `flow-pace` for
 * a share that cannot be held back
 */
export function flowGuide(input: DepthGuideInput, flow: TrottedAs): Answer<readonly GuideStep[]> {
  const { paceMs, heldBackShare } = flow;
  if (!(heldBackShare >= 0 && heldBackShare <= 1)) return noAnswer("flow-pace", { paceMs, heldBackShare });
  const hung = hangingFloat(input);
  if (!hung.ok) return hung;
  const trotted = trot(flow.rig, paceMs);
  if (!trotted.ok) return trotted;
  const { depthMm } = input;
  const { hang, draughtMm } = hung.value;
  const lengthMm = (overdepthMm: Mm) => depthMm + overdepthMm - draughtMm;
  const runs = runsUntilUnder(input, lengthMm, (overdepthMm) =>
    runSetTo(trotted.value, heldBackShare, lengthMm(overdepthMm), input.shot, hang.sunk),
  );
  const readings = [...runs]
    .sort(([a], [b]) => a - b)
    .map(([overdepthMm, run]) => ({
      overdepthMm,
      floatToHookMm: lengthMm(overdepthMm),
      ...run,
      tipShowingMm: run.state === "drags under" ? null : hang.tipMm,
    }));
  return withAdvice(
    input,
    readings,
    ({ state }) => state === "hangs",
    (settingMm, startMm) =>
      startMm < settingMm ? [warning("flow-setting-too-deep", { shallowerMm: settingMm - startMm })] : [],
  );
}

/** What each setting of the guide tells, from the shallowest on. */
function runsUntilUnder(
  { depthMm, settingMm }: DepthGuideInput,
  lengthMm: (overdepthMm: Mm) => number,
  runAt: (overdepthMm: Mm) => Run,
): ReadonlyMap<number, Run> {
  const leastMm = Math.min(settingMm, -Math.min(guideReachMm, depthMm / 2));
  const settings = [settingMm, leastMm];
  const mostMm = Math.max(settingMm, guideReachMm);
  for (let at = Math.ceil(leastMm / guideStepMm) * guideStepMm; at <= mostMm; at += guideStepMm)
    settings.push(at);
  const runs = new Map(
    apart(settings.filter((at) => lengthMm(at) > 0)).map((at) => [at, runAt(at)] as const),
  );
  const under = () => [...runs.values()].some(({ state }) => state === "drags under");
  for (let at = mostMm + guideStepMm; !under() && at <= farthestMm; at += guideStepMm)
    runs.set(at, runAt(at));
  for (const [at, run] of changes(runs, runAt)) runs.set(at, run);
  return runs;
}

function runSetTo(
  { stream, freeSetToMmS }: Trotted,
  heldBackShare: Share,
  lengthMm: Mm,
  shot: DepthGuideInput["shot"],
  sunk: boolean,
): Run {
  const { depthMm } = stream.rig;
  const line = settle(stream, (1 - heldBackShare) * freeSetToMmS(lengthMm), lengthMm);
  const heightMm = depthMm - first(line.points).depthMm;
  const shotOnBed = shot
    .filter(({ role, fromHookMm }) => role !== "lock" && depthMm - depthAt(line, fromHookMm) <= bedTouchMm)
    .sort((a, b) => a.fromHookMm - b.fromHookMm)
    .map(({ size }) => size);
  const hookOffBedMm = offBedMm(heightMm);
  const clear = hookOffBedMm > 0 ? "hangs" : "rests on the bed";
  return {
    state: sunk || shotOnBed.length > 0 ? "drags under" : clear,
    hookOffBedMm,
    shotOnBed,
  };
}

/** Depth of a place on the line. */
function depthAt({ points }: HangingLine, fromHookMm: Mm): number {
  const pairs = neighbours(points);
  const [lower, upper] = pairs.find(([, point]) => point.fromHookMm >= fromHookMm) ?? first(pairs);
  const share = (fromHookMm - lower.fromHookMm) / (upper.fromHookMm - lower.fromHookMm || 1);
  return lower.depthMm + share * (upper.depthMm - lower.depthMm);
}

/** How near to where a run begins to tell something else the line for it stands [mm]. */
const foundWithinMm = 5;

/** Where a run first tells something else than the one before it, found by halving. */
function changes(
  runs: ReadonlyMap<number, Run>,
  runAt: (overdepthMm: Mm) => Run,
): readonly (readonly [number, Run])[] {
  const settings = [...runs.keys()].sort((a, b) => a - b);
  return neighbours(settings).flatMap(([shallower, deeper]) => {
    const { state } = known(runs, shallower);
    if (state === known(runs, deeper).state) return [];
    // Nothing is looked for where its line would print like one that is there.
    let same = shallower + guideApartMm;
    let other = deeper - guideApartMm;
    if (other < same || runAt(other).state === state) return [];
    if (runAt(same).state !== state) return [[same, runAt(same)] as const];
    while (other - same > foundWithinMm) {
      const at = (same + other) / 2;
      if (runAt(at).state === state) same = at;
      else other = at;
    }
    return [[other, runAt(other)] as const];
  });
}
