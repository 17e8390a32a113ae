/**
 * A rig hanging in balance in running water, seen from the float. Going up from the hook, the line holds all that is
 * below it: weights pull down, the water pushes along the flow by how much faster it runs than the float moves. The line
 * lies along that pull.
 */
import { gravityMmS2, shotBody, sinkerOf } from "../sink/body-fall.ts";
import type { Mm, Share } from "../units.ts";
import {
  axialDragGMmS,
  bodyDragGS,
  crossFlowDragGMmS,
  type DragLaw,
  type Fluid,
  fluidOf,
} from "../water/drag.ts";
import { type HangingRig, lineDensityKgM3 } from "./hanging-rig.ts";

/** A rig in running water. */
export interface FlowRig extends HangingRig {
  /** Drag coefficient × frontal area of the float's part under water, in square centimetres. */
  readonly floatDragAreaCm2: number;
}

/** A point of the hanging line, x downstream of the hook. */
export interface HangPoint {
  readonly fromHookMm: Mm;
  readonly xMm: Mm;
  readonly depthMm: Mm;
}

/** The line from hook to float, and what it pulls at the float [µN]. */
export interface HangingLine {
  readonly points: readonly HangPoint[];
  /** How much of it lies on the bed. */
  readonly lyingMm: Mm;
  /** Along the flow, on the float; below 0 where the rig holds the float back. */
  readonly pushUn: number;
  readonly weightUn: number;
}

interface Hung {
  readonly fromHookMm: Mm;
  readonly weightUn: number;
  readonly drags: readonly DragLaw[];
}

/** Where the line leaves the bed or, where all of it hangs, where its hook is. */
export interface LineStart {
  readonly depthMm: Mm;
  /** Line below that lies on the bed. */
  readonly lyingMm: Mm;
  /** Share of the weight of what is on the line just there that the bed carries. */
  readonly carriedShare: Share;
}

/** Where the integration stops: at a place on the line, or at a depth (but never beyond a place). */
type LineEnd =
  | { readonly kind: "length"; readonly lengthMm: Mm }
  | { readonly kind: "depth"; readonly depthMm: Mm; readonly longestMm: Mm };

/** Longest fourth-order step along the line, and the most by which the line may turn in one. */
const stepMm = 100;
const turnRad = 0.1;

/** A rig made ready for many balances. */
export interface Balance {
  readonly fluid: Fluid;
  /** Places on the line of all that hangs on it, from the hook up. */
  readonly placesMm: readonly Mm[];
  /**
   * Follows the line up from the hook, or from where it leaves the bed. What lies there is dragged along by the water
   * alone: the bed's own hold on it is left out.
   *
   * @param towMmS speed of the water past the float's frame at a depth [mm/s]
   */
  lineUp(start: LineStart, towMmS: (depthMm: Mm) => number, end: LineEnd): HangingLine;
}

export function balanceOf(rig: FlowRig): Balance {
  const fluid = fluidOf(rig.water);
  const bait = sinkerOf(rig.bait, rig.water);
  const ends = rig.hookMassG > 0 ? [bait, sinkerOf(shotBody(rig.hookMassG, "steel"), rig.water)] : [bait];
  const hung: Hung[] = [
    {
      fromHookMm: 0,
      weightUn: ends.reduce((sum, end) => sum + end.weightUn, 0),
      drags: ends.map((end) => end.drag),
    },
    // Shot that lock the float do not hang on the line.
    ...rig.shot
      .filter((shot) => shot.fromHookMm < rig.floatToHookMm)
      .map((shot) => {
        const sinker = sinkerOf(shotBody(shot.massG, shot.metal), rig.water);
        return { fromHookMm: shot.fromHookMm, weightUn: sinker.weightUn, drags: [sinker.drag] };
      }),
  ].sort((a, b) => a.fromHookMm - b.fromHookMm);

  return {
    fluid,
    placesMm: hung.map(({ fromHookMm }) => fromHookMm),
    lineUp: (start, towMmS, end) => lineUp(rig, hung, fluid, start, towMmS, end),
  };
}

/** A line whose hook hangs at a depth. */
export const hangingFrom = (hookDepthMm: Mm): LineStart => ({
  depthMm: hookDepthMm,
  lyingMm: 0,
  carriedShare: 0,
});

/** Pull on the line and place along it: push along the flow, weight [µN]; x, depth [mm]. */
type LineState = readonly [pushUn: number, weightUn: number, xMm: Mm, depthMm: Mm];

