import { metalIn } from "../../core/tackle/box-notation.ts";
import type { Tub } from "../../core/tackle/shot.ts";
import { planShares } from "../../model/lesson-plan.ts";
import type { FloatEntry, GroupUse, LessonPlan } from "../../model/library.ts";
import type { LessonRig, SessionReady, SessionSpot, SolvedSession } from "../../model/solved-session.ts";
import { needOf, type ThingNeed } from "../../model/stock.ts";
import { rigNeeds } from "../stock/rig-needs.ts";
import { mostOf, timesOf } from "./lesson-shares.ts";

/** What lessons ask for besides the rigs that are fished. */
interface LessonNeeds {
  readonly plans: readonly LessonPlan[];
  readonly learners: number;
  /** All floats of the guide, and its tub. */
  readonly floats: readonly FloatEntry[];
  readonly tub: Tub;
}

const times = (needs: readonly ThingNeed[], by: number) =>
  needs.map((need) => ({ ...need, count: need.count * by })).filter(({ count }) => count > 0);

/** Every learner makes up each rig of their spot. */
export function fishedNeeds(spots: readonly SessionSpot[], use: GroupUse): readonly ThingNeed[] {
  const making = { hookLengths: use.hookLengths, hookLineM: use.hookLineMm / 1000, mainLineM: 0 };
  return spots.flatMap(({ learners, rigs }) =>
    times(
      rigs.flatMap(({ solved }) => rigNeeds(solved, making)),
      learners,
    ),
  );
}

/** Main line for reels, and for whips, which have none. */
export function lineNeeds({ reels, whipLines }: SessionReady): readonly ThingNeed[] {
  return [...reels, ...whipLines].map(({ strengthG, count, lineMm }) =>
    needOf({ kind: "line", strengthG }, (count * lineMm) / 1000),
  );
}

/** What lessons use up, and the rigs and floats for them that are not there from fishing. */
export function lessonNeeds(
  { plans, learners, floats, tub }: LessonNeeds,
  lessonRigs: readonly LessonRig[],
  spots: readonly SessionSpot[],
  fished: readonly ThingNeed[],
  use: GroupUse,
): readonly ThingNeed[] {
  const making = { hookLengths: 1, hookLineM: use.hookLineMm / 1000, mainLineM: 0 };
  const madeUp = lessonRigs.flatMap(({ solved, count }) => times(rigNeeds(solved, making), count));
  const shown = [...mostOf(plans, learners, (kit) => kit.floats)].flatMap(([title, count]) => {
    const float = floats.find((one) => one.float.title === title)?.float;
    if (!float) return [];
    const need = needOf({ kind: "float", id: float.id, title }, 1);
    const there = [...fished, ...madeUp]
      .filter(({ kind, name }) => kind === "float" && name === need.name)
      .reduce((sum, one) => sum + one.count, 0);
    return times([need], Math.max(0, count - there));
  });
  return [...madeUp, ...shown, ...usedUp(plans, learners, spots, tub)];
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
    planShares.flatMap((share) => {
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

/** What lessons need besides tackle, by name. */
export function toolsOf(plans: readonly LessonPlan[], learners: number): SolvedSession["tools"] {
  return [...mostOf(plans, learners, (kit) => kit.tools)]
    .map(([title, count]) => ({ title, count }))
    .sort((a, b) => (a.title < b.title ? -1 : 1));
}
