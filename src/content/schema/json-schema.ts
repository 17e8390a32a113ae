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

/** What may stand at a key, in words. */
export function formOf(schema: JsonSchema): string {
  if (schema.const !== undefined) return String(schema.const);
  if (schema.enum) return schema.enum.join(" or ");
  if (schema.examples) return `such as ${schema.examples.join(", ")}`;
  const options = schema.anyOf ?? schema.oneOf;
  if (options) return [...new Set(options.map(formOf))].join(" or ");
  if (schema.prefixItems)
    return `a list of ${schema.prefixItems.length}; ${formOf(first(schema.prefixItems))}`;
  const { items } = schema;
  if (items) return formOf(items) === forms.string ? "a list" : `a list; ${formOf(items)}`;
  return forms[schema.type ?? ""] ?? "";
}

const forms: Readonly<Record<string, string>> = {
  string: "a text",
  number: "a number",
  integer: "a whole number",
  boolean: "true or false",
  object: "a group of keys",
};
