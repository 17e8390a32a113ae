import MiniSearch from "minisearch";
import type { SearchEntry } from "../model/search-entry.ts";
import { giveWay } from "./give-way.ts";

export interface FoundSection {
  readonly entry: SearchEntry;
  /** The part of its text around what was looked for, cut into what to mark and what not. */
  excerpt(): Excerpt;
}

type Excerpt = readonly { readonly text: string; readonly marked: boolean }[];

/** Words that every question has and no answer depends on. */
const smallWords = new Set(
  "a an and are as at be by can could did do does for from get gets go goes got had has have how i if in into is it its just keep keeps me my of on or our s should so some t that the their them then there they this to too up was we were what when where which who whose why will with you your".split(
    " ",
  ),
);

const excerptChars = 150;
/** Fewer than these, and sections that have only some of the words are shown too. */
const enough = 3;

/** Makes the search of a guide, bit by bit, so that a page answers meanwhile: a question in, sections out, the best first. */
export async function makeSearch(
  entries: readonly SearchEntry[],
  synonyms: readonly (readonly string[])[],
): Promise<(question: string) => FoundSection[]> {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const index = new MiniSearch<SearchEntry>({ fields: ["heading", "title", "text"], processTerm: stem });
  for (const entry of entries) {
    index.add(entry);
    await giveWay();
  }
  const groups = synonyms.map((group) => group.map((words) => words.toLowerCase()));

  return (question) => {
    const queries = meaningsOf(question, groups);
    if (queries.length === 0) return [];
    const options = {
      prefix: (term: string) => term.length > 3,
      fuzzy: (term: string) => (term.length > 4 ? 0.2 : false),
      boost: { heading: 5, title: 2 },
      boostDocument: (id: number) => byId.get(id)?.weight ?? 1,
    };
    const strict = index.search({ combineWith: "AND", queries }, options);
    const loose = strict.length >= enough ? [] : index.search({ combineWith: "OR", queries }, options);
    const known = new Set(strict.map(({ id }) => id));
    return [...strict, ...loose.filter(({ id }) => !known.has(id))].flatMap(({ id, terms: matched }) => {
      const entry = byId.get(id);
      return entry ? [{ entry, excerpt: () => excerptOf(entry.text, matched) }] : [];
    });
  };
}

/** Each thing that a question asks for, in all the words that readers have for it. */
function meaningsOf(question: string, groups: readonly (readonly string[])[]) {
  const phrase = (words: string) => ({ combineWith: "AND" as const, queries: words.split(" ") });
  const anyOf = (words: readonly string[]) => ({ combineWith: "OR" as const, queries: words.map(phrase) });
  let rest = ` ${wordsOf(question).join(" ")} `;
  const phrases = groups.flatMap((group) => {
    const said = group.find((words) => words.includes(" ") && rest.includes(` ${words} `));
    if (said === undefined) return [];
    rest = rest.replace(` ${said} `, " ");
    return [anyOf(group)];
  });
  const words = rest.split(" ").filter((word) => word !== "");
  const telling = words.filter((word) => !smallWords.has(word));
  const asked = telling.length > 0 || phrases.length > 0 ? telling : words;
  return [
    ...phrases,
    ...asked.map((word) => anyOf([word, ...groups.filter((group) => group.includes(word)).flat()])),
  ];
}

/** Made once: a browser takes as long to make it ready as to search a page with it. */
const wordSigns = /[\p{L}\d]+/gu;

function wordsOf(text: string): string[] {
  return text.toLowerCase().match(wordSigns) ?? [];
}

/** A word without the ending of its plural, so that one hook and many are one word. */
function stem(term: string): string {
  const word = term.toLowerCase();
  return word.length > 3 ? word.replace(/(?<!s)s$/, "") : word;
}

function excerptOf(text: string, matched: readonly string[]): Excerpt {
  const found = new Set(matched);
  const words = [...text.matchAll(wordSigns)].map(({ 0: word, index }) => ({
    from: index,
    to: index + word.length,
    marked: found.has(stem(word)),
  }));
  const first = words.find(({ marked }) => marked)?.from ?? 0;
  const start = first < excerptChars / 3 ? 0 : text.lastIndexOf(" ", first - excerptChars / 3) + 1;
  const last = text.indexOf(" ", start + excerptChars);
  const end = last < 0 ? text.length : last;
  const parts: { text: string; marked: boolean }[] = [{ text: start > 0 ? "… " : "", marked: false }];
  let at = start;
  for (const { from, to } of words.filter(({ marked, from, to }) => marked && from >= start && to <= end)) {
    parts.push({ text: text.slice(at, from), marked: false }, { text: text.slice(from, to), marked: true });
    at = to;
  }
  parts.push({ text: text.slice(at, end) + (end < text.length ? " …" : ""), marked: false });
  return parts.filter(({ text: one }) => one !== "");
}
