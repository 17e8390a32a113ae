import { allNeeds, evenings } from "../core/course/course.ts";
import type { Min } from "../core/units.ts";
import type { LessonPlan } from "../model/library.ts";
import type { TableKit } from "./table-kit.ts";
import type { TextTable } from "./tables.ts";
import { keyOf } from "./words.ts";

/** A plan, whatever its text says. */
type Plan = Omit<LessonPlan, "body">;

/** Which part of a course a table shows: what leads to a lesson, with it, or all that is left after it. */
interface CoursePart {
  readonly goal: Plan;
  readonly side: "to" | "after";
}

/** The course of a guide, evening by evening, numbered from its first one. */
export function courseTable(
  plans: readonly Plan[],
  { goal, side }: CoursePart,
  roomMin: number,
  { words }: TableKit,
): TextTable {
  const inMinutes = (count: Min) => words("plan.minutes", { count: String(count) });
  const wanted = allNeeds(goal, plans).add(goal.id);
  const first = evenings(
    plans.filter(({ id }) => wanted.has(id)),
    roomMin,
  );
  const rest = plans.filter(({ id }) => !wanted.has(id));
  const shown = side === "to" ? first : evenings(rest, roomMin, wanted);
  const before = side === "to" ? 0 : first.length;
  const titles = new Map(plans.map(({ id, title }) => [id, title]));
  return {
    head: [
      words("plan.table.evening"),
      words("page.lessons.title"),
      words("plan.table.place"),
      words("plan.table.time"),
    ],
    rows: shown.map(({ place, lessons, minutes }, at) => [
      String(before + at + 1),
      lessons
        .map(({ id, minutes: min }) =>
          words("plan.table.lesson", { lesson: titles.get(id) ?? id, time: inMinutes(min) }),
        )
        .join(", "),
      words(`plan.at.${keyOf(place)}`),
      inMinutes(minutes),
    ]),
  };
}
