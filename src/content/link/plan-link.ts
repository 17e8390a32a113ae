import type { z } from "zod";
import { byId } from "../../core/lists.ts";
import { parseLoad } from "../../core/tackle/load-notation.ts";
import { type PlanKit, planParts, planShares, type Tool } from "../../model/lesson-plan.ts";
import type { LessonPlan, Library } from "../../model/library.ts";
import { startOf } from "../../model/message.ts";
import type { Reading, ReadProse } from "../reading.ts";
import type { planSchema } from "../schema/plan-schema.ts";

type Typed = z.output<typeof planSchema>;

/** What the names of a plan are looked up in. */
interface Shelves extends Pick<Library, "lessons" | "rigs" | "floats" | "baits" | "hooks"> {
  readonly scale: Library["scales"][number];
  readonly tools: readonly Tool[];
}

/** A coach's plan with its names looked up; undefined where there is no lesson of its name. */
export function linkPlan(read: ReadProse<Typed>, shelves: Shelves, reading: Reading): LessonPlan | undefined {
  const { id, source, value, yaml, body } = read;
  const lessons = byId(shelves.lessons);
  const lesson = reading.lookUp(lessons, id, "lesson of this plan's name", startOf(source.file));
  const after = value.after.flatMap(
    (name, at) => reading.lookUp(lessons, name, "lesson", yaml.placeOf(["after", at]))?.id ?? [],
  );
  const kit = Object.fromEntries(
    planShares.map((share) => [share, linkShare(value.kit[share], ["kit", share], read, shelves, reading)]),
  ) as LessonPlan["kit"];
  if (!lesson) return undefined;
  return {
    id,
    path: source.file,
    title: lesson.title,
    summary: value.aim,
    body,
    placeOf: yaml.placeOf,
    minutes: value.minutes,
    parts: planParts.map((part) => ({ part, minutes: value.parts[part] })),
    place: value.at,
    learners: value.learners,
    after,
    teachesSafety: value["teaches-safety"],
    kit,
  };
}

function linkShare(
  typed: Typed["kit"]["each"],
  path: readonly string[],
  { yaml }: ReadProse<Typed>,
  { rigs, floats, hooks, baits, scale, tools }: Shelves,
  reading: Reading,
): PlanKit {
  const all = <T>(
    key: "rigs" | "floats" | "hooks" | "baits" | "tools",
    shelf: ReadonlyMap<string, T>,
    what: string,
  ) =>
    typed[key].flatMap(
      (name, at) => reading.lookUp(shelf, String(name), what, yaml.placeOf([...path, key, at])) ?? [],
    );
  const load = typed.shot === undefined ? undefined : parseLoad(typed.shot, scale);
  if (load && !load.ok) {
    const allowed = scale.sizes.map(({ name }) => `1 ${name}`);
    const values = { what: "load of shot", found: typed.shot ?? "", allowed };
    reading.error(yaml.placeOf([...path, "shot"]), "unknown-name", values);
  }
  return {
    rigs: all("rigs", byId(rigs), "rig").map(({ title }) => title),
    floats: all("floats", byId(floats), "float").map(({ title }) => title),
    shot: load?.ok
      ? load.value.parts.flatMap(({ size, massG, count }) =>
          size === undefined ? [] : Array.from({ length: count }, () => ({ size, massG })),
        )
      : [],
    hooks: all("hooks", new Map(hooks.map((hook) => [String(hook.size), hook])), "hook size").map(
      ({ size }) => size,
    ),
    baits: all("baits", byId(baits.map(({ bait }) => bait)), "bait").map(({ title }) => title),
    ...(typed["main-line"] !== undefined && { mainLineMm: typed["main-line"] }),
    ...(typed["hook-line"] !== undefined && { hookLineMm: typed["hook-line"] }),
    tools: all("tools", new Map(tools.map((tool) => [tool.name, tool])), "tool of tools.yaml").map(
      ({ title }) => title,
    ),
  };
}
