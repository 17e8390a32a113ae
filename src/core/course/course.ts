import type { Min } from "../units.ts";

/** Where a lesson is held; what is held at the water needs what is to be known of safety first. */
export const lessonPlaces = ["indoors", "on grass", "at still water", "at running water"] as const;
export type LessonPlace = (typeof lessonPlaces)[number];

export const isAtWater = (place: LessonPlace): boolean => place.endsWith("water");

/** A lesson as it takes its place in a course. */
export interface CourseLesson {
  readonly id: string;
  readonly minutes: Min;
  readonly place: LessonPlace;
  /** Ids of the lessons that must have been held. */
  readonly after: readonly string[];
}

/** Lessons that are held at one place, one after the other. */
interface Evening {
  readonly place: LessonPlace;
  readonly lessons: readonly CourseLesson[];
  readonly minutes: Min;
}

/**
 * A course as evenings: each begins with the first lesson, in the order of the course, whose needs have been held, and
 * takes the next ones at the same place for which there is time. A lesson that is longer than an evening has one of its
 * own.
 *
 * @param lessons in the order of the course
 * @param roomMin minutes of an evening that are there for lessons, above 0
 * @param before ids of lessons that have been held already
 * @returns every lesson once, each after what it needs; those that need one another in a circle, or what is not there,
 *   are left out
 */
export function evenings(
  lessons: readonly CourseLesson[],
  roomMin: Min,
  before: Iterable<string> = [],
): readonly Evening[] {
  const held = new Set(before);
  const isReady = ({ id, after }: CourseLesson) => !held.has(id) && after.every((need) => held.has(need));
  const course: Evening[] = [];
  for (let next = lessons.find(isReady); next; next = lessons.find(isReady)) {
    const { place } = next;
    const evening: CourseLesson[] = [];
    let minutes = 0;
    for (let one: CourseLesson | undefined = next; one; ) {
      held.add(one.id);
      evening.push(one);
      minutes += one.minutes;
      one = lessons.find(
        (lesson) => lesson.place === place && isReady(lesson) && minutes + lesson.minutes <= roomMin,
      );
    }
    course.push({ place, lessons: evening, minutes });
  }
  return course;
}

/** All that must have been held before a lesson: its needs, theirs, and so on. */
export function allNeeds(lesson: CourseLesson, lessons: readonly CourseLesson[]): Set<string> {
  const needs = new Set<string>();
  const add = ({ after }: CourseLesson) => {
    for (const id of after) {
      if (needs.has(id)) continue;
      needs.add(id);
      const need = lessons.find((one) => one.id === id);
      if (need) add(need);
    }
  };
  add(lesson);
  return needs;
}
