import wrap from "wrap-ansi";
import { first } from "../../core/lists.ts";
import type { JsonSchema } from "../schema/as-json-schema.ts";
import { formOf } from "../schema/json-schema.ts";
import type { CommentWords } from "./comment-words.ts";

/** What stands at each key, as YAML; a group of keys is nested. Keys without a value are left out. */
export interface StartValues {
  readonly [key: string]: string | StartValues;
}

const columns = 100;

/** YAML with every key of a schema, each below a comment that says what it means; keys without a value are comments. */
export function commentedYaml(schema: JsonSchema, values: StartValues, words: CommentWords): string {
  const required = new Set(schema.required ?? []);
  const keys = Object.entries(schema.properties ?? {});
  return keys
    .flatMap(([key, value]) => [
      ...commentOf(value, required.has(key), words),
      ...linesOf(key, value, values[key], words),
    ])
    .join("\n");
}

function commentOf(schema: JsonSchema, isRequired: boolean, words: CommentWords): readonly string[] {
  if (schema.description === undefined) return [];
  const { note, write, mayBeLeftOut, form: forms } = words;
  const form = formOf(schema, forms);
  const isClear = form === forms.string || form === forms.list || form.includes(forms.object);
  const said = [
    note(schema.description),
    ...(isClear ? [] : [write(form)]),
    ...(isRequired ? [] : [mayBeLeftOut]),
  ];
  return commentLines(said.join(" "));
}

/** A text as lines of a comment, each moved in by so much. */
export function commentLines(text: string, indent = ""): readonly string[] {
  const lines = wrap(text, columns - indent.length - 2, { hard: false }).split("\n");
  return lines.map((line) => `${indent}# ${line}`);
}

function linesOf(
  key: string,
  schema: JsonSchema,
  value: StartValues[string] | undefined,
  words: CommentWords,
): readonly string[] {
  if (value === undefined) return exampleLines(key, schema).map((line) => `# ${line}`);
  if (typeof value === "string") return `${key}:${value.startsWith("\n") ? "" : " "}${value}`.split("\n");
  const nested = commentedYaml(optionFor(schema, value), value, words).split("\n");
  return [`${key}:`, ...nested.map((line) => `  ${line}`)];
}

/** The one of several forms that has the keys which are to stand there. */
function optionFor(schema: JsonSchema, values: StartValues): JsonSchema {
  const isFor = ({ properties = {} }: JsonSchema) => Object.keys(values).every((key) => key in properties);
  const says = ({ properties = {} }: JsonSchema) => {
    const { pattern } = properties;
    return pattern?.const === values.pattern || (pattern?.enum ?? []).includes(values.pattern ?? "");
  };
  const options = schema.oneOf ?? schema.anyOf ?? [schema];
  const found = options.find((option) => isFor(option) && (!("pattern" in values) || says(option)));
  return found?.properties?.pattern ? withPatterns(found, options) : (found ?? schema);
}

/** One form of several, with the name of each at the key that tells them apart. */
function withPatterns(found: JsonSchema, options: readonly JsonSchema[]): JsonSchema {
  const patterns = options.map(({ properties }) => properties!.pattern!);
  const all = patterns.flatMap((one) => one.enum ?? [one.const]);
  const { description } = found.properties!.pattern!;
  return {
    ...found,
    properties: { ...found.properties, pattern: { ...(description && { description }), enum: all } },
  };
}

/** More keys than these are not written out as an example. */
const mostExampleKeys = 8;

/** A key with what may stand there, on lines of its own where it has keys itself. */
function exampleLines(key: string, schema: JsonSchema): readonly string[] {
  const keys = Object.entries(schema.properties ?? {});
  if (schema.examples || keys.length === 0 || keys.length > mostExampleKeys)
    return [`${key}: ${exampleOf(schema)}`];
  const below = keys.flatMap(([name, of]) => exampleLines(name, of));
  return [`${key}:`, ...below.map((line) => `  ${line}`)];
}

function exampleOf(schema: JsonSchema): string {
  if (schema.examples) return first(schema.examples);
  if (schema.enum) return String(schema.enum[0]);
  if (schema.type === "array") return `[${schema.items?.properties ? exampleOf(schema.items) : "…"}]`;
  const keys = Object.entries(schema.properties ?? {});
  if (keys.length === 0) return "…";
  const within = keys.map(([key, of]) => `${key}: ${of.properties ? "{ … }" : exampleOf(of)}`).join(", ");
  return keys.length > mostExampleKeys ? "{ … }" : `{ ${within} }`;
}
