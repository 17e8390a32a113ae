import { createRequire } from "node:module";

/** The part of the odex library that is used here; its own sources do not pass this project's type checks. */
interface OdeSolver {
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  denseOutput: boolean;
  solve(
    slope: (x: number, y: number[]) => number[],
    from: number,
    start: readonly number[],
    to: number,
    onStep?: (step: number, x0: number, x1: number, y: readonly number[]) => boolean | undefined,
  ): { y: number[]; nEval: number; outcome: number };
}

const { Solver } = createRequire(import.meta.url)("odex") as { Solver: new (size: number) => OdeSolver };

/** A solver for a system of this many equations (Hairer & Wanner's ODEX). */
export function odeSolver(size: number, tolerance: number): OdeSolver {
  const solver = new Solver(size);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  solver.maxSteps = 1_000_000;
  return solver;
}
