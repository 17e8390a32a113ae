import type { MessageValues } from "../model/message-table.ts";
import type { WordedMessage } from "./worded-message.ts";

type PlanCode = Extract<keyof MessageValues, "lesson-without-plan" | `plan-${string}`>;

/** What is said of coaches' plans. */
export const planWords: { readonly [C in PlanCode]: (v: MessageValues[C]) => WordedMessage } = {
  "lesson-without-plan": (v) => ({
    reason: `the lesson "${v.title}" has no plan for its coach`,
    hint: `write ${v.file}`,
  }),
  "plan-sections": (v) => ({
    reason:
      v.wanted === ""
        ? `"${v.found}" is no section of a plan`
        : v.found === ""
          ? `the plan has no section "${v.wanted}"`
          : `the section "${v.found}" stands where "${v.wanted}" belongs`,
    hint: `its headings are, in this order: ${v.allowed.map((heading) => `## ${heading}`).join(", ")}`,
  }),
  "plan-never-held": (v) => ({
    reason: `the lesson "${v.title}" can never be held: it needs ${v.needs.join(", ")}`,
    hint: "take out of `after` what has no plan, and what needs this lesson itself",
  }),
  "plan-before-need": (v) => ({
    reason: `the lesson "${v.title}" stands in the course before ${v.needs}, which it needs`,
    hint: "change the `order` of one of the lessons, or take it out of `after`",
  }),
  "plan-without-safety": (v) => ({
    reason: `the lesson "${v.title}" is held at the water, and no lesson before it teaches safety there`,
    hint:
      v.allowed.length === 0
        ? "write `teaches-safety: true` in the plan of the lesson that does"
        : `put one of these into \`after\`: ${v.allowed.join(", ")}`,
  }),
};
