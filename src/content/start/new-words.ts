import { isMap, isPair, type Node, type Pair, parseDocument } from "yaml";
import type { WordTree } from "../../model/word-tree.ts";
import { plurals } from "../own-words.ts";
import { gapNotes, groupNote, groupsInOrder } from "../schema/word-notes.ts";
import { keyOf } from "../yaml-places.ts";
import { commentLines } from "./commented.ts";
import { schemaLine } from "./new-file.ts";

/** A file of words to fill in. */
interface WordsToFillIn {
  readonly text: string;
  /** Words that were added. */
  readonly added: number;
  /** Groups to which no lines can be added, as they stand between braces. */
  readonly closed: readonly string[];
}

/** Lines that are put into a text at an offset, with so many words. */
interface Insert {
  readonly at: number;
  readonly lines: readonly string[];
  readonly added: number;
}

/**
 * A file of words with every key that it lacks, each below the text that stands there for want of another. What is in the
 * file stays as it is.
 *
 * @param before the file as it is, without a fault; undefined where there is none yet
 * @param language a BCP 47 tag
 * @param standing all words, as they stand without the file
 */
export function wordsToFillIn(
  before: string | undefined,
  language: string,
  standing: WordTree,
): WordsToFillIn {
  const text = before ?? `${schemaLine("words")}\n`;
  const inserts: Insert[] = [];
  const closed: string[] = [];
  const forms = pluralsOf(language);
  const fill = (tree: WordTree, node: Node | null, spot: Spot): void => {
    const pairs = isMap(node) ? node.items.filter(isPair) : [];
    const there = new Map(pairs.map((pair) => [keyOf(pair), pair]));
    const indent = pairs[0] ? columnOf(pairs[0], text) : spot.indent;
    for (const [key, below] of Object.entries(tree)) {
      const pair = there.get(key);
      if (!pair || typeof below === "string") continue;
      const inside = { path: `${spot.path}${key}.`, at: behind(pair, text), indent: `${indent}  ` };
      fill(below, pair.value as Node | null, inside);
    }
    const missing = Object.fromEntries(Object.entries(tree).filter(([key]) => !there.has(key)));
    const last = pairs.at(-1);
    const at = last ? behind(last, text) : spot.at;
    const lines = linesOf(missing, { ...spot, indent }, forms);
    if (lines.length === 0) return;
    if (isOpen(node)) inserts.push({ at, lines, added: countOf(missing) });
    else closed.push(spot.path.slice(0, -1));
  };
  const { contents } = parseDocument(text);
  const top = contents as Node | null;
  fill(inOrder(standing), top, { path: "", at: text.length, indent: "" });
  const added = inserts.reduce((sum, one) => sum + one.added, 0);
  const opening =
    top === null && added > 0 ? [{ at: text.length, lines: head(language, forms), added: 0 }] : [];
  return { text: withInserts(text, [...opening, ...inserts]), added, closed };
}

/** Where keys of a group are put in, below which path of the file. */
interface Spot {
  /** Keys that lead to it, each with a point behind it. */
  readonly path: string;
  readonly at: number;
  readonly indent: string;
}

/** Whether lines with keys can be added: nothing stands there yet, or keys on lines of their own. */
const isOpen = (node: Node | null) =>
  node === null || (isMap(node) ? !node.flow : node.range?.[0] === node.range?.[1]);

/** The space before a key, as its group is moved in. */
function columnOf({ key }: Pair, text: string): string {
  const at = (key as Node).range?.[0] ?? 0;
  return " ".repeat(at - (text.lastIndexOf("\n", at - 1) + 1));
}

/** Where the line ends in which a key and all that it has end. */
function behind({ key, value }: Pair, text: string): number {
  const at = ((value ?? key) as Node).range?.[1] ?? 0;
  const end = text[at - 1] === "\n" ? at : text.indexOf("\n", at) + 1;
  return end === 0 ? text.length : end;
}

/** Groups in the order in which readers come to see them, and what is in each as it was. */
const inOrder = (tree: WordTree): WordTree =>
  Object.fromEntries(
    Object.entries(tree).sort(([one], [other]) => groupsInOrder.indexOf(one) - groupsInOrder.indexOf(other)),
  );

function linesOf(
  tree: WordTree,
  { path, indent }: Omit<Spot, "at">,
  forms: readonly string[],
): readonly string[] {
  return Object.entries(tree).flatMap(([key, below]) => {
    const at = `${path}${key}`;
    if (typeof below === "string")
      return [...comment([below, ...gapNotes(at, below, forms)], indent), `${indent}${key}: ""`];
    const note = groupNote(at);
    const inside = linesOf(below, { path: `${at}.`, indent: `${indent}  ` }, forms);
    return [...(note === undefined ? [] : ["", ...comment([note], indent)]), `${indent}${key}:`, ...inside];
  });
}

const comment = (texts: readonly string[], indent = "") =>
  texts.flatMap((text) => commentLines(text, indent));

const countOf = (tree: WordTree): number =>
  Object.values(tree).reduce((sum, below) => sum + (typeof below === "string" ? 1 : countOf(below)), 0);

/** A text with lines put in behind lines of it; those of a group stand before those of what it is in. */
function withInserts(text: string, inserts: readonly Insert[]): string {
  const end = text.includes("\r\n") ? "\r\n" : "\n";
  const parts: string[] = [];
  let from = 0;
  for (const { at, lines } of [...inserts].sort((one, other) => one.at - other.at)) {
    const before = text.slice(from, at);
    const isCut = at === text.length && before !== "" && !before.endsWith("\n");
    parts.push(before, isCut ? end : "", ...lines.map((line) => `${line}${end}`));
    from = at;
  }
  return `${parts.join("")}${text.slice(from)}`;
}

/** Forms that a language has words in, as Unicode names them. */
function pluralsOf(language: string): readonly string[] {
  const has: readonly string[] = new Intl.PluralRules(language).resolvedOptions().pluralCategories;
  return plurals.filter((name) => has.includes(name));
}

function head(language: string, forms: readonly string[]): readonly string[] {
  const name = new Intl.DisplayNames("en", { type: "language" }).of(language);
  return comment([
    `Words of pages and cards in ${name}. Above each key is the text that stands there as long as nothing is between its quotation marks: fill in as few as you like, in any order.`,
    `{depth} and its like are gaps: dotdown puts a figure, a name or a number there. Leave what is in the braces as it is; a gap may stand anywhere in the sentence.`,
    `{count, plural, one {# rig} other {# rigs}} has a form for each plural of the language, with # for the number: here ${forms.join(", ")}.`,
    `A quotation mark of your text is typed as “ and ”, or as \\" between the others.`,
  ]);
}
