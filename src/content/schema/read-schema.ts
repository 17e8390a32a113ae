import type { z } from "zod";
import { type Message, message } from "../../model/message.ts";
import type { MessageCode, MessageValues } from "../../model/message-table.ts";
import type { YamlSource } from "../yaml-source.ts";
import { asJsonSchema } from "./as-json-schema.ts";
import type { QuantityFault } from "./quantity-schema.ts";
import { decidingChoices, formAt, keysAt, optionLike, type Path, schemaAt, valueAt } from "./schema-at.ts";

type Issue = z.core.$ZodIssue;

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

function issueMessages(issue: Issue, schema: z.ZodType, source: YamlSource): readonly Message[] {
  const path = issue.path as Path;
  const key = keyAt(path);
  const error = <C extends MessageCode>(code: C, values: MessageValues[C], place = source.placeOf(path)) =>
    message(code, place, values);
  const found = valueAt(source.data, path);
  if (found === undefined && path.length > 0) {
    return [error("missing-key", { key }, source.placeOf(path.slice(0, -1)))];
  }
  switch (issue.code) {
    case "unrecognized_keys": {
      const allowed = keysAt(asJsonSchema(schema), source.data, path);
      return issue.keys.map((unknown) =>
        error("unknown-key", { key: unknown, allowed }, source.placeOfKey(path, unknown)),
      );
    }
    case "invalid_value":
      return [error("not-a-choice", { key, found: shown(found), allowed: issue.values.map(String) })];
    case "invalid_union":
      return unionMessages(issue, schema, source);
    case "invalid_type":
      return [
        error("wrong-type", {
          key,
          expected: expectedWords[issue.expected] ?? issue.expected,
          found: shown(found),
        }),
      ];
    case "too_big":
      return Array.isArray(found)
        ? [error("too-many", { key, found: found.length, most: Number(issue.maximum) })]
        : [error("not-valid", { key, problem: issue.message })];
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

/** What is wrong with a value that may be written in several ways: by the way that was likely meant, where one was. */
function unionMessages(
  issue: z.core.$ZodIssueInvalidUnion,
  schema: z.ZodType,
  source: YamlSource,
): readonly Message[] {
  const path = issue.path as Path;
  const name = issue.discriminator;
  const found = valueAt(source.data, path);
  const written = asJsonSchema(schema);
  const at = schemaAt(written, source.data, path);
  const meant = name === undefined && at ? optionLike(at, found) : undefined;
  if (at !== undefined && meant !== undefined) {
    const within = issue.errors[(at.anyOf ?? []).indexOf(meant)] ?? [];
    return within.flatMap((inner) =>
      issueMessages({ ...inner, path: [...path, ...inner.path] } as Issue, schema, source),
    );
  }
  const place = source.placeOf(path);
  const about = { key: keyAt(path), found: shown(found) };
  const options = name === undefined ? [] : decidingChoices(written, name, source.data, path.slice(0, -1));
  return options.length > 0
    ? [message("not-a-choice", place, { ...about, allowed: options })]
    : [message("wrong-type", place, { ...about, expected: formAt(written, source.data, path) })];
}

const keyAt = (path: Path): string => (path.length === 0 ? "the file" : String(path.at(-1)));

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
