import type { View } from "../../templates/pages/view.ts";
import { digestOf } from "../model/digest.ts";
import { inMemory } from "../model/kept.ts";
import type { Library } from "../model/library.ts";
import type { Page } from "./page.ts";
import type { TextFrom } from "./text-from.ts";

/** A part of the library that a page may show. */
type Part = Exclude<keyof Library, "guide" | "words">;

/** Stands for each part of the library, found once. */
export function partsFrom(library: Library, from: TextFrom): (part: Part) => string {
  const found = inMemory(Number.POSITIVE_INFINITY);
  return (part) => found("part", part, () => digestOf(withTexts(library[part], from)));
}

/**
 * A page that shows these parts of the library and no others, so that all that its body is made from is known: it is given nothing
 * else of the library, nor what is printed. Texts in the parts count with their live figures and pictures; the sums of rigs
 * follow from the rigs.
 */
export function showing(parts: readonly Part[], from: (part: Part) => string, page: Page): Page {
  return {
    ...page,
    from: () => parts.map(from),
    body: (view) => page.body(withParts(parts, view)),
  };
}

/** Data with what texts are made from in the places of the texts. */
const withTexts = (data: unknown, from: TextFrom): string =>
  JSON.stringify(data ?? null, (_, value) =>
    isText(value) ? from({ id: "", path: "", title: "", summary: "", body: value })() : value,
  );

const isText = (value: unknown): value is Parameters<TextFrom>[0]["body"] =>
  typeof value === "object" && value !== null && "type" in value && value.type === "root";

/** What is in none of the parts cannot be asked for. */
function withParts(parts: readonly Part[], view: View): View {
  const may: readonly string[] = [...parts, "guide", "words"];
  const others = Object.keys(view.library).filter((key) => !may.includes(key));
  const library = withNone(view.library, others);
  return withNone({ ...view, library }, parts.includes("rigs") ? ["printables"] : ["printables", "solved"]);
}

function withNone<T extends object>(whole: T, names: readonly string[]): T {
  const none = names.map((name) => [
    name,
    {
      enumerable: true,
      get: () => {
        throw new Error(`a page shows ${name}, which is not among the parts that it is said to show`);
      },
    },
  ]);
  return Object.defineProperties({ ...whole }, Object.fromEntries(none));
}
