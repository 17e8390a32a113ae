import type { Mm, S, Share } from "../units.ts";
import { type Chain, type ChainState, chainEnergy, restingChain } from "./chain.ts";
import { makeStepper } from "./step.ts";

const firstStepS = 1e-3;
const shortestStepS = 1e-7;
/** Steps after which a chain that still has not got there never will. */
const stepsMax = 50_000;

interface FallOptions {
  /** 1 for a line laid out straight, 0 for a heap. */
  readonly drawnOut: number;
  /** Position error allowed in a single step, as a share of the line's length. */
  readonly stepErrorShare: Share;
  /** Start from here instead of from rest at the surface. */
  readonly start?: ChainState;
  /** Called after every step. */
  readonly onStep?: (state: ChainState, timeS: S, energy: () => number) => void;
}

/** The chain at one moment. */
export interface ChainShape {
  readonly timeS: S;
  readonly xMm: readonly Mm[];
  readonly yMm: readonly Mm[];
}

/** Times at which the last node passed each depth, with the chain's shape then; undefined for depths never reached. */
interface Fall {
  readonly passes: readonly (ChainShape | undefined)[];
  readonly steps: number;
}

/**
 * Lets a chain fall until its last node has passed every depth.
 *
 * The step is chosen so that the position error of each step, `½h|Δv|` for backward Euler, stays near a set
 * share of the line's length. The errors of one sign add up to no more than the change of speed they come from. No
 * step carries a node further past the bed than that.
 *
 * @param depthsMm rising depths of the last node [mm]
 * @param longestS time after which to give up [s]
 */
export function letFall(chain: Chain, depthsMm: readonly Mm[], longestS: S, options: FallOptions): Fall {
  const state = options.start ?? restingChain(chain, options.drawnOut);
  const step = makeStepper(chain);
  const lineMm = chain.links.reduce((sum, link) => sum + link.lengthMm, 0);
  const errorMm = options.stepErrorShare * lineMm;
  const last = chain.nodes.length;
  const energy = () => chainEnergy(chain, state);
  const passes: ChainShape[] = [];
  const before = { x: state.x.slice(), y: state.y.slice(), vx: state.vx.slice(), vy: state.vy.slice() };
  let timeS = 0;
  let stepS = firstStepS;
  let steps = 0;
  while (passes.length < depthsMm.length && timeS < longestS && steps < stepsMax) {
    before.x.set(state.x);
    before.y.set(state.y);
    before.vx.set(state.vx);
    before.vy.set(state.vy);
    stepS = Math.min(stepS, untilBedS(chain, state, errorMm));
    while (!step(state, stepS)) {
      stepS /= 4;
      if (stepS < shortestStepS) return { passes, steps };
    }
    steps++;
    for (
      let depth = depthsMm[passes.length];
      depth !== undefined && state.y[last]! >= depth;
      depth = depthsMm[passes.length]
    ) {
      const share = (depth - before.y[last]!) / (state.y[last]! - before.y[last]!);
      passes.push(shapeBetween(before, state, share, timeS + share * stepS));
    }
    timeS += stepS;
    options.onStep?.(state, timeS, energy);
    let changeMmS = 0;
    for (let i = 0; i <= last; i++) {
      changeMmS = Math.max(
        changeMmS,
        Math.abs(state.vx[i]! - before.vx[i]!),
        Math.abs(state.vy[i]! - before.vy[i]!),
      );
    }
    const wanted = 0.9 * Math.sqrt(errorMm / ((stepS * changeMmS) / 2 + 1e-12));
    stepS *= Math.min(1.5, Math.max(0.3, wanted));
  }
  return { passes, steps };
}

/**
 * Time after which the first node that sinks is at the bed, or past it by the error allowed: the bed stops a node at the
 * end of a step, so a longer one would stop it late, and what hangs on it would fall on for as long.
 */
function untilBedS({ bedMm }: Chain, { y, vy, onBed }: ChainState, errorMm: Mm): number {
  let soonestS = Number.POSITIVE_INFINITY;
  for (let i = 1; i < y.length; i++) {
    if (onBed[i] || vy[i]! <= 0) continue;
    soonestS = Math.min(soonestS, (bedMm - y[i]! + errorMm) / vy[i]!);
  }
  return soonestS;
}

function shapeBetween(
  before: { readonly x: Float64Array; readonly y: Float64Array },
  after: ChainState,
  share: Share,
  timeS: S,
): ChainShape {
  const mix = (a: Float64Array, b: Float64Array) =>
    Array.from(a, (value, i) => value + share * (b[i]! - value));
  return { timeS, xMm: mix(before.x, after.x), yMm: mix(before.y, after.y) };
}
