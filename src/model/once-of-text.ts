import type { Root } from "mdast";
import type { MarkdownText } from "./library.ts";

/** Makes what is made of a text alone, and only once of one that stays as it is from one reading to the next. */
export function onceOfText<T>(make: (text: MarkdownText) => T): (text: MarkdownText) => T {
  const known = new WeakMap<Root, { readonly path: string; readonly value: T }>();
  return (text) => {
    const { path, body } = text;
    const before = known.get(body);
    if (before?.path === path) return before.value;
    const value = make(text);
    known.set(body, { path, value });
    return value;
  };
}
