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

/** The upper end of a line, and what it pulls there [µN]. */
export interface LineTop {
  readonly end: HangPoint;
  /** Along the flow, on the float; below 0 where the rig holds the float back. */
  readonly pushUn: number;
  readonly weightUn: number;
}

/** The line from hook to float. */
export interface HangingLine extends LineTop {
  readonly points: readonly HangPoint[];
  /** How much of it lies on the bed. */
  readonly lyingMm: Mm;
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
  /** Where that ends, for those who look for a line and have no use for its points. */
  topOf(start: LineStart, towMmS: (depthMm: Mm) => number, end: LineEnd): LineTop;
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
    lineUp: (start, towMmS, end) => {
      const points: HangPoint[] = [];
      const top = followUp(rig, hung, fluid, start, towMmS, end, points);
      return { ...top, points, lyingMm: start.lyingMm };
    },
    topOf: (start, towMmS, end) => followUp(rig, hung, fluid, start, towMmS, end),
  };
}

/** A line whose hook hangs at a depth. */
export const hangingFrom = (hookDepthMm: Mm): LineStart => ({
  depthMm: hookDepthMm,
  lyingMm: 0,
  carriedShare: 0,
});

/** Pull on the line and place along it, or how they change for each millimetre up the line. Filled anew at every step. */
interface LineState {
  pushUn: number;
  weightUn: number;
  xMm: Mm;
  depthMm: Mm;
}

const lineState = (depthMm: Mm): LineState => ({ pushUn: 0, weightUn: 0, xMm: 0, depthMm });

/** A piece of line of one thickness in the water that runs past it. */
interface TowedLine {
  readonly diameterMm: Mm;
  /** In water, for each millimetre. */
  readonly weightUnMm: number;
  readonly towMmS: (depthMm: Mm) => number;
  readonly fluid: Fluid;
}

/** @param points filled, where somebody asks for them */
function followUp(
  rig: FlowRig,
  hung: readonly Hung[],
  fluid: Fluid,
  start: LineStart,
  towMmS: (depthMm: Mm) => number,
  end: LineEnd,
  points?: HangPoint[],
): LineTop {
  const longest = end.kind === "length" ? end.lengthMm : end.longestMm;
  const towed = (diameterMm: Mm): TowedLine => {
    return { diameterMm, weightUnMm: lineWeightUnMm(diameterMm, fluid), towMmS, fluid };
  };
  const [hookLine, mainLine] = [towed(rig.hookLineDiameterMm), towed(rig.mainLineDiameterMm)];
  const state = lineState(start.depthMm);
  const reached = lineState(start.depthMm);
  const atStart = lineState(0);
  let fromHook = start.lyingMm;
  let next = 0;
  for (; next < hung.length && hung[next]!.fromHookMm < start.lyingMm; next++) {
    addBody(state, hung[next]!, 1, towMmS(start.depthMm), fluid);
  }
  if (start.lyingMm > 0) points?.push(lyingHook(start, state.pushUn));
  points?.push({ fromHookMm: fromHook, xMm: 0, depthMm: start.depthMm });
  while (fromHook < longest) {
    for (; next < hung.length && hung[next]!.fromHookMm <= fromHook; next++) {
      const carried = fromHook === start.lyingMm ? start.carriedShare : 0;
      addBody(state, hung[next]!, carried, towMmS(state.depthMm), fluid);
    }
    const onHookLength = fromHook < rig.hookLengthMm;
    const line = onHookLength ? hookLine : mainLine;
    takeSlope(atStart, line, state);
    const upTo = Math.min(
      longest,
      fromHook + longestStepMm(state, atStart),
      onHookLength ? rig.hookLengthMm : longest,
      hung[next]?.fromHookMm ?? longest,
    );
    let length = upTo - fromHook;
    rungeKutta(reached, state, atStart, length, line);
    if (end.kind === "depth" && reached.depthMm <= end.depthMm) {
      length *= (state.depthMm - end.depthMm) / (state.depthMm - reached.depthMm);
      rungeKutta(reached, state, atStart, length, line);
    }
    take(state, reached);
    fromHook = length < upTo - fromHook ? fromHook + length : upTo;
    points?.push({ fromHookMm: fromHook, xMm: state.xMm, depthMm: state.depthMm });
    if (end.kind === "depth" && state.depthMm <= end.depthMm + 1e-3) break;
  }
  const { xMm, depthMm, pushUn, weightUn } = state;
  return { end: { fromHookMm: fromHook, xMm, depthMm }, pushUn, weightUn };
}

