import { z } from "zod";
import { type Message, message, type Staged } from "../model/message.ts";
import type { WordTree } from "../model/word-tree.ts";
import { makeWords } from "../words/words.ts";
import { languageOf, wordsOver, wordTreeOver } from "./layers.ts";
import { Reading } from "./reading.ts";
import type { Source } from "./world.ts";

const wordTreeSchema: z.ZodType<WordTree> = z.lazy(() =>
  z.record(z.string(), z.union([z.string(), wordTreeSchema])),
);

/** A file with nothing but comments is one without words yet. */
const wordsSchema: z.ZodType<WordTree> = z.preprocess((typed) => typed ?? {}, wordTreeSchema);

/**
 * The fixed words of the guide in its language; what it lacks there stands in English, and is told. They are read first:
 * the reasons of everything else are worded with them.
 */
export function readWords(sources: ReadonlyMap<string, Source>): Staged<WordTree | undefined> {
  const reading = new Reading(sources, makeWords({}));
  const need = "every fixed word on pages and cards stands there";
  const wordsOf = (language: string) =>
    reading.layered(`words/${language}.yaml`, wordsSchema, need, wordsOver)?.value;
  const english = wordsOf("en");
  const language = languageOf(sources);
  const [first = "en"] = language.split("-");
  const files = [...new Set([first, language])].filter(
    (tag) => tag !== "en" && sources.has(`words/${tag}.yaml`),
  );
  const own = files.reduce<WordTree>((under, tag) => wordTreeOver(wordsOf(tag) ?? {}, under), {});
  if (!english) return { value: undefined, messages: reading.messages };
  const told = first === "en" ? [] : missingWords(own, english, language, sources);
  return { value: wordTreeOver(own, english), messages: [...reading.messages, ...told] };
}

function missingWords(
  own: WordTree,
  english: WordTree,
  language: string,
  sources: ReadonlyMap<string, Source>,
): readonly Message[] {
  const all = keysOf(english);
  const there = new Set(keysOf(own));
  const missing = all.filter((key) => !there.has(key));
  if (missing.length === 0) return [];
  const source = sources.get(`words/${language}.yaml`) ?? sources.get("guide.yaml");
  const file = source?.file ?? "guide.yaml";
  return [message("words-in-english", { file }, { language, missing, all: all.length })];
}

function keysOf(tree: WordTree, path = ""): readonly string[] {
  return Object.entries(tree).flatMap(([key, value]) =>
    typeof value === "string" ? [`${path}${key}`] : keysOf(value, `${path}${key}.`),
  );
}
