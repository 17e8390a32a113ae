import type { LessonPlan, RigEntry } from "../../model/library.ts";
import { mostOf } from "./lesson-shares.ts";
import type { SpotToFish } from "./session-spots.ts";

/** A rig that lessons want made up beside those that are fished. */
export interface LessonRigToMake {
  readonly entry: RigEntry;
  readonly count: number;
  /** Where it is made up for: where it is fished, or else the first spot with such water. */
  readonly spot?: SpotToFish;
}

/**
 * Rigs for the lessons that learners do not have for fishing. They are used again, so the lesson that wants most of one
 * decides.
 */
export function lessonRigsToMake(
  plans: readonly LessonPlan[],
  learners: number,
  spots: readonly SpotToFish[],
  rigs: readonly RigEntry[],
): readonly LessonRigToMake[] {
  return [...mostOf(plans, learners, (kit) => kit.rigs)].flatMap(([title, most]) => {
    const entry = rigs.find((rig) => rig.title === title);
    if (!entry) return [];
    const fished = spots.filter((spot) => spot.rigs.some(({ id }) => id === entry.id));
    const count = most - fished.reduce((sum, spot) => sum + spot.learners, 0);
    const spot = fished[0] ?? spots.find(({ swim }) => swim.water === entry.rig.water);
    return count > 0 ? [{ entry, count, ...(spot && { spot }) }] : [];
  });
}
