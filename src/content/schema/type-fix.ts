import type { MessageValues } from "../../model/message-table.ts";
import type { YamlSource } from "../yaml-source.ts";
import type { JsonSchema } from "./as-json-schema.ts";
import type { Path } from "./schema-at.ts";

/** What a value should be, in words, by the schema's name for it. */
export const expectedWords = {
  string: "a text",
  number: "a number without a unit",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  tuple: "a list of two",
  object: "a group of keys",
  record: "a group of keys",
} as const satisfies Readonly<Record<string, string>> as Readonly<Record<string, string>>;

type Fix = MessageValues["wrong-type"]["fix"];

/**
 * How what was typed would be of the type that is expected, where that is plain.
 *
 * @param at the schema of the value
 */
export function fixOf(
  expected: string,
  found: unknown,
  source: YamlSource,
  path: Path,
  at: JsonSchema | undefined,
): Fix {
  const behind = found === null && path.length > 0 ? source.noteBehind(path) : undefined;
  if (behind !== undefined) return { by: "hash in quotes", typed: behind };
  if (expected === expectedWords.object) {
    const typed = exampleOf(at, path.length === 0);
    return typed === "" ? undefined : { by: "as a group", typed };
  }
  if (expected === expectedWords.array && path.length === 0) return { by: "as entries", typed: entryOf(at) };
  if (expected === expectedWords.array && found !== null && (typeof found === "object" || holdsGroups(at)))
    return { by: "in brackets", typed: entryOf(at) };
  if (found === null) return { by: "behind the colon", typed: "" };
  if (!Object.values(expectedWords).includes(expected)) return asChoice(found, at);
  if (typeof found === "object") return ofSeveral(expected, found as object);
  if (!isPlain(found)) return undefined;
  return ofOne(expected, typeof found === "number" ? source.typed(path) : String(found));
}

const nones = /^(?:no|off|false|nothing|null|0)$/i;
const alls = /^(?:all|yes|on|true|every(?:thing)?)$/i;

/** All or none in another word, where one of several forms is one of these. */
function asChoice(found: unknown, at: JsonSchema | undefined): Fix {
  const typed = String(found);
  const meant = nones.test(typed) ? "none" : alls.test(typed) ? "all" : undefined;
  const words = (at?.anyOf ?? []).flatMap((form) => form.enum ?? [form.const]);
  if (meant === undefined || !words.includes("none")) return undefined;
  return words.includes(meant) ? { by: "like", typed: meant } : { by: "line out", typed };
}

/** A group or a list, where one value should be. */
function ofSeveral(expected: string, found: object): Fix {
  const [[key, value] = ["", undefined], another] = Object.entries(found);
  if (another === undefined && isPlain(value)) {
    if (Array.isArray(found)) return { by: "without brackets", typed: String(value) };
    if (expected === expectedWords.string && typeof value === "string")
      return { by: "colon in quotes", typed: `${key}: ${value}` };
  }
  return Array.isArray(found) && expected === expectedWords.string && found.every(isPlain)
    ? { by: "in quotes", typed: `[${found.join(", ")}]` }
    : undefined;
}

/** A text or a number as it may stand in a file; YAML's own sign of a number without end is never what was meant. */
const isPlain = (value: unknown) => typeof value === "string" || Number.isFinite(value);

const truths: Readonly<Record<string, string>> = { yes: "true", on: "true", no: "false", off: "false" };

function ofOne(expected: string, typed: string): Fix {
  if (expected === expectedWords.string) return { by: "in quotes", typed };
  if (expected === expectedWords.array) return asList(typed);
  if (expected === expectedWords.tuple) return { by: "from and to", typed };
  if (expected === expectedWords.boolean) {
    const truth = truths[typed.toLowerCase()];
    return truth === undefined ? undefined : { by: "like", typed: truth };
  }
  if (expected !== expectedWords.number && expected !== expectedWords.int) return undefined;
  if (/^\d+$/.test(typed)) return { by: "without quotes", typed };
  const [number, ...others] = typed.match(/\d+(?:\.\d+)?/g) ?? [];
  if (others.length > 0) return undefined;
  if (number === undefined) return { by: "like", typed: "16" };
  const isWhole = expected === expectedWords.number || Number.isInteger(Number(number));
  if (isWhole) return { by: "like", typed: number };
  return { by: "like", typed: `${Math.floor(Number(number))} or ${Math.ceil(Number(number))}` };
}

/** Entries that were typed as a list elsewhere has them: behind a sign of its own, or figures with words between them. */
function asList(typed: string): Fix {
  const marked = /^[–—•·*]\s*(.+)$/.exec(typed)?.[1];
  if (marked !== undefined) return { by: "as entries", typed: marked };
  const parts = typed.split(/\s*(?:[;&]|\b(?:and|und)\b)\s*/);
  const areFigures = parts.every((part) => /^\d/.test(part));
  return { by: "in brackets", typed: areFigures ? parts.join(", ") : typed };
}

/** The keys that a group must have, as they are written within a line, or as the first line of a file. */
function exampleOf(at: JsonSchema | undefined, isFile: boolean): string {
  const of = at?.oneOf?.[0] ?? at;
  const keys = of?.required ?? Object.keys(of?.properties ?? {});
  const written = keys.map((key) => `${key}: …`);
  return isFile ? written.slice(0, 1).join("") : `{ ${written.join(", ") || "name: …"} }`;
}

const holdsGroups = (at: JsonSchema | undefined) => at?.items?.type === "object";

const entryOf = (at: JsonSchema | undefined): string => (holdsGroups(at) ? exampleOf(at?.items, false) : "…");
