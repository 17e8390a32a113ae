import type { S } from "../units.ts";
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
import { bodyDragGS } from "../water/drag.ts";
import { bandWidth, column, padding, solveBanded } from "./banded.ts";
import { type Chain, type ChainState, stretchMmPerUn } from "./chain.ts";
import { makeLineDrag } from "./line-drag.ts";

/** Speed [mm/s] by which the last round may still change a node. */
const settledMmS = 5e-2;
/** Share of its length by which a link may be too long. */
const tooLongShare = 1e-9;

/** Moves the state on by a step [s]; false where no balance was found, with the state as it was. */
type Stepper = (state: ChainState, stepS: S) => boolean;

export function makeStepper(chain: Chain): Stepper {
  const { nodes, links, fluid, top } = chain;
  const size = nodes.length + 1;
  const rows = padding + 3 * nodes.length + 1;
  const movedMassG = new Float64Array(size);
  const weightUn = new Float64Array(size);
  movedMassG[0] = top.kind === "sliding" ? top.massG : 0;
  nodes.forEach((node, i) => {
    movedMassG[i + 1] = node.movedMassG;
    weightUn[i + 1] = node.weightUn;
  });
  const dragged = nodes.flatMap(({ drags }, i) => drags.map((drag) => ({ node: i + 1, drag })));
  const stretch = Float64Array.from(links, stretchMmPerUn);
  const band = new Float64Array(bandWidth * rows);
  const right = new Float64Array(rows);
  const vx = new Float64Array(size);
  const vy = new Float64Array(size);
  const tension = new Float64Array(size);
  const taut = new Uint8Array(size);
  // Line that goes taut or slack is found from its neighbours, one link a round.
  const roundsMax = 2 * size + 20;
  const lineDrag = makeLineDrag(chain, band, right);

  /** Adds a drag `force` along (vx, vy) whose size is `perSpeed` times the speed, and its slope. */
  function addDrag(node: number, perSpeed: number, slopePerSpeed: number): void {
    const at = column(node);
    const ux = vx[node]!;
    const uy = vy[node]!;
    const speed2 = ux * ux + uy * uy;
    const more = speed2 > 0 ? slopePerSpeed / speed2 : 0;
    band[bandWidth * at]! += perSpeed + more * ux * ux;
    right[at]! -= perSpeed * ux;
    if (node === 0) return;
    band[bandWidth * (at + 1)]! += perSpeed + more * uy * uy;
    band[bandWidth * (at + 1) + 1]! += more * ux * uy;
    right[at + 1]! -= perSpeed * uy;
  }

  function addInertiaWeightAndDrag(state: ChainState, stepS: S): void {
    for (let i = 0; i < size; i++) {
      const at = column(i);
      const perStep = movedMassG[i]! / stepS;
      band[bandWidth * at]! += perStep;
      right[at]! -= perStep * (vx[i]! - state.vx[i]!);
      if (i === 0) continue;
      band[bandWidth * (at + 1)]! += perStep;
      right[at + 1]! += weightUn[i]! - perStep * (vy[i]! - state.vy[i]!);
    }
    if (top.kind === "sliding") {
      const perSpeed = 0.5 * fluid.densityGMm3 * top.dragAreaMm2 * Math.abs(vx[0]!);
      addDrag(0, perSpeed, perSpeed);
    }
    for (const { node, drag } of dragged) {
      const speed = Math.sqrt(vx[node]! ** 2 + vy[node]! ** 2);
      const perSpeed = bodyDragGS(drag, speed, fluid);
      // Over split shot's range the coefficient hardly changes, so drag per speed rises with the speed itself.
      addDrag(node, perSpeed, 0.9 * perSpeed);
    }
  }

  function addTension(state: ChainState, stepS: S): void {
    for (let i = 1; i < size; i++) {
      const at = column(i);
      const row = at + 2;
      if (!taut[i]) {
        band[bandWidth * row] = 1;
        continue;
      }
      const dx = state.x[i]! + stepS * vx[i]! - state.x[i - 1]! - stepS * vx[i - 1]!;
      const dy = state.y[i]! + stepS * vy[i]! - state.y[i - 1]! - stepS * vy[i - 1]!;
      const length = Math.sqrt(dx * dx + dy * dy);
      const nx = dx / length;
      const ny = dy / length;
      const pull = tension[i]!;
      const above = column(i - 1);
      right[row] = (links[i - 1]!.lengthMm + stretch[i - 1]! * pull - length) / stepS;
      band[bandWidth * row] = -stretch[i - 1]! / stepS;
      right[at]! -= pull * nx;
      right[at + 1]! -= pull * ny;
      right[above]! += pull * nx;
      band[bandWidth * row + 2] = nx;
      band[bandWidth * row + 1] = ny;
      band[bandWidth * row + row - above] = -nx;
      // Turning of a taut link: the tension holds it in its direction.
      const stiff = (stepS * pull) / length;
      const kxx = stiff * ny * ny;
      const kxy = -stiff * nx * ny;
      const kyy = stiff * nx * nx;
      band[bandWidth * at]! += kxx;
      band[bandWidth * (at + 1)]! += kyy;
      band[bandWidth * (at + 1) + 1]! += kxy;
      band[bandWidth * above]! += kxx;
      band[bandWidth * at + at - above]! -= kxx;
      band[bandWidth * (at + 1) + at + 1 - above]! -= kxy;
      if (i === 1) continue;
      right[above + 1]! += pull * ny;
      band[bandWidth * row + row - above - 1] = -ny;
      band[bandWidth * (above + 1)]! += kyy;
      band[bandWidth * (above + 1) + 1]! += kxy;
      band[bandWidth * at + at - above - 1]! -= kxy;
      band[bandWidth * (at + 1) + at - above]! -= kyy;
    }
  }

  /** Leaves an unknown as it is: its row and column are struck out. */
  function hold(index: number): void {
    for (let k = 1; k < bandWidth; k++) {
      band[bandWidth * index + k] = 0;
      if (index + k < rows) band[bandWidth * (index + k) + k] = 0;
    }
    band[bandWidth * index] = 1;
    right[index] = 0;
  }

  function holdFixed(state: ChainState): void {
    if (top.kind === "held") hold(column(0));
    for (let i = 1; i < size; i++) {
      if (!state.onBed[i]) continue;
      hold(column(i));
      hold(column(i) + 1);
    }
  }

  /** Takes up links that came out too long, lets go of those that would push; whether any changed. */
  function sortLinks(state: ChainState, stepS: S): boolean {
    let changed = false;
    for (let i = 1; i < size; i++) {
      if (taut[i]) {
        if (tension[i]! >= 0) continue;
        taut[i] = 0;
        tension[i] = 0;
        changed = true;
      } else {
        const dx = state.x[i]! + stepS * vx[i]! - state.x[i - 1]! - stepS * vx[i - 1]!;
        const dy = state.y[i]! + stepS * vy[i]! - state.y[i - 1]! - stepS * vy[i - 1]!;
        if (Math.sqrt(dx * dx + dy * dy) <= links[i - 1]!.lengthMm * (1 + tooLongShare)) continue;
        taut[i] = 1;
        changed = true;
      }
    }
    return changed;
  }

  function solveRound(state: ChainState, stepS: S): number {
    band.fill(0);
    right.fill(0);
    addInertiaWeightAndDrag(state, stepS);
    lineDrag.add(vx, vy);
    addTension(state, stepS);
    holdFixed(state);
    solveBanded(band, right, rows);
    let change = 0;
    for (let i = 0; i < size; i++) {
      const at = column(i);
      vx[i]! += right[at]!;
      change = Math.max(change, Math.abs(right[at]!));
      if (i === 0) continue;
      vy[i]! += right[at + 1]!;
      change = Math.max(change, Math.abs(right[at + 1]!));
      if (taut[i]) tension[i]! += right[at + 2]!;
    }
    return change;
  }

  const beforeX = new Float64Array(size);
  const beforeY = new Float64Array(size);
  let beforeS = Number.POSITIVE_INFINITY;

  return (state, stepS) => {
    // The first guess goes on as the step before went.
    const onward = stepS / beforeS;
    for (let i = 0; i < size; i++) {
      vx[i] = state.vx[i]! + onward * (state.vx[i]! - beforeX[i]!);
      vy[i] = state.vy[i]! + onward * (state.vy[i]! - beforeY[i]!);
    }
    tension.set(state.tension);
    for (let i = 1; i < size; i++) {
      // The bed may have stopped a node short and left the link above or below it slack.
      const dx = state.x[i]! - state.x[i - 1]!;
      const dy = state.y[i]! - state.y[i - 1]!;
      const drawn = dx * dx + dy * dy > (0.9 * links[i - 1]!.lengthMm) ** 2;
      taut[i] = drawn && tension[i]! > 0 ? 1 : 0;
      if (!taut[i]) tension[i] = 0;
      if (state.onBed[i]) vx[i] = vy[i] = 0;
    }
    lineDrag.prepare(state, stepS);
    sortLinks(state, stepS);
    for (let round = 0; round < roundsMax; round++) {
      const change = solveRound(state, stepS);
      if (!Number.isFinite(change)) return false;
      if (!sortLinks(state, stepS) && change < settledMmS) {
        beforeX.set(state.vx);
        beforeY.set(state.vy);
        beforeS = stepS;
        moveOn(chain, state, stepS, vx, vy, tension);
        return true;
      }
    }
    return false;
  };
}

