import type { JsonSchema } from "./as-json-schema.ts";

export type Path = readonly (string | number)[];

export function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (node, step) =>
      typeof node === "object" && node !== null
        ? (node as Record<string | number, unknown>)[step]
        : undefined,
    data,
  );
}

/** The schema for the value at a path, following the data where a union has to be decided. */
export function schemaAt(schema: JsonSchema, data: unknown, path: Path): JsonSchema | undefined {
  const chosen = schema.oneOf?.find((option) => isChosen(option, schema, data));
  if (chosen) return schemaAt(chosen, data, path);
  const [step, ...rest] = path;
  if (step === undefined) return schema;
  const like = optionLike(schema, data);
  if (like) return schemaAt(like, data, path);
  const next = schema.properties?.[step] ?? schema.items ?? schema.additionalProperties;
  return typeof next === "object" ? schemaAt(next, valueAt(data, [step]), rest) : undefined;
}

/** Whether the data names this option in a key that every option has choices for. */
function isChosen(option: JsonSchema, { oneOf = [] }: JsonSchema, data: unknown): boolean {
  return Object.keys(option.properties ?? {}).some(
    (name) =>
      oneOf.every((one) => choicesOf(one, name).length > 0) &&
      choicesOf(option, name).includes(String(valueAt(data, [name]))),
  );
}

/** What may stand at a key, where only some texts may. */
function choicesOf({ properties }: JsonSchema, name: string): string[] {
  const field = properties?.[name];
  return (field?.const === undefined ? (field?.enum ?? []) : [field.const]).map(String);
}

/** The option of a union that takes groups, for a group, or lists, for a list; of several the one with most of its keys. */
export function optionLike({ anyOf = [] }: JsonSchema, data: unknown): JsonSchema | undefined {
  const form = Array.isArray(data) ? "array" : typeof data === "object" && data !== null ? "object" : "";
  const like = anyOf.filter(({ type }) => type === form);
  if (form !== "object") return like.length === 1 ? like[0] : undefined;
  const keys = Object.keys(data as object);
  const shared = ({ properties = {} }: JsonSchema) =>
    keys.filter((key) => Object.hasOwn(properties, key)).length;
  return like.toSorted((a, b) => shared(b) - shared(a))[0];
}

/** The keys that a group at a path may have. */
export function keysAt(schema: JsonSchema, data: unknown, path: Path): string[] {
  const at = schemaAt(schema, data, path);
  const group = at && (optionLike(at, valueAt(data, path)) ?? at);
  return Object.keys(group?.properties ?? {});
}

/** What the key that decides between groups of several forms may be; the path is that of the group. */
export function decidingChoices(schema: JsonSchema, key: string, data: unknown, path: Path): string[] {
  return (schemaAt(schema, data, path)?.oneOf ?? []).flatMap((option) => choicesOf(option, key));
}
