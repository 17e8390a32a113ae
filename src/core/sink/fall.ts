import type { Mm, S, Share } from "../units.ts";
import { type Chain, type ChainPoint, type ChainState, chainEnergy, restingChain } from "./chain.ts";
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
  /** Called after every step. */
  readonly onStep?: (state: ChainState, timeS: S, energy: () => number) => void;
}

/** The chain at one moment. */
export interface ChainShape {
  readonly timeS: S;
  readonly xMm: readonly Mm[];
  readonly yMm: readonly Mm[];
}

/** Times at which the last node passed each depth, with the chain's shape then; fewer where it never reached them all. */
interface Fall {
  readonly passes: readonly ChainShape[];
  /** The shape at even times from the first, as `evenMoments` keeps them. */
  readonly moments: readonly ChainShape[];
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
  const state = restingChain(chain, options.drawnOut);
  const { points, lowest } = state;
  const step = makeStepper(state);
  const lineMm = chain.nodes.reduce((sum, { link }) => sum + link.lengthMm, 0);
  const errorMm = options.stepErrorShare * lineMm;
  const energy = () => chainEnergy(state);
  const passes: ChainShape[] = [];
  const even = evenMoments(points);
  let timeS = 0;
  let stepS = firstStepS;
  let steps = 0;
  while (passes.length < depthsMm.length && timeS < longestS && steps < stepsMax) {
    stepS = Math.min(stepS, untilBedS(state, errorMm));
    while (!step(stepS)) {
      stepS /= 4;
      if (stepS < shortestStepS) return { passes, moments: even.kept(), steps };
    }
    steps++;
    for (
      let depth = depthsMm[passes.length];
      depth !== undefined && lowest.y >= depth;
      depth = depthsMm[passes.length]
    ) {
      const share = (depth - lowest.before.y) / (lowest.y - lowest.before.y);
      passes.push(shapeBetween(points, share, timeS + share * stepS));
    }
    even.take(timeS, stepS);
    timeS += stepS;
    options.onStep?.(state, timeS, energy);
    const wanted = 0.9 * Math.sqrt(errorMm / ((stepS * changeMmS(points)) / 2 + 1e-12));
    stepS *= Math.min(1.5, Math.max(0.3, wanted));
  }
  return { passes, moments: even.kept(), steps };
}

/** Time between the first moments that are kept, and the most that are. */
const firstGapS = 1 / 8;
const momentsMost = 48;

/**
 * Keeps a chain's shape at even times: where there come to be more than `momentsMost`, every other one goes and the time
 * between them doubles. So there is half of that at least, however long the fall takes, and times of two falls meet.
 */
function evenMoments(points: readonly ChainPoint[]) {
  let moments: ChainShape[] = [];
  let gapS = firstGapS;
  return {
    kept: () => moments,
    /** Takes those within the step that was just done. */
    take(fromS: S, stepS: S): void {
      for (let dueS = moments.length * gapS; dueS <= fromS + stepS; dueS = moments.length * gapS) {
        moments.push(shapeBetween(points, (dueS - fromS) / stepS, dueS));
        if (moments.length <= momentsMost) continue;
        moments = moments.filter((_, i) => i % 2 === 0);
        gapS *= 2;
      }
    },
  };
}

/** The largest change of a speed in the last step [mm/s]. */
function changeMmS(points: readonly ChainPoint[]): number {
  let change = 0;
  for (const { vx, vy, before } of points) {
    change = Math.max(change, Math.abs(vx - before.vx), Math.abs(vy - before.vy));
  }
  return change;
}

/**
 * Time after which the first node that sinks is at the bed, or past it by the error allowed: the bed stops a node at the
 * end of a step, so a longer one would stop it late, and what hangs on it would fall on for as long.
 */
function untilBedS({ chain, hung }: ChainState, errorMm: Mm): number {
  let soonestS = Number.POSITIVE_INFINITY;
  for (const { point, onBed } of hung) {
    if (onBed || point.vy <= 0) continue;
    soonestS = Math.min(soonestS, (chain.bedMm - point.y + errorMm) / point.vy);
  }
  return soonestS;
}

/** The chain at a share of the last step. */
function shapeBetween(points: readonly ChainPoint[], share: Share, timeS: S): ChainShape {
  return {
    timeS,
    xMm: points.map(({ x, before }) => before.x + share * (x - before.x)),
    yMm: points.map(({ y, before }) => before.y + share * (y - before.y)),
  };
}
