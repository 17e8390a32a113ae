import type { z } from "zod";
import { first } from "../../core/lists.ts";
import { type Message, message, type Place } from "../../model/message.ts";
import type { MessageCode, MessageValues } from "../../model/message-table.ts";
import type { YamlSource } from "../yaml-source.ts";
import { asJsonSchema, type JsonSchema } from "./as-json-schema.ts";
import type { QuantityFault } from "./quantity-schema.ts";
import { decidingChoices, keysAt, optionLike, type Path, schemaAt, valueAt } from "./schema-at.ts";
import { expectedWords, fixOf } from "./type-fix.ts";

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

/** An issue with what stands at its place. */
interface Met {
  readonly schema: z.ZodType;
  readonly source: YamlSource;
  readonly path: Path;
  /** The key that the value stands at; for an entry of a list the list's. */
  readonly key: string;
  readonly found: unknown;
  error<C extends MessageCode>(code: C, values: MessageValues[C], place?: Place): Message;
}

function issueMessages(issue: Issue, schema: z.ZodType, source: YamlSource): Message[] {
  const path = issue.path as Path;
  const found = valueAt(source.data, path);
  const key =
    path.findLast((step) => typeof step === "string") ?? (path.length === 0 ? "the file" : "the entry");
  const met: Met = {
    schema,
    source,
    path,
    key,
    found,
    error: (code, values, place = source.placeOf(path)) => message(code, place, values),
  };
  if (found === undefined && path.length > 0) {
    return [met.error("missing-key", { key: String(path.at(-1)) }, source.placeOf(path.slice(0, -1)))];
  }
  switch (issue.code) {
    case "unrecognized_keys": {
      const allowed = keysAt(asJsonSchema(schema), source.data, path);
      return issue.keys.map((unknown) =>
        met.error(
          "unknown-key",
          { key: unknown, allowed, ...commaBefore(unknown, source.typed(path)) },
          source.placeOfKey(path, unknown),
        ),
      );
    }
    case "invalid_value":
      return [met.error("not-a-choice", { key, found: shown(found), allowed: issue.values.map(String) })];
    case "invalid_union":
      return wrongUnion(issue, met);
    case "invalid_type":
      return [wrongType(expectedWords[issue.expected] ?? issue.expected, met)];
    case "too_small":
    case "too_big":
      return [beyondBounds(issue, met)];
    case "custom":
      if (isCutByComma(source.data, path)) return [];
      if (issue.params?.code !== undefined) return [wrongQuantity(issue.params as QuantityFault, met)];
      return [met.error("not-valid", { key, problem: issue.message })];
    case "invalid_key":
      return [met.error("not-valid", { key, problem: issue.issues[0]?.message ?? issue.message })];
    default:
      return [met.error("not-valid", { key, problem: issue.message })];
  }
}

/** A value that is none of several forms: told as a slip in the one that it is like, where there is one. */
function wrongUnion(issue: Extract<Issue, { code: "invalid_union" }>, met: Met): Message[] {
  const { schema, source, path, key, found, error } = met;
  const name = issue.discriminator;
  const written = asJsonSchema(schema);
  const at = schemaAt(written, source.data, path);
  const meant = name === undefined && at ? optionLike(at, found) : undefined;
  if (at !== undefined && meant !== undefined) {
    const within = issue.errors[(at.anyOf ?? []).indexOf(meant)] ?? [];
    return within.flatMap((inner) =>
      issueMessages({ ...inner, path: [...path, ...inner.path] } as Issue, schema, source),
    );
  }
  const options = name === undefined ? [] : decidingChoices(written, name, source.data, path.slice(0, -1));
  return options.length > 0
    ? [error("not-a-choice", { key, found: shown(found), allowed: options })]
    : [wrongType("of another form", met)];
}

function wrongType(otherwise: string, { schema, source, path, key, found, error }: Met): Message {
  const at = schemaAt(asJsonSchema(schema), source.data, path);
  const expected = at?.form ?? otherwise;
  const fix = fixOf(expected, found, source, path, at);
  return error("wrong-type", { key, expected, found: shownAs(found, expected), ...(fix && { fix }) });
}

function beyondBounds(
  issue: Extract<Issue, { code: "too_small" | "too_big" }>,
  { schema, source, path, key, found, error }: Met,
): Message {
  const isTooBig = issue.code === "too_big";
  const bound = Number(isTooBig ? issue.maximum : issue.minimum);
  if (!Array.isArray(found)) {
    return error("out-of-range", {
      key,
      found: shown(found),
      bound: `${isTooBig ? "more" : "less"} than ${bound}`,
      ...boundsOf(schemaAt(asJsonSchema(schema), source.data, path)),
    });
  }
  return isTooBig
    ? error("too-many", { key, found: found.length, most: bound })
    : error("too-few", { key, least: bound });
}

/** From where to where a number may be; a whole number that is bounded by what can be counted to is not. */
function boundsOf(at: JsonSchema | undefined): { readonly allowed?: string } {
  const [least, most] = [at?.minimum, at?.maximum].map((bound) =>
    bound === undefined || Math.abs(bound) >= Number.MAX_SAFE_INTEGER ? undefined : bound,
  );
  if (least === undefined) return most === undefined ? {} : { allowed: `up to ${most}` };
  return { allowed: most === undefined ? `${least} or more` : `${least} to ${most}` };
}

function wrongQuantity(fault: QuantityFault, { source, path, key, found, error }: Met): Message {
  if (fault.code !== "quantity") return error("out-of-range", { key, ...fault.values });
  if (typeof found === "object") {
    const expected = `a ${fault.values.kind} such as ${first(fault.values.examples)}`;
    return error("wrong-type", { key, expected, found: shown(found) });
  }
  return error("quantity", { ...fault.values, ...decimalComma(source.data, path) });
}

/** What may stand behind a decimal point. */
const decimals = /^\d+(?: ?[a-z%]+)?$/i;

/** `{ price: 1,05 }` has a key 5 with nothing behind it, and was hardly meant so: told by the group as it was typed. */
function commaBefore(key: string, typed: string): { readonly comma?: string } {
  const [, whole, rest] = (decimals.test(key) && new RegExp(`(\\d+),(0*${key})\\s*[,}]`).exec(typed)) || [];
  return whole === undefined ? {} : { comma: `${whole}.${rest}` };
}

/** Whether the key behind a whole number is the rest of it, as in `{ diameter: 0,22 mm }`: that is told of the key. */
function isCutByComma(data: unknown, path: Path): boolean {
  const group = valueAt(data, path.slice(0, -1));
  if (typeof group !== "object" || group === null || !Number.isInteger(valueAt(data, path))) return false;
  const keys = Object.entries(group);
  const [next, value] = keys[keys.findIndex(([key]) => key === path.at(-1)) + 1] ?? [];
  return next !== undefined && value === null && decimals.test(next);
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

/** A value beside what it should be: a text of digits is told from a number. */
function shownAs(value: unknown, expected: string): string {
  const isText = typeof value === "string" && /^[\d.]+$/.test(value) && expected !== expectedWords.string;
  return isText ? `the text "${value}"` : shown(value);
}

function shown(value: unknown): string {
  if (value === null) return "empty";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "number" && !Number.isFinite(value)) return "no number that has an end";
  return typeof value === "object" ? "a group of keys" : String(value);
}
