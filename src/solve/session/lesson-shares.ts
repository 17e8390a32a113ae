import { type PlanKit, planShares } from "../../model/lesson-plan.ts";
import type { LessonPlan } from "../../model/library.ts";

/** How often each share of a plan is wanted. */
export const timesOf = (learners: number) => ({ each: learners, two: Math.ceil(learners / 2), group: 1 });

/** What one lesson wants of each thing. */
function wantedOf(
  { kit }: LessonPlan,
  learners: number,
  of: (kit: PlanKit) => readonly string[],
): ReadonlyMap<string, number> {
  const by = timesOf(learners);
  const wanted = new Map<string, number>();
  for (const share of planShares) {
    for (const name of of(kit[share])) wanted.set(name, (wanted.get(name) ?? 0) + by[share]);
  }
  return wanted;
}

/** The most that one lesson wants of each thing: what is used again is brought once. */
export function mostOf(
  plans: readonly LessonPlan[],
  learners: number,
  of: (kit: PlanKit) => readonly string[],
): ReadonlyMap<string, number> {
  const most = new Map<string, number>();
  for (const plan of plans) {
    for (const [name, count] of wantedOf(plan, learners, of))
      most.set(name, Math.max(count, most.get(name) ?? 0));
  }
  return most;
}
