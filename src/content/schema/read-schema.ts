import type { z } from "zod";
import { type Message, message } from "../../model/message.ts";
import type { MessageCode, MessageValues } from "../../model/message-table.ts";
import type { YamlSource } from "../yaml-source.ts";
import type { QuantityFault } from "./quantity-schema.ts";

type Issue = z.core.$ZodIssue;
type Path = readonly (string | number)[];

/**
 * Holds a YAML source against a schema: the typed value, or every message about it with its place. Undefined where
 * there is no value to go on with.
 */
export function readSchema<T>(
  schema: z.ZodType<T>,
  source: YamlSource,
): { value: T | undefined; messages: readonly Message[] } {
  if (source.messages.length > 0) return { value: undefined, messages: source.messages };
  const read = schema.safeParse(source.data);
  if (read.success) return { value: read.data, messages: [] };
  const messages = read.error.issues.flatMap((issue) => issueMessages(issue, schema, source));
  // An error in an anchored value comes up again for each alias of it.
  const once = new Map(messages.map((message) => [JSON.stringify(message), message]));
  return { value: undefined, messages: [...once.values()] };
}

function issueMessages(issue: Issue, schema: z.ZodType, source: YamlSource): Message[] {
  const path = issue.path as Path;
  const key = path.length === 0 ? "the file" : String(path[path.length - 1]);
  const error = <C extends MessageCode>(code: C, values: MessageValues[C], place = source.placeOf(path)) =>
    message(code, place, values);
  const found = valueAt(source.data, path);
  if (found === undefined && path.length > 0) {
    return [error("missing-key", { key }, source.placeOf(path.slice(0, -1)))];
  }
  switch (issue.code) {
    case "unrecognized_keys": {
      const allowed = keysAt(schema, source.data, path);
      return issue.keys.map((unknown) =>
        error("unknown-key", { key: unknown, allowed }, source.placeOfKey(path, unknown)),
      );
    }
    case "invalid_value":
      return [error("not-a-choice", { key, found: shown(found), allowed: issue.values.map(String) })];
    case "invalid_union": {
      const name = issue.discriminator;
      const at = schemaAt(schema, source.data, path);
      const meant = name === undefined && at ? optionLike(definitionOf(at), found) : undefined;
      if (meant !== undefined) {
        const within = issue.errors[definitionOf(at!).options!.indexOf(meant)]!;
        return within.flatMap((inner) =>
          issueMessages({ ...inner, path: [...path, ...inner.path] } as Issue, schema, source),
        );
      }
      const options = name === undefined ? [] : discriminatorOptions(schema, source.data, path.slice(0, -1));
      return options.length > 0
        ? [error("not-a-choice", { key, found: shown(found), allowed: options })]
        : [error("wrong-type", { key, expected: formAt(schema, source.data, path), found: shown(found) })];
    }
    case "invalid_type":
      return [
        error("wrong-type", {
          key,
          expected: expectedWords[issue.expected] ?? issue.expected,
          found: shown(found),
        }),
      ];
    case "too_small":
      return [error("too-few", { key, least: Number(issue.minimum) })];
    case "custom":
      if (issue.params?.code !== undefined) {
        const fault = issue.params as QuantityFault;
        return fault.code === "quantity"
          ? [error("quantity", { ...fault.values, ...decimalComma(source.data, path) })]
          : [error("out-of-range", { key, ...fault.values })];
      }
      return [error("not-valid", { key, problem: issue.message })];
    default:
      return [error("not-valid", { key, problem: issue.message })];
  }
}

/** `[1,5 m]` is a list of two, and was hardly meant so. */
function decimalComma(data: unknown, path: Path): { readonly comma?: string } {
  const at = path.at(-1);
  if (typeof at !== "number") return {};
  const list = path.slice(0, -1);
  const [whole, rest] = [valueAt(data, path), valueAt(data, [...list, at + 1])];
  const isComma = Number.isInteger(whole) && typeof rest === "string" && /^\d+ *[a-z]/i.test(rest);
  return isComma ? { comma: `${whole}.${rest}` } : {};
}