/** Takes the speeds over, moves every node, and stops what reached the bed. */
function moveOn(
  { bedMm, nodes }: Chain,
  state: ChainState,
  stepS: S,
  vx: Float64Array,
  vy: Float64Array,
  tension: Float64Array,
): void {
  state.vx.set(vx);
  state.vy.set(vy);
  state.tension.set(tension);
  for (let i = 0; i < vx.length; i++) {
    state.x[i]! += stepS * vx[i]!;
    state.y[i]! += stepS * vy[i]!;
  }
  for (let i = 1; i < vx.length; i++) {
    if (state.y[i]! < bedMm) continue;
    state.y[i] = bedMm;
    state.vx[i] = 0;
    state.vy[i] = 0;
    state.onBed[i] = upwardPullUn(state, i) < nodes[i - 1]!.weightUn ? 1 : 0;
  }
}

/** What the links above and below pull a node up with [µN]. */
function upwardPullUn({ x, y, tension }: ChainState, node: number): number {
  const along = (link: number, from: number, to: number) => {
    const length = Math.hypot(x[to]! - x[from]!, y[to]! - y[from]!);
    return length > 0 ? (tension[link]! * (y[from]! - y[to]!)) / length : 0;
  };
  const below = node + 1 < x.length ? along(node + 1, node, node + 1) : 0;
  return along(node, node, node - 1) + below;
}