function lineUp(
  rig: FlowRig,
  hung: readonly Hung[],
  fluid: Fluid,
  start: LineStart,
  towMmS: (depthMm: Mm) => number,
  end: LineEnd,
): HangingLine {
  const longest = end.kind === "length" ? end.lengthMm : end.longestMm;
  let state: LineState = [0, 0, 0, start.depthMm];
  let fromHook = start.lyingMm;
  let next = 0;
  for (; next < hung.length && hung[next]!.fromHookMm < start.lyingMm; next++) {
    state = withBody(state, hung[next]!, 1, towMmS(start.depthMm), fluid);
  }
  const lying = start.lyingMm > 0 ? [lyingHook(start, state[0])] : [];
  const points: HangPoint[] = [...lying, { fromHookMm: fromHook, xMm: 0, depthMm: start.depthMm }];
  while (fromHook < longest) {
    for (; next < hung.length && hung[next]!.fromHookMm <= fromHook; next++) {
      const carried = fromHook === start.lyingMm ? start.carriedShare : 0;
      state = withBody(state, hung[next]!, carried, towMmS(state[3]), fluid);
    }
    const onHookLength = fromHook < rig.hookLengthMm;
    const diameterMm = onHookLength ? rig.hookLineDiameterMm : rig.mainLineDiameterMm;
    const weight = lineWeightUnMm(diameterMm, fluid);
    const slope = (at: LineState) => lineSlope(at, diameterMm, weight, towMmS, fluid);
    const atStart = slope(state);
    const upTo = Math.min(
      longest,
      fromHook + longestStepMm(state, atStart),
      onHookLength ? rig.hookLengthMm : longest,
      hung[next]?.fromHookMm ?? longest,
    );
    let length = upTo - fromHook;
    let reached = rungeKutta(state, atStart, length, slope);
    if (end.kind === "depth" && reached[3] <= end.depthMm) {
      length *= (state[3] - end.depthMm) / (state[3] - reached[3]);
      reached = rungeKutta(state, atStart, length, slope);
    }
    state = reached;
    fromHook = length < upTo - fromHook ? fromHook + length : upTo;
    points.push({ fromHookMm: fromHook, xMm: state[2], depthMm: state[3] });
    if (end.kind === "depth" && state[3] <= end.depthMm + 1e-3) break;
  }
  return { points, lyingMm: start.lyingMm, pushUn: state[0], weightUn: state[1] };
}

function longestStepMm([push, weight]: LineState, [morePush, moreWeight]: LineState): number {
  const turning = Math.abs(morePush * weight - moreWeight * push);
  const pull2 = push * push + weight * weight;
  return turning * stepMm > turnRad * pull2 ? Math.max(1, (turnRad * pull2) / turning) : stepMm;
}

function withBody(
  [push, weight, x, depth]: LineState,
  body: Hung,
  carriedShare: Share,
  towMmS: number,
  fluid: Fluid,
): LineState {
  const drag = body.drags.reduce((sum, law) => sum + bodyDragGS(law, Math.abs(towMmS), fluid), 0);
  return [push + drag * towMmS, weight + (1 - carriedShare) * body.weightUn, x, depth];
}

/** The hook at the end of line that lies on the bed, on the side to which the water drags it. */
function lyingHook({ lyingMm, depthMm }: LineStart, pushUn: number): HangPoint {
  return { fromHookMm: 0, xMm: pushUn < 0 ? -lyingMm : lyingMm, depthMm };
}

/** Weight of line in water [µN for each millimetre]. */
function lineWeightUnMm(diameterMm: Mm, { densityGMm3 }: Fluid): number {
  const sectionMm2 = (Math.PI / 4) * diameterMm ** 2;
  return sectionMm2 * (lineDensityKgM3 * 1e-6 - densityGMm3) * gravityMmS2;
}

/** Change of pull and place for each millimetre up the line. */
function lineSlope(
  [push, weight, , depth]: LineState,
  diameterMm: Mm,
  lineWeight: number,
  towMmS: (depthMm: Mm) => number,
  fluid: Fluid,
): LineState {
  const pull = Math.sqrt(push * push + weight * weight);
  // Line that holds nothing hangs straight.
  const downX = pull > 0 ? push / pull : 0;
  const down = pull > 0 ? weight / pull : 1;
  const tow = towMmS(depth);
  const alongSpeed = tow * downX;
  const acrossSpeed = tow * down;
  const along = diameterMm > 0 ? axialDragGMmS(diameterMm, Math.abs(alongSpeed), fluid) * alongSpeed : 0;
  const across =
    diameterMm > 0 ? crossFlowDragGMmS(diameterMm, Math.abs(acrossSpeed), fluid) * acrossSpeed : 0;
  return [along * downX + across * down, along * down - across * downX + lineWeight, -downX, -down];
}

/** One step of the classical fourth order, whose slope at the start is known already. */
function rungeKutta(
  state: LineState,
  k1: LineState,
  length: number,
  slope: (at: LineState) => LineState,
): LineState {
  const ahead = (k: LineState, share: Share): LineState => [
    state[0] + share * length * k[0],
    state[1] + share * length * k[1],
    state[2] + share * length * k[2],
    state[3] + share * length * k[3],
  ];
  const k2 = slope(ahead(k1, 0.5));
  const k3 = slope(ahead(k2, 0.5));
  const k4 = slope(ahead(k3, 1));
  const mean = (i: 0 | 1 | 2 | 3) => state[i] + (length / 6) * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
  return [mean(0), mean(1), mean(2), mean(3)];
}
