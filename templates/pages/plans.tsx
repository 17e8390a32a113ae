import { printPaths, sitePaths } from "../../src/model/addresses.ts";
import type { LessonPlan } from "../../src/model/library.ts";
import { PageHead } from "./page-head.tsx";
import { printableAt, type View } from "./view.ts";

/** The plans of a guide, in the order of its lessons. */
export function PlanListPage({ view }: { view: View }) {
  const { say, href, library } = view;
  return (
    <>
      <PageHead title={say("plans.title")} lead={say("plans.lead")} />
      <ol class="course">
        {library.plans.map((plan) => (
          <li>
            <a href={href(sitePaths.plan(plan.id))}>{plan.title}</a>
            <p>{plan.summary}</p>
          </li>
        ))}
      </ol>
    </>
  );
}

/** How one lesson is taught. */
export function PlanPage({ view, title, plan }: { view: View; title: string; plan: LessonPlan }) {
  const { say, href } = view;
  const sheet = printableAt(view, printPaths.plan(plan.id));
  return (
    <article class="prose">
      <PageHead title={title} lead={plan.summary} />
      <ul>
        <li>
          <a href={href(sitePaths.lesson(plan.id))}>{say("plans.of-lesson", { lesson: plan.title })}</a>
        </li>
        {sheet && (
          <li>
            <a href={href(sheet.path)}>{say("plans.to-print")}</a>
          </li>
        )}
      </ul>
      {view.markdown(plan)}
    </article>
  );
}
