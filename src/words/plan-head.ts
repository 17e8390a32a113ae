import type { List } from "mdast";
import { type PlanKit, planShares } from "../model/lesson-plan.ts";
import type { Lesson, LessonPlan } from "../model/library.ts";
import { severalText } from "./stock-text.ts";
import type { TableKit } from "./table-kit.ts";
import { bullets, paragraph, strong } from "./text-nodes.ts";
import { keyOf } from "./words.ts";

/** What a plan says before its text: time, place, group, what comes before, and what is needed. */
export function planHead(plan: LessonPlan, lessons: readonly Lesson[], kit: TableKit): List {
  const { words } = kit;
  const minutes = (count: number) => words("plan.minutes", { count: String(count) });
  const parts = plan.parts.map(({ part, minutes: min }) =>
    words("plan.part", { part: words(`plan.section.${part}`), time: minutes(min) }),
  );
  const before = lessons.filter(({ id }) => plan.after.includes(id)).map(({ title }) => title);
  const rows = [
    ["time", words("plan.time-of", { time: minutes(plan.minutes), parts: parts.join(", ") })],
    ["place", words(`plan.at.${keyOf(plan.place)}`)],
    ["learners", words("plan.up-to", { count: String(plan.learners) })],
    ["after", before.length > 0 ? before.join(", ") : words("plan.after-none")],
    ...planShares.map((share) => [share, thingsOf(plan.kit[share], kit).join(", ")] as const),
  ] as const;
  return bullets(
    rows
      .filter(([, text]) => text !== "")
      .map(([row, text]) => paragraph(strong(words(`plan.head.${row}`)), ` ${text}`)),
  );
}

/** What is needed, each thing once with its number. */
function thingsOf(need: PlanKit, { words, figures }: TableKit): string[] {
  const { rigs, floats, shot, hooks, baits, mainLineMm, hookLineMm, tools } = need;
  const several = (thing: string, count: number) => severalText(thing, count, words);
  return [
    ...rigs.map((rig) => words("plan.kit.rig", { rig })),
    ...counted(floats, several),
    ...(shot.length > 0 ? [words("plan.kit.shot", { shot: figures.shot(shot) })] : []),
    ...counted(
      hooks.map((size) => words("plan.kit.hook", { size: String(size) })),
      several,
    ),
    ...(mainLineMm === undefined
      ? []
      : [words("plan.kit.main-line", { length: figures.shortDepth(mainLineMm) })]),
    ...(hookLineMm === undefined
      ? []
      : [words("plan.kit.hook-line", { length: figures.shortDepth(hookLineMm) })]),
    ...baits,
    ...counted(tools, several),
  ];
}

function counted(names: readonly string[], several: (thing: string, count: number) => string): string[] {
  return [...new Set(names)].map((name) => several(name, names.filter((one) => one === name).length));
}