const expectedWords: Readonly<Record<string, string>> = {
  string: "a text",
  number: "a number without a unit",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  object: "a group of keys",
  record: "a group of keys",
};

function shown(value: unknown): string {
  if (value === null) return "empty";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "number" && !Number.isFinite(value)) return "no number that has an end";
  return typeof value === "object" ? "a group of keys" : String(value);
}

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (node, step) =>
      typeof node === "object" && node !== null
        ? (node as Record<string | number, unknown>)[step]
        : undefined,
    data,
  );
}

type Definition = {
  type: string;
  shape?: Record<string, z.ZodType>;
  element?: z.ZodType;
  innerType?: z.ZodType;
  valueType?: z.ZodType;
  in?: z.ZodType;
  options?: z.ZodType[];
  discriminator?: string;
  values?: unknown[];
};

const definitionOf = (schema: z.ZodType): Definition => schema.def as unknown as Definition;

/** The schema that stands behind optional, default and transforming ones. */
function bare(schema: z.ZodType): z.ZodType {
  const definition = definitionOf(schema);
  const inner = definition.innerType ?? definition.in;
  return inner && definition.type !== "object" ? bare(inner) : schema;
}

/** The schema for the value at a path, following the data where a union has to be decided. */
function schemaAt(schema: z.ZodType, data: unknown, path: Path): z.ZodType | undefined {
  const definition = definitionOf(bare(schema));
  if (definition.options && definition.discriminator !== undefined) {
    const chosen = optionFor(definition, data);
    return chosen ? schemaAt(chosen, data, path) : path.length === 0 ? bare(schema) : undefined;
  }
  if (path.length === 0) return bare(schema);
  const like = definition.options && optionLike(definition, data);
  if (like) return schemaAt(like, data, path);
  const [step, ...rest] = path;
  const next = definition.shape?.[String(step)] ?? definition.element ?? definition.valueType;
  return next ? schemaAt(next, valueAt(data, [step!]), rest) : undefined;
}

function optionFor(definition: Definition, data: unknown): z.ZodType | undefined {
  const chosen = valueAt(data, [definition.discriminator!]);
  return definition.options!.find((option) =>
    choicesOf(option, definition.discriminator!).includes(String(chosen)),
  );
}

/** The one option of a union that takes groups, for a group, or lists, for a list. */
function optionLike(definition: Definition, data: unknown): z.ZodType | undefined {
  const form = Array.isArray(data) ? "array" : typeof data === "object" && data !== null ? "object" : "";
  const like = (definition.options ?? []).filter((option) => definitionOf(bare(option)).type === form);
  return like.length === 1 ? like[0] : undefined;
}

function choicesOf(option: z.ZodType, discriminator: string): string[] {
  const field = definitionOf(bare(option)).shape?.[discriminator];
  if (!field) return [];
  const definition = definitionOf(bare(field)) as Definition & { entries?: Record<string, string> };
  return definition.values?.map(String) ?? Object.values(definition.entries ?? {});
}

/** What a value of several forms may be, in the words of its schema. */
function formAt(schema: z.ZodType, data: unknown, path: Path): string {
  const form = schemaAt(schema, data, path)?.meta()?.form;
  return typeof form === "string" ? form : "of another form";
}

function keysAt(schema: z.ZodType, data: unknown, path: Path): string[] {
  const at = schemaAt(schema, data, path);
  const group = at && (optionLike(definitionOf(at), valueAt(data, path)) ?? at);
  return Object.keys((group && definitionOf(bare(group)).shape) ?? {});
}

function discriminatorOptions(schema: z.ZodType, data: unknown, path: Path): string[] {
  const at = schemaAt(schema, data, path);
  const definition = at && definitionOf(at);
  if (!definition?.options || definition.discriminator === undefined) return [];
  return definition.options.flatMap((option) => choicesOf(option, definition.discriminator!));
}
