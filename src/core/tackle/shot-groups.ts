import { entry, first, last } from "../lists.ts";
import type { PlacedShot } from "../patterns/pattern.ts";
import type { Mm } from "../units.ts";

/** A shot as far as counting needs it. */
export type CountedShot = Pick<PlacedShot, "size" | "massG">;

/** A shot as far as grouping needs it. */
export type GroupedShot = CountedShot & Pick<PlacedShot, "role" | "fromHookMm">;

/**
 * Shot that are told as one: a single one, several pinched on together, a run of equal shot at equal gaps, or
 * whatever neighbours had to share a label.
 */
export interface ShotGroup<S extends GroupedShot = GroupedShot> {
  readonly kind: "single" | "together" | "run" | "mixed";
  /** From the hook up. */
  readonly shots: readonly S[];
  /** Gap of a run [mm]; 0 for the others. */
  readonly gapMm: Mm;
}

/** Shot closer than this stand together: about what the largest shot and a finger's grip take up. */
const togetherMm = 20;
/** Gaps that are the same to the centimetre are equal. */
const sameGapMm = 6;
const leastInRun = 3;

/**
 * Groups shot on the line, given from the hook up. A telltale or a dropper in step with the shot above it is told with them, as
 * who pinches them on need not know what each is for; shot with different roles are never told as pinched on together.
 *
 * @param lyingMm what is nearer the hook lies on the bed and is never told with what hangs [mm]
 */
export function groupShot<S extends GroupedShot>(shots: readonly S[], lyingMm = 0): ShotGroup<S>[] {
  const lying = shots.filter((shot) => shot.fromHookMm < lyingMm);
  return [lying, shots.slice(lying.length)].flatMap((side) => joinRuns(joinTogether(side)));
}

function joinTogether<S extends GroupedShot>(shots: readonly S[]): ShotGroup<S>[] {
  const groups: S[][] = [];
  for (const shot of shots) {
    const below = groups.at(-1)?.at(-1);
    const near = below && shot.fromHookMm - below.fromHookMm < togetherMm;
    if (near && shot.role === below.role) last(groups).push(shot);
    else groups.push([shot]);
  }
  return groups.map((group) => ({ kind: group.length > 1 ? "together" : "single", shots: group, gapMm: 0 }));
}

function joinRuns<S extends GroupedShot>(groups: readonly ShotGroup<S>[]): ShotGroup<S>[] {
  const joined: ShotGroup<S>[] = [];
  for (let i = 0; i < groups.length; ) {
    const run = runFrom(groups.slice(i));
    if (run.length >= leastInRun) {
      const gapMm = (last(run).fromHookMm - first(run).fromHookMm) / (run.length - 1);
      joined.push({ kind: "run", shots: run, gapMm });
      i += run.length;
    } else {
      joined.push(entry(groups, i));
      i += 1;
    }
  }
  return joined;
}

/** The longest run of equal single shot at equal gaps at the start. */
function runFrom<S extends GroupedShot>(groups: readonly ShotGroup<S>[]): S[] {
  const run: S[] = [];
  for (const group of groups) {
    if (group.kind !== "single") break;
    const shot = first(group.shots);
    const [lowest, second] = run;
    if (lowest && shot.size !== lowest.size) break;
    if (lowest && second) {
      const gap = second.fromHookMm - lowest.fromHookMm;
      if (Math.abs(shot.fromHookMm - last(run).fromHookMm - gap) > sameGapMm) break;
    }
    run.push(shot);
  }
  return run;
}

/** Two neighbouring groups under one label. */
export function mergeGroups<S extends GroupedShot>(lower: ShotGroup<S>, upper: ShotGroup<S>): ShotGroup<S> {
  return { kind: "mixed", shots: [...lower.shots, ...upper.shots], gapMm: 0 };
}

/** How many of each size, heaviest first. */
export function countSizes(shots: readonly CountedShot[]): { size: string; count: number }[] {
  const counts = new Map<string, { size: string; count: number; massG: number }>();
  for (const { size, massG } of shots) {
    const entry = counts.get(size) ?? { size, count: 0, massG };
    entry.count += 1;
    counts.set(size, entry);
  }
  return [...counts.values()].sort((a, b) => b.massG - a.massG).map(({ size, count }) => ({ size, count }));
}

/** The shot that a list of size names means, each a shot of its size. */
export function shotNamed<S extends CountedShot>(names: readonly string[], shots: readonly S[]): S[] {
  return names.flatMap((name) => shots.find(({ size }) => size === name) ?? []);
}
