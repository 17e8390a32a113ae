import { first } from "../../core/lists.ts";
import { asJsonSchema, type JsonSchema } from "./as-json-schema.ts";
import { fileKinds } from "./file-kinds.ts";
import { type FileKind, keyNotes } from "./key-notes.ts";

/** The schema of a kind of file for editors: the one that content is held against, with what each key means. */
export function jsonSchemaOf(kind: FileKind): JsonSchema {
  const { schema, needs } = fileKinds[kind];
  const noted = withNotes(asJsonSchema(schema), new Map(Object.entries(keyNotes[kind])), "");
  return needs ? { ...noted, required: needs } : noted;
}

function withNotes(schema: JsonSchema, notes: ReadonlyMap<string, string>, path: string): JsonSchema {
  const description = notes.get(path);
  const inner = (one: JsonSchema) => withNotes(one, notes, path);
  const { properties, items, anyOf, oneOf } = schema;
  const named = (entries: Readonly<Record<string, JsonSchema>>) =>
    Object.fromEntries(
      Object.entries(entries).map(([key, value]) => [
        key,
        withNotes(value, notes, path === "" ? key : `${path}.${key}`),
      ]),
    );
  return {
    ...schema,
    ...(description !== undefined && { description }),
    ...(properties && { properties: named(properties) }),
    ...(items && { items: withNotes(items, withoutOwn(notes, path), path) }),
    ...(anyOf && { anyOf: anyOf.map(inner) }),
    ...(oneOf && { oneOf: oneOf.map(inner) }),
  };
}

/** A list's own meaning is not that of each of its entries. */
function withoutOwn(notes: ReadonlyMap<string, string>, path: string): ReadonlyMap<string, string> {
  return new Map([...notes].filter(([key]) => key !== path));
}

/** A key of a file, wherever it is nested. */
interface KeyEntry {
  /** Names from the top of the file, such as `feed.portion`. */
  readonly path: string;
  readonly description: string;
  /** What may stand there: the choices, or the form with examples. */
  readonly form: string;
  readonly isRequired: boolean;
}

/** Every key of a kind of file that has a meaning of its own, in order. */
export function keysOf(kind: FileKind): readonly KeyEntry[] {
  const entries = new Map<string, KeyEntry>();
  const look = (schema: JsonSchema, path: string): void => {
    for (const [key, value] of Object.entries(schema.properties ?? {})) {
      const at = path === "" ? key : `${path}.${key}`;
      const before = entries.get(at);
      const isRequired = (schema.required ?? []).includes(key);
      const { description } = value;
      if (description !== undefined) {
        const form = [...new Set([before?.form, formOf(value)].filter(Boolean))].join(", ");
        entries.set(at, { path: at, description, form, isRequired: isRequired || !!before?.isRequired });
      }
      look(value, at);
    }
    for (const one of [schema.items, ...(schema.anyOf ?? []), ...(schema.oneOf ?? [])])
      if (one) look(one, path);
  };
  look(jsonSchemaOf(kind), "");
  return [...entries.values()];
}

/** Words for what may stand at a key. */
export interface FormWords {
  readonly or: string;
  readonly suchAs: string;
  readonly list: string;
  listOf(count: number): string;
  readonly string: string;
  readonly number: string;
  readonly integer: string;
  readonly boolean: string;
  /** Keys with values of their own. */
  readonly object: string;
}

export const englishForms: FormWords = {
  or: "or",
  suchAs: "such as",
  list: "a list",
  listOf: (count) => `a list of ${count}`,
  string: "a text",
  number: "a number",
  integer: "a whole number",
  boolean: "true or false",
  object: "a group of keys",
};

/** What may stand at a key, in words. */
export function formOf(schema: JsonSchema, words: FormWords = englishForms): string {
  const inWords = (one: JsonSchema) => formOf(one, words);
  if (schema.const !== undefined) return String(schema.const);
  if (schema.enum) return oneOf(schema.enum.map(String), words);
  if (schema.examples) return `${words.suchAs} ${schema.examples.join(", ")}`;
  const options = schema.anyOf ?? schema.oneOf;
  if (options) return oneOf([...new Set(options.map(inWords))], words);
  const { items, prefixItems } = schema;
  if (prefixItems) return `${words.listOf(prefixItems.length)}; ${inWords(first(prefixItems))}`;
  if (items) return inWords(items) === words.string ? words.list : `${words.list}; ${inWords(items)}`;
  switch (schema.type) {
    case "string":
    case "number":
    case "integer":
    case "boolean":
    case "object":
      return words[schema.type];
    default:
      return "";
  }
}

/** Choices with a word before the last; where one has commas of its own, the word stands between all. */
function oneOf(choices: readonly string[], { or }: FormWords): string {
  if (choices.some((choice) => choice.includes(","))) return choices.join(` ${or} `);
  const before = choices.slice(0, -1).join(", ");
  return before === "" ? choices.join() : `${before} ${or} ${choices.at(-1)}`;
}
