import { findingTable, type ValueKind } from "../../core/finding-table.ts";
import type { WordKey } from "../../words/word-key.ts";
import { gapPattern } from "../../words/words.ts";

/** The groups that a file of words has at its top. */
type WordGroup = WordKey extends infer Key ? (Key extends `${infer Group}.${string}` ? Group : never) : never;

/** Where the words of each group are read; those that most readers see come first. */
const wordGroups: Readonly<Record<WordGroup, string>> = {
  page: "Pages of the site.",
  card: "Cards to print and to read.",
  drawing: "Drawings, films and charts, and what is told of them to readers who cannot see them.",
  state: "What a float tells of its bait.",
  water: "Kinds of water.",
  metal: "Metals of shot.",
  table: "Heads and cells of tables.",
  told: "What a rig's page and card say of its depth and its tip.",
  rule: "The rule on lead shot.",
  handout: "Handouts, the booklet, and sheets at their true size.",
  printable: "Names of what can be printed.",
  plan: "Coaches' plans of lessons.",
  session: "Days by the water with a group.",
  swim: "Swims, and days there.",
  choosing: "Which rig suits a swim.",
  stock: "What there is, and what to buy.",
  shelf: "Shelves of shops.",
  label: "Labels of packed rigs.",
  sheet: "What dotdown sheet prints.",
  figures: "Figures with their units.",
  "capacity-basis": "How it is known what a float carries.",
  "basis-sign": "Signs beside figures without a source.",
  reason: "What is wrong with a rig, or worth knowing of it.",
};

/** What is said of a group by its path, where it is one of the uppermost. */
export function groupNote(path: string): string | undefined {
  const notes: Readonly<Record<string, string>> = wordGroups;
  return Object.hasOwn(notes, path) ? notes[path] : undefined;
}

/** What the name of a gap with a name in it says already. */
type ToldKind = Exclude<ValueKind, "text">;

const kinds: Readonly<Record<ToldKind, string>> = {
  shot: "shot, such as 2 AAA",
  number: "a number",
  length: "a length with its unit",
  depth: "a depth with its unit",
  tip: "how much of a tip shows, with its unit",
  mass: "a weight with its unit",
  "stated mass": "a weight with its unit",
  density: "a density with its unit",
  time: "a time with its unit",
  share: "a share in per cent",
  pace: "a pace with its unit",
  temperature: "a temperature with its unit",
};

/** What a gap's name ends in where the figure in it comes with that unit. */
const endings: readonly (readonly [RegExp, ValueKind])[] = [
  [/Mm$/, "length"],
  [/KgM3$/, "density"],
  [/G$/, "mass"],
  [/[a-z]S$/, "time"],
];

const findings: Readonly<Record<string, { readonly values: Readonly<Record<string, ValueKind>> }>> =
  findingTable;

/**
 * What stands in the gaps of a sentence, where their names do not say it: figures that come with their unit, and numbers on
 * which its words depend.
 *
 * @param key path of the sentence in a file of words
 * @param sentence how it reads in English
 * @param plurals the forms that a language has, by their names in Unicode CLDR, where it is known which language it is
 */
export function gapNotes(key: string, sentence: string, plurals?: readonly string[]): readonly string[] {
  const values = findings[key.replace(/^reason\./, "")]?.values ?? {};
  const gaps = new Map([...sentence.matchAll(gapPattern)].map(([, gap = "", texts]) => [gap, texts]));
  return [...gaps].flatMap(([gap, texts]) => {
    if (texts !== undefined)
      return [`{${gap}}: a number; a form for each of ${plurals?.join(", ") ?? "the language's plurals"}`];
    const kind = values[gap] ?? endings.find(([ending]) => ending.test(gap))?.[1];
    return kind === undefined || kind === "text" ? [] : [`{${gap}}: ${kinds[kind]}`];
  });
}

/** The groups at the top of a file of words, those that most readers see first. */
export const groupsInOrder: readonly string[] = Object.keys(wordGroups);