function take(at: LineState, from: LineState): void {
  at.pushUn = from.pushUn;
  at.weightUn = from.weightUn;
  at.xMm = from.xMm;
  at.depthMm = from.depthMm;
}

function longestStepMm(at: LineState, slope: LineState): number {
  const turning = Math.abs(slope.pushUn * at.weightUn - slope.weightUn * at.pushUn);
  const pull2 = at.pushUn * at.pushUn + at.weightUn * at.weightUn;
  return turning * stepMm > turnRad * pull2 ? Math.max(1, (turnRad * pull2) / turning) : stepMm;
}

function addBody(at: LineState, body: Hung, carriedShare: Share, towMmS: number, fluid: Fluid): void {
  let drag = 0;
  for (const law of body.drags) drag += bodyDragGS(law, Math.abs(towMmS), fluid);
  at.pushUn += drag * towMmS;
  at.weightUn += (1 - carriedShare) * body.weightUn;
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

/** Change of pull and place for each millimetre up the line, where it is pulled so at a depth. */
function takeSlope(slope: LineState, line: TowedLine, { pushUn, weightUn, depthMm }: LineState): void {
  const { diameterMm, fluid } = line;
  const pull = Math.sqrt(pushUn * pushUn + weightUn * weightUn);
  // Line that holds nothing hangs straight.
  const downX = pull > 0 ? pushUn / pull : 0;
  const down = pull > 0 ? weightUn / pull : 1;
  const tow = line.towMmS(depthMm);
  const alongSpeed = tow * downX;
  const acrossSpeed = tow * down;
  const along = diameterMm > 0 ? axialDragGMmS(diameterMm, Math.abs(alongSpeed), fluid) * alongSpeed : 0;
  const across =
    diameterMm > 0 ? crossFlowDragGMmS(diameterMm, Math.abs(acrossSpeed), fluid) * acrossSpeed : 0;
  slope.pushUn = along * downX + across * down;
  slope.weightUn = along * down - across * downX + line.weightUnMm;
  slope.xMm = -downX;
  slope.depthMm = -down;
}

/** A place ahead, and the slopes at the middle and the end of a step: made anew at every step they would take as long as the sums. */
const [ahead, k2, k3, k4] = [lineState(0), lineState(0), lineState(0), lineState(0)];

/** One step of the classical fourth order, whose slope at the start is known already. */
function rungeKutta(
  reached: LineState,
  from: LineState,
  k1: LineState,
  length: number,
  line: TowedLine,
): void {
  takeSlopeAhead(k2, from, k1, 0.5 * length, line);
  takeSlopeAhead(k3, from, k2, 0.5 * length, line);
  takeSlopeAhead(k4, from, k3, length, line);
  const sixth = length / 6;
  reached.pushUn = from.pushUn + sixth * (k1.pushUn + 2 * k2.pushUn + 2 * k3.pushUn + k4.pushUn);
  reached.weightUn = from.weightUn + sixth * (k1.weightUn + 2 * k2.weightUn + 2 * k3.weightUn + k4.weightUn);
  reached.xMm = from.xMm + sixth * (k1.xMm + 2 * k2.xMm + 2 * k3.xMm + k4.xMm);
  reached.depthMm = from.depthMm + sixth * (k1.depthMm + 2 * k2.depthMm + 2 * k3.depthMm + k4.depthMm);
}

/** The slope where a length on from a place would lead. */
function takeSlopeAhead(
  slope: LineState,
  from: LineState,
  by: LineState,
  length: number,
  line: TowedLine,
): void {
  ahead.pushUn = from.pushUn + length * by.pushUn;
  ahead.weightUn = from.weightUn + length * by.weightUn;
  ahead.depthMm = from.depthMm + length * by.depthMm;
  takeSlope(slope, line, ahead);
}
