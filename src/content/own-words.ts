import { once } from "../model/kept.ts";
import type { Message, Place } from "../model/message.ts";
import type { WordTree } from "../model/word-tree.ts";
import { wordGaps } from "../words/word-gaps.ts";
import { gapPattern } from "../words/words.ts";
import type { Read, Reading } from "./reading.ts";

/** A group of the words that the tool asks for; a sentence is the list of its gaps. */
interface Asked {
  [key: string]: readonly string[] | Asked;
}

const isGroup = (below: readonly string[] | Asked | undefined): below is Asked =>
  typeof below === "object" && !Array.isArray(below);

/** The keys of `wordGaps` as groups within each other. */
const asked = once((): Asked => {
  const tree: Asked = {};
  for (const [key, gaps] of Object.entries(wordGaps)) {
    const steps = key.split(".");
    const last = steps.pop() ?? "";
    steps.reduce(groupIn, tree)[last] = gaps;
  }
  return tree;
});

function groupIn(tree: Asked, step: string): Asked {
  const below = tree[step];
  const group = isGroup(below) ? below : {};
  tree[step] = group;
  return group;
}

/** Plurals that languages have. Source: Unicode CLDR, plural rules. */
export const plurals: readonly string[] = ["zero", "one", "two", "few", "many", "other"];

/** What of a sentence's braces is no gap, or a plural that some number would have no words in. */
function wrongBraces(sentence: string): string | undefined {
  if (!/[{}]/.test(sentence)) return undefined;
  if (/[{}]/.test(sentence.replace(gapPattern, "")))
    return "a brace in it belongs to no gap; write gaps like {depth}, and plurals like {count, plural, one {# rig} other {# rigs}}";
  for (const [, gap = "", texts = ""] of sentence.matchAll(gapPattern)) {
    if (texts === "") continue;
    const names = [...texts.matchAll(/(\w+) \{/g)].map(([, name = ""]) => name);
    const odd = names.find((name) => !plurals.includes(name));
    if (odd !== undefined) return `no language has a plural "${odd}"; there are ${plurals.join(", ")}`;
    if (!names.includes("other")) return `{${gap}} has no words for all other numbers; add other {…}`;
  }
  return undefined;
}

/** What would be printed with its signs: tags of HTML, and a gap's name in brackets of another kind. */
function printedAsTyped(sentence: string, gaps: readonly string[]): string | undefined {
  const tag = /<\/?[a-z][^<>]*>/i.exec(sentence)?.[0];
  if (tag !== undefined) return `${tag} would stand there with its signs; words have no HTML`;
  const gap = gaps.find(
    (name) => !sentence.includes(`{${name}`) && new RegExp(`[(<[]${name}[)>\\]]`).test(sentence),
  );
  return gap === undefined ? undefined : `its gap stands between braces; write {${gap}}`;
}

/** Words that the tool never asks for, and gaps that it never fills: each is an error at its place. */
export function checkOwnWords(read: Read<WordTree>, reading: Reading): void {
  const before = known.get(read.value);
  if (before) {
    reading.messages.push(...before);
    return;
  }
  const told = reading.messages.length;
  lookThrough(read, reading);
  known.set(read.value, reading.messages.slice(told));
}

/** What there is to tell of words that have not changed since. */
const known = new WeakMap<WordTree, readonly Message[]>();

function lookThrough({ value, yaml }: Read<WordTree>, reading: Reading): void {
  const look = (words: WordTree, group: Asked, path: readonly string[]): void => {
    for (const [key, written] of Object.entries(words)) {
      const there = Object.hasOwn(group, key) ? group[key] : undefined;
      const here = [...path, key];
      if (there === undefined) {
        reading.error(yaml.placeOfKey(path, key), "unknown-key", { key, allowed: Object.keys(group) });
      } else if (isGroup(there)) {
        if (typeof written === "object") look(written, there, here);
        else wrongForm(key, "a group of keys", written, yaml.placeOf(here));
      } else if (typeof written === "object") {
        wrongForm(key, "a text", "a group of keys", yaml.placeOf(here));
      } else checkGaps(written, there as readonly string[], here);
    }
  };
  const wrongForm = (key: string, expected: string, found: string, place: Place) =>
    reading.error(place, "wrong-type", { key, expected, found });
  const wrong = (problem: string, path: readonly string[]) =>
    reading.error(yaml.placeOf(path), "not-valid", { key: String(path.at(-1)), problem });
  const checkGaps = (sentence: string, gaps: readonly string[], path: readonly string[]) => {
    const problem = wrongBraces(sentence) ?? printedAsTyped(sentence, gaps);
    if (problem !== undefined) wrong(problem, path);
    for (const [, gap = ""] of sentence.matchAll(gapPattern)) {
      if (gaps.includes(gap)) continue;
      const allowed = gaps.map((name) => `{${name}}`);
      reading.error(yaml.placeOf(path), "unknown-name", {
        what: "gap in this sentence called",
        found: `{${gap}}`,
        allowed,
      });
    }
  };
  look(value, asked(), []);
}
