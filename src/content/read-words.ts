import * as z from "zod";
import { type Keep, makeAnew } from "../model/kept.ts";
import { type Message, message, type Staged } from "../model/message.ts";
import type { OwnFont } from "../model/own-font.ts";
import type { WordTree } from "../model/word-tree.ts";
import { makeWords } from "../words/words.ts";
import { filledIn, languageOf, wordsOver, wordTreeOver } from "./layers.ts";
import { checkOwnWords } from "./own-words.ts";
import { Reading } from "./reading.ts";
import { isLanguageTag } from "./schema/guide-schema.ts";
import type { Source } from "./world.ts";

const wordTreeSchema = z.record(z.string(), z.unknown()).superRefine((tree, context) => {
  const look = (value: unknown, path: readonly string[]): void => {
    if (typeof value === "string") return;
    if (typeof value !== "object" || value === null || Array.isArray(value))
      context.addIssue({ code: "invalid_type", expected: "string", path: [...path], input: value });
    else for (const [key, below] of Object.entries(value)) look(below, [...path, key]);
  };
  look(tree, []);
}) as unknown as z.ZodType<WordTree>;

/** A file with nothing but comments is one without words yet. */
const wordsSchema: z.ZodType<WordTree> = z.preprocess((typed) => filledIn(typed ?? {}), wordTreeSchema);

/**
 * The fixed words of the guide in its language; what it lacks there stands in English, and is told. They are read first:
 * the reasons of everything else are worded with them.
 */
export function readWords(
  sources: ReadonlyMap<string, Source>,
  font?: OwnFont,
  keep: Keep = makeAnew,
): Staged<WordTree | undefined> {
  const reading = new Reading(sources, makeWords({}), font, keep);
  const language = languageOf(sources);
  const [first = "en"] = language.split("-");
  const { english, own } = wordsIn(language, reading);
  if (!english) return { value: undefined, messages: reading.messages };
  // What is no language is told of guide.yaml.
  const told =
    first === "en" || !isLanguageTag(language) ? [] : missingWords(own, english, language, sources);
  reading.messages.push(...otherLanguages(["en", first, language], language, sources));
  return { value: wordTreeOver(own, english), messages: [...reading.messages, ...told] };
}

/** The words in English, and those in a language (a BCP 47 tag), its country's over its own, as the files have them. */
export function wordsIn(
  language: string,
  reading: Reading,
): { readonly english: WordTree | undefined; readonly own: WordTree } {
  const { sources } = reading;
  const need = "every fixed word on pages and cards stands there";
  const wordsOf = (tag: string): WordTree | undefined => {
    const path = `words/${tag}.yaml`;
    const read = reading.layered(path, wordsSchema, need, wordsOver);
    if (read && !sources.get(path)?.fromLibrary) checkOwnWords(read, reading);
    return read?.value;
  };
  const [first = "en"] = language.split("-");
  const files = [...new Set([first, language])].filter(
    (tag) => tag !== "en" && sources.has(`words/${tag}.yaml`),
  );
  const english = wordsOf("en");
  return {
    english,
    own: files.reduce<WordTree>((under, tag) => wordTreeOver(wordsOf(tag) ?? {}, under), {}),
  };
}

/** Languages besides English that there are words of, where the tool brings a guide with it. */
const shippedWords: readonly string[] = ["de"];

/** A warning for each of the guide's own files of words in a language that it is not in. */
function otherLanguages(
  taken: readonly string[],
  language: string,
  sources: ReadonlyMap<string, Source>,
): readonly Message[] {
  const borrows = [...sources.values()].some(({ fromLibrary, under }) => fromLibrary || under);
  // What is shipped has words for guides in other languages, too.
  const read = [...taken, ...(borrows ? [] : shippedWords)];
  return [...sources.values()].flatMap(({ path, file, fromLibrary }) => {
    const tag = /^words\/(.*)\.yaml$/s.exec(path)?.[1];
    if (tag === undefined || fromLibrary || read.includes(tag)) return [];
    const reason = `the file is not read: the guide is in "${language}"`;
    const said = isLanguageTag(tag) ? `say \`language: ${tag}\` in guide.yaml, or ` : "";
    const hint = `${said}call it ${language}.yaml`;
    return [message("file-not-read", { file }, { reason, hint })];
  });
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
