/**
 * One step of the chain in time.
 *
 * The step is implicit (backward Euler) in everything: the speeds at its end are those at which weight, drag, inertia
 * and tension balance with the line no longer than it is. Written as a search for the least of
 * `½m|v − v₀|² + h·(drag potential) − h·(weight · v)` over all `v` that leave no link too long, it is a convex problem,
 * since drag only grows with speed and `|xᵢ − xᵢ₋₁| ≤ L` is a convex set. So each step has exactly one answer, however
 * light the line between heavy shot, and the energy of the chain cannot grow whatever the step:
 * a tension pulls along the link's end direction, in which the link did not lengthen.
 *
 * Newton's method solves speeds and tensions together, in one symmetric band of five places; a link whose tension comes
 * out below 0 goes slack, one that comes out too long is taken up. Projecting positions onto the constraints one after
 * the other, or weighted by mass alone, converges for light line between heavy shot to far slower falls: the
 * metric must hold the drag.
 */
import type { S } from "../units.ts";
import { bodyDragGS, type Fluid } from "../water/drag.ts";
import { clearRow, solveBanded } from "./banded.ts";
import type { ChainState } from "./chain.ts";
import { addLineDrag, takeDirections } from "./line-drag.ts";
import { type StepSystem, stepSystem, type TriedLink, type TriedPoint } from "./step-system.ts";
import { addTension, sortLinks, takeTension } from "./tension.ts";

/** Speed [mm/s] by which one more round may still change a node. */
const settledMmS = 5e-3;
/** So much worse than in the step before a round may come out before that is noticed. */
const worse = 1.25;

/** Moves the state on by a step [s]; false where no balance was found, with the state as it was. */
type Stepper = (stepS: S) => boolean;

export function makeStepper(state: ChainState): Stepper {
  const system = stepSystem(state);
  // Line that goes taut or slack is found from its neighbours, one link a round.
  const roundsMax = 2 * system.points.length + 20;
  let beforeS = Number.POSITIVE_INFINITY;
  // What a round changes, as a share of what the round before it changed; the next step's rounds will go much the same.
  let rate = 1;

  return (stepS) => {
    firstGuess(system, stepS / beforeS);
    takeDirections(system.links, stepS, state.chain.fluid);
    sortLinks(system.links, stepS);
    rate *= worse;
    let lastMmS = 0;
    for (let round = 0; round < roundsMax; round++) {
      const changeMmS = solveRound(system, state, stepS);
      if (!Number.isFinite(changeMmS)) return false;
      if (lastMmS > 0) rate = changeMmS / lastMmS;
      rate = Math.min(1, rate);
      const isSorted = !sortLinks(system.links, stepS);
      // Only rounds with the same links taut tell of the next one.
      lastMmS = isSorted ? changeMmS : 0;
      if (isSorted && rate * changeMmS < settledMmS) {
        beforeS = stepS;
        moveOn(system, state.chain.bedMm, stepS);
        return true;
      }
    }
    return false;
  };
}

/** The chain goes on as the step before went, `onward` times as far; what lies on the bed stays there. */
function firstGuess({ points, links }: StepSystem, onward: number): void {
  for (const tried of points) {
    const { vx, vy, before } = tried.point;
    tried.vx = vx + onward * (vx - before.vx);
    tried.vy = vy + onward * (vy - before.vy);
  }
  for (const link of links) {
    takeTension(link);
    const { hung, lower } = link;
    lower.rowX.held = hung.onBed;
    lower.rowY.held = hung.onBed;
    if (hung.onBed) lower.vx = lower.vy = 0;
  }
}

/** One round of Newton's method: the largest change of a speed [mm/s]. */
function solveRound(
  { top, points, links, rows, backwards }: StepSystem,
  { chain }: ChainState,
  stepS: S,
): number {
  const { fluid } = chain;
  for (const row of rows) clearRow(row);
  for (const tried of points) addInertiaAndWeight(tried, stepS);
  if (chain.top.kind === "sliding") {
    const perSpeed = 0.5 * fluid.densityGMm3 * chain.top.dragAreaMm2 * Math.abs(top.vx);
    addDrag(top, perSpeed, perSpeed);
  }
  for (const tried of points) addBodyDrag(tried, fluid);
  for (const link of links) addLineDrag(link, fluid);
  for (const link of links) addTension(link, stepS);
  solveBanded(rows, backwards);
  let change = 0;
  for (const tried of points) {
    tried.vx += tried.rowX.right;
    tried.vy += tried.rowY.right;
    change = Math.max(change, Math.abs(tried.rowX.right), Math.abs(tried.rowY.right));
  }
  for (const link of links) if (link.taut) link.tensionUn += link.row.right;
  return change;
}

function addInertiaAndWeight(
  { point, movedMassG, weightUn, vx, vy, rowX, rowY }: TriedPoint,
  stepS: S,
): void {
  const perStep = movedMassG / stepS;
  rowX.diagonal += perStep;
  rowX.right -= perStep * (vx - point.vx);
  rowY.diagonal += perStep;
  rowY.right += weightUn - perStep * (vy - point.vy);
}

function addBodyDrag(tried: TriedPoint, fluid: Fluid): void {
  for (const drag of tried.drags) {
    const perSpeed = bodyDragGS(drag, Math.sqrt(tried.vx ** 2 + tried.vy ** 2), fluid);
    // Over split shot's range the coefficient hardly changes, so drag per speed rises with the speed itself.
    addDrag(tried, perSpeed, 0.9 * perSpeed);
  }
}

/** Adds a drag against the speed whose size is `perSpeed` times the speed, and its slope. */
function addDrag({ vx, vy, rowX, rowY }: TriedPoint, perSpeed: number, slopePerSpeed: number): void {
  const speed2 = vx * vx + vy * vy;
  const more = speed2 > 0 ? slopePerSpeed / speed2 : 0;
  rowX.diagonal += perSpeed + more * vx * vx;
  rowX.right -= perSpeed * vx;
  rowY.diagonal += perSpeed + more * vy * vy;
  rowY.left1 += more * vx * vy;
  rowY.right -= perSpeed * vy;
}

/** Takes the speeds over, moves every node, and stops what reached the bed. */
function moveOn({ points, links }: StepSystem, bedMm: number, stepS: S): void {
  for (const { point, vx, vy } of points) {
    const { before } = point;
    before.x = point.x;
    before.y = point.y;
    before.vx = point.vx;
    before.vy = point.vy;
    point.vx = vx;
    point.vy = vy;
    point.x += stepS * vx;
    point.y += stepS * vy;
  }
  for (const { hung, tensionUn } of links) hung.tensionUn = tensionUn;
  for (const link of links) {
    const { hung, next } = link;
    const { point } = hung;
    if (point.y < bedMm) continue;
    point.y = bedMm;
    point.vx = 0;
    point.vy = 0;
    const upwardPullUn = liftUn(link) - (next === undefined ? 0 : liftUn(next));
    hung.onBed = upwardPullUn < hung.node.weightUn;
  }
}

/** What a link pulls its lower end up with, and its upper end down [µN]. */
function liftUn(link: TriedLink): number {
  const upper = link.upper.point;
  const lower = link.lower.point;
  const length = Math.hypot(upper.x - lower.x, upper.y - lower.y);
  return length > 0 ? (link.tensionUn * (lower.y - upper.y)) / length : 0;
}
