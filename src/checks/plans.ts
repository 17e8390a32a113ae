import type { Heading } from "mdast";
import { toString as textOf } from "mdast-util-to-string";
import { allNeeds, evenings, isAtWater } from "../core/course/course.ts";
import { planSections } from "../model/lesson-plan.ts";
import type { LessonPlan, Library } from "../model/library.ts";
import { type Message, message, startOf } from "../model/message.ts";
import { positionOf } from "../model/source-position.ts";
import type { Words } from "../words/words.ts";
import type { ContentCheck } from "./check.ts";

/** Coaches' plans that leave out a section or a lesson, or an order in which the course cannot be held. */
export const plansOfCoaches: ContentCheck = ({ library, words }) => {
  const own = library.plans.filter(({ id }) => !library.lent.has(`plans/${id}`));
  // What can be held at all does not hang on how long an evening is.
  const held = new Set(evenings(library.plans, 1).flatMap((evening) => evening.lessons.map(({ id }) => id)));
  return [
    ...(own.length > 0 ? lessonsWithout(library) : []),
    ...own.flatMap((plan) => sectionsOf(plan, words)),
    ...own.flatMap((plan) => orderOf(plan, held, library)),
  ];
};

function lessonsWithout({ lessons, plans, lent }: Library): readonly Message[] {
  return lessons
    .filter(({ id }) => !lent.has(`lessons/${id}`) && !plans.some((plan) => plan.id === id))
    .map(({ id, path, title }) =>
      message("lesson-without-plan", startOf(path), { title, file: `plans/${id}.md` }),
    );
}

/** Each section once, in order, under the heading that the guide's words have for it. */
function sectionsOf({ path, body }: LessonPlan, words: Words): readonly Message[] {
  const asked = planSections.map((section) => words(`plan.section.${section}`));
  const highest = body.children.filter(
    (node): node is Heading => node.type === "heading" && node.depth === 2,
  );
  const found = highest.map((heading) => textOf(heading));
  const wrong = asked.findIndex((heading, at) => found[at] !== heading);
  const at = wrong < 0 ? asked.length : wrong;
  if (at === found.length && wrong < 0) return [];
  const heading = highest[at];
  const place = { ...startOf(path), ...(heading && positionOf(heading).start) };
  return [
    message("plan-sections", place, { found: found[at] ?? "", wanted: asked[at] ?? "", allowed: asked }),
  ];
}

/** A plan that can never be held, one that comes before what it needs, and one at the water before safety is known. */
function orderOf(
  plan: LessonPlan,
  held: ReadonlySet<string>,
  { plans, lessons }: Library,
): readonly Message[] {
  const place = plan.placeOf(["after"]);
  if (!held.has(plan.id)) {
    const needs = plan.after.filter((id) => !held.has(id));
    return [message("plan-never-held", place, { title: plan.title, needs })];
  }
  const needs = allNeeds(plan, plans);
  const order = lessons.map(({ id }) => id);
  const later = plan.after.filter((id) => order.indexOf(id) > order.indexOf(plan.id));
  const knowsSafety =
    plan.teachesSafety || plans.some(({ id, teachesSafety }) => teachesSafety && needs.has(id));
  return [
    ...later.map((id) => message("plan-before-need", place, { title: plan.title, needs: id })),
    ...(isAtWater(plan.place) && !knowsSafety
      ? [
          message("plan-without-safety", plan.placeOf(["at"]), {
            title: plan.title,
            allowed: plans.filter(({ teachesSafety }) => teachesSafety).map(({ id }) => id),
          }),
        ]
      : []),
  ];
}
