import type { Nodes } from "mdast";
import { toString as textOf } from "mdast-util-to-string";
import { last } from "../core/lists.ts";
import { bytesLimit, type LimitName, limits } from "../model/limits.ts";
import { type Message, message, type Place, startOf } from "../model/message.ts";
import type { Source } from "./world.ts";

/** Something beyond its limit, and the line it stands in, from 1. */
interface Beyond {
  readonly limit: LimitName;
  readonly found: number;
  readonly line: number;
}

/** A message about something beyond its limit. */
export function tooMuch(limit: LimitName, found: number, place: Place): Message {
  return message("too-much", place, { limit, found });
}

/**
 * What a file has too much of to be parsed at all: parsers take the square of some things, and end on a stack that
 * overflows. The first that is met.
 */
export function tooMuchToParse({ path, file, text, bytes }: Source): Message | undefined {
  const most = bytesLimit(path);
  if (bytes > limits[most].most) return tooMuch(most, bytes, { file });
  const beyond = path.endsWith(".md") ? beyondInMarkdown(text) : beyondInYaml(text);
  return beyond && tooMuch(beyond.limit, beyond.found, { file, line: beyond.line, column: 1 });
}

const over = (limit: LimitName, found: number, line: number): Beyond | undefined =>
  found > limits[limit].most ? { limit, found, line } : undefined;

function beyondInLine(content: string, line: number): Beyond | undefined {
  return (
    over("lineSigns", content.length, line) ??
    over("indent", content.search(/\S|$/), line) ??
    over("marksAbreast", marksAbreast(content), line)
  );
}

/** What Markdown has too much of to be parsed. */
function beyondInMarkdown(text: string): Beyond | undefined {
  let parts = 0;
  let marks = 0;
  let inPart = false;
  for (const [at, content] of linesOf(text).entries()) {
    const isEmpty = content.trim() === "";
    if (!isEmpty && !inPart) parts += 1;
    inPart = !isEmpty;
    marks = isEmpty ? 0 : marks + countOf(content, /[*_[\]`~<:]/g);
    const beyond =
      beyondInLine(content, at + 1) ?? over("parts", parts, at + 1) ?? over("marks", marks, at + 1);
    if (beyond) return beyond;
  }
  return undefined;
}

function beyondInYaml(text: string): Beyond | undefined {
  let entries = 0;
  let open = 0;
  for (const [at, content] of linesOf(text).entries()) {
    const beyondLine = beyondInLine(content, at + 1);
    if (beyondLine) return beyondLine;
    // Nothing is made of a comment.
    if (/^\s*#/.test(content)) continue;
    entries += 1 + countOf(content, /[,:](?=\s)/g);
    let deepest = open;
    for (const sign of content) {
      // Those in words count too, of which no text has as many.
      if (sign === "[" || sign === "{") open += 1;
      if (sign === "]" || sign === "}") open = Math.max(0, open - 1);
      deepest = Math.max(deepest, open);
    }
    const beyond = over("brackets", deepest, at + 1) ?? over("entries", entries, at + 1);
    if (beyond) return beyond;
  }
  return undefined;
}

/** What a value of a YAML file has too much of. */
export function beyondInValue(text: string): Beyond | undefined {
  const ofPart = (part: string) => over("blockWords", wordsOf(part).length, 1) ?? beyondInWords(part);
  return (
    beyondInMarkdown(text) ??
    text
      .split(/\n\s*\n/)
      .map(ofPart)
      .find(Boolean)
  );
}

/** What a title has too much of for the places that it stands in. */
const beyondInTitle = (title: string): Beyond | undefined => over("titleSigns", title.length, 1);

const beyondInSentence = (sentence: string): Beyond | undefined =>
  over("sentenceWords", wordsOf(sentence.trim()).length, 1);

/** What the value of a key has too much of, by the key; of other keys a value may be longer. */
const beyondByKey = new Map([
  ["title", beyondInTitle],
  ["purpose", beyondInSentence],
  ["summary", beyondInSentence],
  ["aim", beyondInSentence],
  ["asks", beyondInSentence],
]);

export const beyondInKey = (key: unknown, value: string): Beyond | undefined =>
  beyondByKey.get(String(key))?.(value);

const blockKinds = new Set(["paragraph", "heading", "tableRow", "listItem", "code", "blockquote"]);

/** What a text has too much of to be laid out. */
export function tooMuchToLayOut(body: Nodes, file: string): Message | undefined {
  let blocks = 0;
  let cells = 0;
  let pictures = 0;
  let found: Beyond | undefined;
  const look = (node: Nodes, depth: number): void => {
    if (found) return;
    const line = node.position?.start.line ?? 1;
    if (blockKinds.has(node.type)) blocks += 1;
    if (node.type === "tableCell") cells += 1;
    if (node.type === "leafDirective") pictures += 1;
    found =
      over("depth", depth, line) ??
      over("blocks", blocks, line) ??
      over("tableCells", cells, line) ??
      over("pictures", pictures, line) ??
      beyondInNode(node, line);
    if ("children" in node) for (const child of node.children) look(child, depth + 1);
  };
  look(body, 0);
  return found && tooMuch(found.limit, found.found, { file, line: found.line, column: 1 });
}

function beyondInNode(node: Nodes, line: number): Beyond | undefined {
  switch (node.type) {
    case "table":
      return (
        over("tableRows", node.children.length, line) ??
        over("tableColumns", Math.max(...node.children.map((row) => row.children.length)), line)
      );
    case "paragraph":
    case "heading":
    case "tableCell":
      return over("blockWords", wordsOf(textOf(node)).length, line);
    case "text":
    case "inlineCode":
    case "code":
      return beyondInWords(node.value, line);
    default:
      return undefined;
  }
}

function beyondInWords(text: string, line = 1): Beyond | undefined {
  return over("wordSigns", Math.max(0, ...wordsOf(text).map((word) => word.length)), line);
}

const linesOf = (text: string): readonly string[] => text.split(/\r\n?|\n/);
const wordsOf = (text: string): readonly string[] => text.split(/\s+/);

function countOf(text: string, pattern: RegExp): number {
  return text.match(pattern)?.length ?? 0;
}

/** Marks of quotes, lists and keys in a row; a line of dashes and stars alone is a rule. */
function marksAbreast(line: string): number {
  if (/^[\s*_-]*$/.test(line)) return 0;
  const [abreast] = /^(?:[ \t]*(?:>|[-+*?](?=[ \t])|\d{1,9}[.)](?=[ \t])))*/.exec(line)!;
  return countOf(abreast, /[>+*?.)-]/g);
}

/** What keeps a file from being read as a text: it is saved in another encoding. */
export function notText({ file, text }: Source): Message | undefined {
  const nothings = text.split("\0").length - 1;
  // Every other byte of Latin letters in UTF-16 is nothing.
  if (nothings > text.length / 4) return message("not-utf-8", startOf(file), { as: "UTF-16" });
  const unread = text.indexOf("\uFFFD");
  if (unread < 0) return undefined;
  const before = text.slice(0, unread).split("\n");
  const place = { file, line: before.length, column: last(before).length + 1 };
  return message("not-utf-8", place, { as: "another encoding" });
}
