import { type Answer, answer, noAnswer } from "../finding.ts";
import { type Metal, metalDensityKgM3, pullShare } from "../tackle/shot.ts";
import type { G, KgM3, Mm, Ms, Share } from "../units.ts";
import { gravityMs2 } from "../units.ts";
import { bodyDragGS, type DragLaw, fluidOf } from "../water/drag.ts";
import { type Water, waterDensityKgM3 } from "../water/water.ts";

/** Something that sinks by itself: a bait, a grain of feed, a ball of groundbait, a bare shot. */
export interface Body {
  readonly massG: G;
  readonly densityKgM3: KgM3;
  /** Its fall as somebody measured it [m/s]; without it the body is taken for a ball. */
  readonly fallMs?: Ms;
}

/** A single weight ready to move through water: the sums of `Body` that do not change on the way. */
export interface Sinker {
  /** Mass with the water that must be moved along with it, half of what it displaces. */
  readonly movedMassG: G;
  /** Weight in water [µN]; below 0 for a body that floats. */
  readonly weightUn: number;
  readonly drag: DragLaw;
}

/** Standard gravity [mm/s²]. */
export const gravityMmS2 = gravityMs2 * 1000;

/** A bare shot as a body. */
export function shotBody(massG: G, metal: Metal): Body {
  return { massG, densityKgM3: metalDensityKgM3[metal] };
}

/**
 * A body in this water. The drag area of a body with a measured fall is the one at which its weight in water just
 * keeps that fall; one that floats in this water is taken for a ball.
 */
export function sinkerOf(body: Body, water: Water): Sinker {
  const weightUn = body.massG * pullShare(body.densityKgM3, water) * gravityMmS2;
  const displacedG = (body.massG * waterDensityKgM3(water)) / body.densityKgM3;
  const volumeMm3 = body.massG / (body.densityKgM3 * 1e-6);
  const drag: DragLaw =
    body.fallMs === undefined || weightUn <= 0
      ? { kind: "ball", diameterMm: Math.cbrt((6 * volumeMm3) / Math.PI) }
      : { kind: "area", areaMm2: areaForFallMm2(weightUn, body.fallMs, water) };
  return { movedMassG: body.massG + displacedG / 2, weightUn, drag };
}

/** Drag area [mm²] that holds a weight in water to a fall: `2W / ρw²`. */
function areaForFallMm2(weightUn: number, fallMs: Ms, water: Water): number {
  return (2 * weightUn) / (fluidOf(water).densityGMm3 * (fallMs * 1000) ** 2);
}

/**
 * Steady fall of a body.
 *
 * @returns speed [m/s]; an error `fall-floats` for a body no denser than the water
 */
export function terminalFallMs(body: Body, water: Water): Answer<number> {
  const sinker = sinkerOf(body, water);
  if (!(sinker.weightUn > 0)) return noAnswer("fall-floats", { densityKgM3: body.densityKgM3 });
  return answer(terminalMmS(sinker, water) / 1000);
}

function terminalMmS({ weightUn, drag }: Sinker, water: Water): number {
  const fluid = fluidOf(water);
  let low = 0;
  let high = 1;
  while (bodyDragGS(drag, high, fluid) * high < weightUn) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (bodyDragGS(drag, middle, fluid) * middle < weightUn) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Time a body takes to sink from rest at the surface.
 *
 * The run-up carries half the displaced water along; the wake's memory (history force) is left out, which makes the
 * run-up of a light ball, a few hundredths of a second, somewhat short.
 *
 * @param fallMm how deep [mm], 0 or more
 * @returns time [s]; an error `fall-floats` for a body no denser than the water
 */
export function fallTimeS(body: Body, fallMm: Mm, water: Water): Answer<number> {
  const sinker = sinkerOf(body, water);
  if (!(sinker.weightUn > 0)) return noAnswer("fall-floats", { densityKgM3: body.densityKgM3 });
  if (!(fallMm > 0)) return answer(0);
  const fluid = fluidOf(water);
  const terminal = terminalMmS(sinker, water);
  const accelerationAt = (v: number) =>
    (sinker.weightUn - bodyDragGS(sinker.drag, v, fluid) * v) / sinker.movedMassG;
  const runUpS = (terminal * sinker.movedMassG) / sinker.weightUn;
  const stepS = runUpS / 50;
  let speed = 0;
  let depth = 0;
  let time = 0;
  // Fourth-order Runge–Kutta for the speed; Simpson's rule with the same middle values for the depth.
  while (time < 12 * runUpS) {
    const a1 = accelerationAt(speed);
    const a2 = accelerationAt(speed + (stepS / 2) * a1);
    const a3 = accelerationAt(speed + (stepS / 2) * a2);
    const a4 = accelerationAt(speed + stepS * a3);
    const next = speed + (stepS / 6) * (a1 + 2 * a2 + 2 * a3 + a4);
    const fallen = stepS * (speed + (stepS / 6) * (a1 + a2 + a3));
    if (depth + fallen >= fallMm) {
      const share = (fallMm - depth) / fallen;
      return answer(time + stepS * timeShare(share, speed, next));
    }
    depth += fallen;
    speed = next;
    time += stepS;
  }
  return answer(time + (fallMm - depth) / terminal);
}

/** Share of a step at which a share of its distance is covered while the speed rises evenly from `from` to `to`. */
function timeShare(distanceShare: Share, from: number, to: number): number {
  const mean = (from + to) / 2;
  const covered = distanceShare * mean;
  return (2 * covered) / (from + Math.sqrt(from * from + 2 * (to - from) * covered));
}
