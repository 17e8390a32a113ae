import { first, last } from "../../src/core/lists.ts";
import { groupShot } from "../../src/core/tackle/shot-groups.ts";
import type { SolvedDepth, SolvedShot } from "../../src/model/solved.ts";

/** Shot that are put on together: a row of the table. */
export interface ShotRow {
  readonly role: SolvedShot["role"];
  readonly shots: readonly SolvedShot[];
  /** The lowest and the highest of them, from the hook. */
  readonly fromHookMm: number;
  readonly toHookMm: number;
  /** Gap from each to the next of a long run; 0 where they sit together. */
  readonly gapMm: number;
}

/** A run of up to this many is measured out one by one; more are told by their gap. */
const singlesInRun = 5;

/** The shot of a rig from the float down; those that touch share a row, and so does a long run. */
export function shotRows({ lineShot, lockShot }: Pick<SolvedDepth, "lineShot" | "lockShot">): ShotRow[] {
  const onLine = groupShot(lineShot).flatMap(({ kind, shots, gapMm }) =>
    kind === "run" && shots.length <= singlesInRun ? shots.map((one) => row([one])) : [row(shots, gapMm)],
  );
  return [...onLine, ...(lockShot.length > 0 ? [row(lockShot)] : [])].reverse();
}

function row(shots: readonly SolvedShot[], gapMm = 0): ShotRow {
  const [fromHookMm, toHookMm] = [first(shots).fromHookMm, last(shots).fromHookMm];
  return { role: first(shots).role, shots, fromHookMm, toHookMm, gapMm };
}
