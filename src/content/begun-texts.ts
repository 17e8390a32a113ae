import { once } from "../model/kept.ts";
import { type Message, message } from "../model/message.ts";
import { placeAfter } from "../model/source-position.ts";
import { saidAtFirst } from "./start/german.ts";
import type { Source } from "./world.ts";

/** What such a sentence begins with, in any language that files are begun in. */
const asksTo = /\b(?:Say|Sage)\b[^.]*\./g;

/** Sentences that ask the author of a begun file for what is to stand in their place. */
const asked = once(
  () =>
    new Set(
      Object.entries(saidAtFirst)
        .flat()
        .flatMap((text) => text.match(asksTo) ?? []),
    ),
);

/** A warning for each file of the guide's own in which sentences still stand that `new` or `init` began it with, at the first of them. */
export function begunTexts(sources: ReadonlyMap<string, Source>): readonly Message[] {
  return [...sources.values()].flatMap((source) => (source.fromLibrary ? [] : begunText(source)));
}

function begunText({ file, text }: Source): readonly Message[] {
  const found = [...text.matchAll(asksTo)].filter(([sentence]) => asked().has(sentence));
  const [at] = found;
  if (!at) return [];
  const place = { file, ...placeAfter(text, at.index, { line: 1, column: 1 }) };
  return [message("text-as-begun", place, { sentence: at[0], others: found.length - 1 })];
}
