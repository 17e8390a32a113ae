import { metalIn } from "../../core/tackle/box-notation.ts";
import type { Tub } from "../../core/tackle/shot.ts";
import type { PlanKit } from "../../model/lesson-plan.ts";
import type { FloatEntry, GroupUse, LessonPlan, RigEntry } from "../../model/library.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { SessionSpot, SolvedSession } from "../../model/solved-session.ts";
import { needOf, type ThingNeed } from "../../model/stock.ts";
import { rigNeeds } from "../stock/rig-needs.ts";

/** What lessons ask for besides the rigs that are fished. */
interface LessonNeeds {
  readonly plans: readonly LessonPlan[];
  readonly learners: number;
  /** All rigs and floats of the guide, and its tub. */
  readonly rigs: readonly RigEntry[];
  readonly solved: readonly SolvedRig[];
  readonly floats: readonly FloatEntry[];
  readonly tub: Tub;
}

/** How often a plan's share is wanted. */
const timesOf = (learners: number) => ({ each: learners, two: Math.ceil(learners / 2), group: 1 });

const times = (needs: readonly ThingNeed[], by: number) =>
  needs.map((need) => ({ ...need, count: need.count * by }));

/** Every learner makes up each rig of their spot, on one filling of the reel for each strength of line. */
export function fishedNeeds(spots: readonly SessionSpot[], use: GroupUse): readonly ThingNeed[] {
  return spots.flatMap(({ learners, rigs }) => {
    const making = { hookLengths: use.hookLengths, hookLineM: use.hookLineMm / 1000, mainLineM: 0 };
    const strengths = new Set(rigs.map(({ solved }) => solved.rig.mainLine.strengthG));
    const reels = [...strengths].map((strengthG) =>
      needOf({ kind: "line", strengthG }, use.mainLineMm / 1000),
    );
    return times([...rigs.flatMap(({ solved }) => rigNeeds(solved, making)), ...reels], learners).filter(
      ({ count }) => count > 0,
    );
  });
}

/**
 * What lessons use up, and the rigs and floats for them that are not there from fishing: these are used again, so the
 * lesson that wants most of one decides.
 */
export function lessonNeeds(
  { plans, learners, rigs, solved, floats, tub }: LessonNeeds,
  spots: readonly SessionSpot[],
  fished: readonly ThingNeed[],
  use: GroupUse,
): readonly ThingNeed[] {
  const most = (of: (kit: PlanKit) => readonly string[]) => mostOf(plans, learners, of);
  const fishedRigs = (id: string) =>
    spots.reduce(
      (sum, { rigs: at, learners: heads }) => sum + (at.some(({ entry }) => entry.id === id) ? heads : 0),
      0,
    );
  const making = { hookLengths: 1, hookLineM: use.hookLineMm / 1000, mainLineM: 0 };
  const madeUp = [...most((kit) => kit.rigs)].flatMap(([title, count]) => {
    const entry = rigs.find((rig) => rig.title === title);
    const sums = solved.find(({ rig }) => rig.id === entry?.id);
    return entry && sums ? times(rigNeeds(sums, making), Math.max(0, count - fishedRigs(entry.id))) : [];
  });
  const shown = [...most((kit) => kit.floats)].flatMap(([title, count]) => {
    const float = floats.find((one) => one.float.title === title)?.float;
    if (!float) return [];
    const need = needOf({ kind: "float", id: float.id, title }, 1);
    const there = [...fished, ...madeUp]
      .filter(({ kind, name }) => kind === "float" && name === need.name)
      .reduce((sum, one) => sum + one.count, 0);
    return times([need], Math.max(0, count - there));
  });
  return [...madeUp, ...shown, ...usedUp(plans, learners, spots, tub)].filter(({ count }) => count > 0);
}

/** Shot, hooks and line of all lessons together; the line is that of the first rig. */
function usedUp(
  plans: readonly LessonPlan[],
  learners: number,
  spots: readonly SessionSpot[],
  tub: Tub,
): readonly ThingNeed[] {
  const rig = spots.flatMap(({ rigs }) => rigs)[0]?.solved.rig;
  const metalOf = metalIn(tub);
  const by = timesOf(learners);
  return plans.flatMap(({ kit }) =>
    (["each", "two", "group"] as const).flatMap((share) => {
      const { shot, hooks, hookLineMm = 0, mainLineMm = 0 } = kit[share];
      const needs = [
        ...shot.map(({ size }) => needOf({ kind: "shot", size, metal: metalOf(size) }, 1)),
        ...hooks.map((size) => needOf({ kind: "hook", size }, 1)),
        ...(rig
          ? [
              needOf({ kind: "hook length", strengthG: rig.hookLine.strengthG }, hookLineMm / 1000),
              needOf({ kind: "line", strengthG: rig.mainLine.strengthG }, mainLineMm / 1000),
            ]
          : []),
      ];
      return times(needs, by[share]);
    }),
  );
}

/** The most that one lesson wants of each thing. */
function mostOf(
  plans: readonly LessonPlan[],
  learners: number,
  of: (kit: PlanKit) => readonly string[],
): ReadonlyMap<string, number> {
  const by = timesOf(learners);
  const most = new Map<string, number>();
  for (const { kit } of plans) {
    const wanted = new Map<string, number>();
    for (const share of ["each", "two", "group"] as const) {
      for (const name of of(kit[share])) wanted.set(name, (wanted.get(name) ?? 0) + by[share]);
    }
    for (const [name, count] of wanted) most.set(name, Math.max(count, most.get(name) ?? 0));
  }
  return most;
}

/** What lessons need besides tackle, by name. */
export function toolsOf(plans: readonly LessonPlan[], learners: number): SolvedSession["tools"] {
  return [...mostOf(plans, learners, (kit) => kit.tools)]
    .map(([title, count]) => ({ title, count }))
    .sort((a, b) => (a.title < b.title ? -1 : 1));
}
