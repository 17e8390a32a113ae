import { type Answer, answer } from "../core/finding.ts";
import { type LockGroups, lockFor } from "../core/loading/loading.ts";
import type { PlacedShot } from "../core/patterns/pattern.ts";
import { placePattern } from "../core/patterns/table.ts";
import { ballDiameterMm, pullG, type Shot } from "../core/tackle/shot.ts";
import type { G, Mm } from "../core/units.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedShot } from "../model/solved.ts";

/** A rig's shot: the pattern's down the line, and those that lock the float. */
interface RigShot {
  readonly lineShot: readonly PlacedShot[];
  readonly lock: LockGroups;
}

/** The pattern's shot down the line, and the lock from what is left. */
export function rigShot(rig: Rig, depthMm: Mm, floatToHookMm: Mm, pullForShotG: G): Answer<RigShot> {
  const { float, tub, conditions, pattern } = rig;
  const locked = float.heldByShot;
  const line = placePattern(pattern, {
    depthMm,
    floatToHookMm,
    hookLengthMm: rig.hookLengthMm,
    pullG: pullForShotG,
    linePullMaxG: locked ? (1 - rig.lockShareMin) * pullForShotG : pullForShotG,
    locked,
    tub,
    water: conditions,
  });
  if (!line.ok) return line;
  if (!locked) return answer({ lineShot: line.value, lock: { below: [], above: [] } }, line.findings);
  const lock = lockFor(tub, line.value, pullForShotG, conditions);
  const findings = [...line.findings, ...lock.findings];
  if (!lock.ok) return { ok: false, findings };
  const [below, above] = lock.value.halves!;
  return answer({ lineShot: line.value, lock: { below, above } }, findings);
}

/** The lock's groups in their place at the float. */
export function lockAtFloat(lock: LockGroups, floatToHookMm: Mm, rig: Rig): LockGroups<SolvedShot> {
  const atFloat = (group: readonly Shot[]) =>
    solvedShot(
      group.map((shot) => ({ ...shot, role: "lock", fromHookMm: floatToHookMm })),
      rig,
    );
  return { below: atFloat(lock.below), above: atFloat(lock.above) };
}

/** Shot in their places, with what the drawing and the tables need of them. */
export function solvedShot(placed: readonly PlacedShot[], { conditions }: Rig): readonly SolvedShot[] {
  return placed.map((shot) => ({
    ...shot,
    pullG: pullG(shot.massG, shot.metal, conditions),
    diameterMm: ballDiameterMm(shot.massG, shot.metal),
  }));
}
