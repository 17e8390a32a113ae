import type { JsonSchema } from "../schema/as-json-schema.ts";
import { fileKinds } from "../schema/file-kinds.ts";
import { jsonSchemaOf } from "../schema/json-schema.ts";
import type { FileKind } from "../schema/key-notes.ts";
import { type CommentWords, english } from "./comment-words.ts";
import { commentedYaml, type StartValues } from "./commented.ts";
import { atFirstDepth } from "./own-depths.ts";
import { type StartKind, startValues } from "./start-values.ts";

/** Path below the content folder of a file of a kind. */
export function pathOf(kind: StartKind, id: string): string {
  const { folder, ending } = fileKinds[kind];
  return `${folder}/${id}${ending}`;
}

/**
 * Tells editors which schema a file keeps to: where `dotdown schema` writes it, beside the content folder. It is a comment that
 * they look for in the first line of YAML.
 */
export function schemaLine(kind: FileKind | "words"): string {
  const folder = kind === "words" || fileKinds[kind].folder;
  return `# yaml-language-server: $schema=${folder ? "../../" : "../"}schemas/${kind}.schema.json`;
}

/** A name of a file as a title: `our-pond` is `Our pond`. */
export function titleOf(id: string): string {
  const words = id.replace(/[-_]+/g, " ").trim();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** What a new file is begun with. */
interface Beginning {
  /** What it says in place of the usual. */
  readonly values?: StartValues;
  /** How all but `values` is worded. */
  readonly words?: CommentWords;
  /** What stands below its keys, in place of the usual. */
  readonly text?: string;
  /** Names that a key may have, by the key. */
  readonly names?: Readonly<Record<string, readonly string[]>>;
}

/** A file to begin with, every key of it explained; it builds as it is. */
export function newFile(
  kind: StartKind,
  id: string,
  { values = {}, words = english, text, names = {} }: Beginning = {},
): string {
  const { front, body } = startValues[kind];
  const below = text ?? (body && words.atFirst(body(id)));
  const usual = inWords(front, words);
  const keys = commentedYaml(
    withNames(jsonSchemaOf(kind), names),
    { title: titleOf(id), ...usual, ...values },
    words,
  );
  const yaml = `${schemaLine(kind)}\n${keys}`;
  return below === undefined ? `${yaml}\n` : `---\n${yaml}\n---\n\n${below}`;
}

/** Keys that ask for a name, with the names that there are as their choices. */
function withNames(schema: JsonSchema, names: NonNullable<Beginning["names"]>): JsonSchema {
  const named = ([key, value]: [string, JsonSchema]) => [
    key,
    names[key]?.length ? { ...value, enum: names[key] } : value,
  ];
  return { ...schema, properties: Object.fromEntries(Object.entries(schema.properties ?? {}).map(named)) };
}

const inWords = (values: StartValues, words: CommentWords): StartValues =>
  Object.fromEntries(
    Object.entries(values).map(([key, value]) => [
      key,
      typeof value === "string" ? words.atFirst(value) : inWords(value, words),
    ]),
  );

/** A front matter, the key that names the rig, and the text below. */
const titleLine = /^title:.*$/m;

/**
 * A rig of the library as one of one's own: what it says of itself is said of the new one.
 *
 * @param text the file that is copied
 * @param isThere whether a link of the text leads anywhere from the guide
 * @param title of the new one, where it is not that of its name
 */
export function copiedRig(
  text: string,
  from: string,
  id: string,
  isThere: (url: string) => boolean,
  title?: string,
): string {
  const own = text
    .replace(/^---\n/, `---\n${schemaLine("rig")}\n`)
    .replace(titleLine, () => `title: ${title === undefined ? titleOf(id) : JSON.stringify(title)}`)
    .replace(/(\{[^}\n]*\brigs?=)("[^"]*"|[\w-]+)/g, (_, before: string, names: string) => {
      const renamed = names.replace(new RegExp(`(?<![\\w-])${from}(?![\\w-])`, "g"), id);
      return `${before}${renamed}`;
    });
  const [, front = "", body = ""] = /^(---\n.*?\n---\n+)?(.*)$/s.exec(own) ?? [];
  const parts = body.split(/\n{2,}/).map((part) => withoutLessons(part, isThere));
  const there = `${front}${parts.filter((part) => part !== "").join("\n\n")}`.replace(
    links,
    (link, words: string, url: string) => (isThere(url) ? link : words),
  );
  return atFirstDepth(there, id);
}

const links = /\[([^\]]+)\]\(([^)\s]+)\)/g;

/** What starts an entry of a list. */
const entryMark = /^\s*(?:[-*+]|\d+[.)])\s+/;

/**
 * A part of a text without its sentences that send readers to lessons which are not there; of a list without the entries that say
 * nothing else.
 */
function withoutLessons(part: string, isThere: (url: string) => boolean): string {
  if (!entryMark.test(part)) return withoutSentences(part, isThere);
  const entries = part.split(/\n(?=\s*(?:[-*+]|\d+[.)])\s)/).map((entry) => {
    const [mark = ""] = entryMark.exec(entry) ?? [];
    const said = withoutSentences(entry.slice(mark.length), isThere);
    return said === "" ? "" : `${mark}${said}`;
  });
  return entries.filter((entry) => entry !== "").join("\n");
}

function withoutSentences(part: string, isThere: (url: string) => boolean): string {
  const sentences = part.split(/(?<=[.!?]\s)/);
  const stay = sentences.filter((sentence) =>
    [...sentence.matchAll(links)].every(([, , url = ""]) => !url.includes("lessons/") || isThere(url)),
  );
  return stay.length === sentences.length ? part : stay.join("").trimEnd();
}
