import { first } from "../../core/lists.ts";
import type { GroupUse, LessonPlan, RigEntry } from "../../model/library.ts";
import type { Rig } from "../../model/rig.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { LessonRig, SessionReady, SessionSpot } from "../../model/solved-session.ts";
import { mostOf } from "./lesson-shares.ts";

/** A rig as often as it is made up, and how many hook lengths are tied for each. */
interface Making {
  readonly solved: SolvedRig;
  readonly count: number;
  readonly hookLengths: number;
}

const isWhip = ({ outfit }: Rig) => outfit === "whip";

/** What is filled and tied before a session: for what is fished, and for what its lessons want besides. */
export function readyFor(
  spots: readonly SessionSpot[],
  lessonRigs: readonly LessonRig[],
  { plans, learners, rigs }: LessonUse,
  use: GroupUse,
): SessionReady {
  const makings: readonly Making[] = [
    ...spots.flatMap((spot) =>
      spot.rigs.map(({ solved }) => ({ solved, count: spot.learners, hookLengths: use.hookLengths })),
    ),
    ...lessonRigs.map(({ solved, count }) => ({ solved, count, hookLengths: 1 })),
  ].filter(({ count }) => count > 0);
  const whoHas = (whip: boolean) =>
    spots.reduce(
      (sum, spot) => sum + (spot.rigs.some(({ solved }) => isWhip(solved.rig) === whip) ? spot.learners : 0),
      0,
    );
  return {
    reels: reelsFor(spots, { plans, learners, rigs }, use),
    whipLines: counted(
      makings.flatMap(({ solved, count }) => {
        const { whip } = first(solved.depths);
        return whip ? { strengthG: solved.rig.mainLine.strengthG, lineMm: whip.lineMm, count } : [];
      }),
      ({ strengthG, lineMm }) => `${strengthG}|${lineMm}`,
    ),
    hookLengths: counted(
      makings.map(({ solved: { rig }, count, hookLengths }) => ({
        hook: rig.hook.size,
        strengthG: rig.hookLine.strengthG,
        count: count * hookLengths,
      })),
      ({ hook, strengthG }) => `${hook}|${strengthG}`,
    ),
    rods: whoHas(false),
    whips: whoHas(true),
  };
}

/** What lessons want is looked up in. */
interface LessonUse {
  readonly plans: readonly LessonPlan[];
  readonly learners: number;
  readonly rigs: readonly RigEntry[];
}

/**
 * Every learner has one reel for each strength of line that they fish. Lessons use these; the one that wants most of a
 * strength decides how many more there are.
 */
function reelsFor(
  spots: readonly SessionSpot[],
  { plans, learners, rigs }: LessonUse,
  use: GroupUse,
): SessionReady["reels"] {
  const fished = counted(
    spots.flatMap((spot) => {
      const strengths = spot.rigs
        .filter(({ solved }) => !isWhip(solved.rig))
        .map(({ solved }) => solved.rig.mainLine.strengthG);
      return [...new Set(strengths)].map((strengthG) => ({ strengthG, count: spot.learners }));
    }),
    ({ strengthG }) => String(strengthG),
  );
  const rodRigs = rigs.filter(({ rig }) => !isWhip(rig));
  const strengthOf = (title: string) => rodRigs.find((rig) => rig.title === title)?.rig.mainLine.strengthG;
  const taught = mostOf(plans, learners, (kit) =>
    kit.rigs.flatMap((title) => {
      const strengthG = strengthOf(title);
      return strengthG === undefined ? [] : String(strengthG);
    }),
  );
  const more = [...taught].flatMap(([name, most]) => {
    const strengthG = Number(name);
    const there = fished.find((reel) => reel.strengthG === strengthG)?.count ?? 0;
    return most > there ? { strengthG, count: most - there } : [];
  });
  return counted([...fished, ...more], ({ strengthG }) => String(strengthG)).map((reel) => ({
    ...reel,
    lineMm: use.mainLineMm,
  }));
}

/** Those of one kind added up, in the order in which they first come. */
function counted<T extends { readonly count: number }>(list: readonly T[], keyOf: (one: T) => string): T[] {
  const sums = new Map<string, T>();
  for (const one of list) {
    const count = one.count + (sums.get(keyOf(one))?.count ?? 0);
    if (count > 0) sums.set(keyOf(one), { ...one, count });
  }
  return [...sums.values()];
}
