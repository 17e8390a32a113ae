import { first } from "../core/lists.ts";
import { groupShot } from "../core/tackle/shot-groups.ts";
import type { SolvedDepth, SolvedShot } from "../model/solved.ts";

/** Shot of a rig that any others of the same pull can stand for, as they are pinched on together. */
interface PinchedTogether {
  readonly of: "lock" | "bulk" | "anchor";
  readonly shot: readonly SolvedShot[];
}

/**
 * The lock; without one the bulk or the anchor. None where each shot has its own place on the line: there the places are
 * what the rig is about, and fewer, heavier shot would be another rig.
 */
export function pinchedTogether({
  lockShot,
  lineShot,
}: Pick<SolvedDepth, "lockShot" | "lineShot">): PinchedTogether | undefined {
  if (lockShot.length > 0) return { of: "lock", shot: lockShot };
  const groups = groupShot(lineShot);
  for (const of of ["bulk", "anchor"] as const) {
    const own = groups.filter(({ shots }) => first(shots).role === of);
    if (own.length === 1 && first(own).kind !== "run") return { of, shot: first(own).shots };
  }
  return undefined;
}
