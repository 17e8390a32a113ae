import type { LessonPlace } from "../core/course/course.ts";
import type { CountedShot } from "../core/tackle/shot-groups.ts";
import type { Min, Mm } from "../core/units.ts";

/** What a coach's plan tells, in the order in which its text does; the first four take time. */
export const planSections = ["begin", "show", "drills", "questions", "faults", "paces", "safety"] as const;
export const planParts = [
  "begin",
  "show",
  "drills",
  "questions",
] as const satisfies readonly (typeof planSections)[number][];

/** Whom each share of what a lesson needs is for. */
export const planShares = ["each", "two", "group"] as const;

/** What a lesson needs for one of its shares, by the names that readers know it by. */
export interface PlanKit {
  readonly rigs: readonly string[];
  readonly floats: readonly string[];
  readonly shot: readonly CountedShot[];
  readonly hooks: readonly number[];
  readonly baits: readonly string[];
  readonly mainLineMm?: Mm;
  readonly hookLineMm?: Mm;
  readonly tools: readonly string[];
}

/** What a plan says of a lesson besides its text. */
export interface PlanFacts {
  readonly minutes: Min;
  readonly parts: readonly { readonly part: (typeof planParts)[number]; readonly minutes: Min }[];
  readonly place: LessonPlace;
  /** How many learners at most for one coach. */
  readonly learners: number;
  /** Ids of the lessons that must have been held. */
  readonly after: readonly string[];
  /** Whether learners know after it what there is to know of safety by the water. */
  readonly teachesSafety: boolean;
  readonly kit: Readonly<Record<(typeof planShares)[number], PlanKit>>;
}

/** What lessons need besides tackle. */
export interface Tool {
  readonly name: string;
  readonly title: string;
}
