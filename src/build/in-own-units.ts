import type { Root } from "mdast";
import type { PlanKit } from "../model/lesson-plan.ts";
import type { LessonPlan, Library } from "../model/library.ts";
import { inMarkdown, type TypedLengths } from "../words/typed-lengths.ts";

/**
 * A library with the lengths typed in its texts in the guide's own units.
 *
 * @param onCards the same as cards tell lengths
 */
export function inOwnUnits(library: Library, lengths: TypedLengths, onCards: TypedLengths): Library {
  const all = (texts: readonly string[]) => texts.map(lengths);
  const prose = <T extends { readonly summary: string; readonly body: Root }>(text: T): T => ({
    ...text,
    summary: lengths(text.summary),
    body: inMarkdown(text.body, lengths),
  });
  const notes = <T extends { readonly notes: Root }>(entry: T): T => ({
    ...entry,
    notes: inMarkdown(entry.notes, lengths),
  });
  const titled = <T extends { readonly title: string }>(named: T): T => ({
    ...named,
    title: lengths(named.title),
  });
  const kit = ({ each, two, group }: LessonPlan["kit"]): LessonPlan["kit"] => {
    const told = (share: PlanKit) => ({ ...share, tools: all(share.tools) });
    return { each: told(each), two: told(two), group: told(group) };
  };
  return {
    ...library,
    guide: {
      ...library.guide,
      rules: Object.fromEntries(
        Object.entries(library.guide.rules).map(([name, rule]) => [name, lengths(rule)]),
      ),
    },
    rigs: library.rigs.map((rig) => ({
      ...prose(rig),
      rig: { ...rig.rig, bait: titled(rig.rig.bait) },
      useWhen: all(rig.useWhen),
      notWhen: all(rig.notWhen),
      changeFirst: all(rig.changeFirst),
      changeFirstOnCards: rig.changeFirst.map(onCards),
    })),
    lessons: library.lessons.map(prose),
    plans: library.plans.map((plan) => ({ ...prose(plan), kit: kit(plan.kit) })),
    pages: library.pages.map(prose),
    floats: library.floats.map(prose),
    baits: library.baits.map((entry) => ({ ...notes(entry), bait: titled(entry.bait) })),
    species: library.species.map((fish) => ({ ...notes(fish), asks: lengths(fish.asks) })),
    knots: library.knots.map((knot) => ({
      ...knot,
      steps: knot.steps.map((step) => ({
        ...step,
        caption: lengths(step.caption),
        labels: step.labels.map((label) => ({ ...label, text: lengths(label.text) })),
      })),
    })),
    glossary: library.glossary.map((term) => ({ ...term, meaning: lengths(term.meaning) })),
    troubles: library.troubles.map((trouble) => ({
      ...trouble,
      causes: all(trouble.causes),
      remedies: all(trouble.remedies),
    })),
  };
}
