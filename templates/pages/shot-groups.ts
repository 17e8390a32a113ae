import { countSizes, groupShot } from "../../src/drawing/shot-groups.ts";
import type { SolvedShot } from "../../src/solve/solved.ts";

/** Shot that are put on together: a row of the table. */
export interface ShotRow {
  readonly role: SolvedShot["role"];
  readonly load: string;
  /** The lowest of them, from the hook. */
  readonly fromHookMm: number;
}

/** The shot of a rig from the float down; those that touch share a row, each of a run has its own. */
export function shotRows(shot: readonly SolvedShot[]): ShotRow[] {
  const lock = shot.filter(({ role }) => role === "lock");
  const onLine = groupShot(shot.filter(({ role }) => role !== "lock")).flatMap(({ kind, shots }) =>
    kind === "run" ? shots.map((one) => [one]) : [shots],
  );
  return [...onLine, ...(lock.length > 0 ? [lock] : [])].reverse().map((shots) => ({
    role: shots[0]!.role,
    load: loadText(shots),
    fromHookMm: shots[0]!.fromHookMm,
  }));
}

/** `2 AAA + 3 No 8`, the notation of the trade, with spaces at which no line breaks. */
export function loadText(shots: readonly SolvedShot[]): string {
  return countSizes(shots)
    .map(({ size, count }) => `${count} ${size}`.replaceAll(" ", "\u00a0"))
    .join(" + ");
}
