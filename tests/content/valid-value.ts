import fc from "fast-check";
import { z } from "zod";

/** What is used of a schema's own JSON Schema; `like` has examples of a quantity. */
interface Form {
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly like?: readonly string[];
  readonly type?: string;
  readonly pattern?: string;
  readonly format?: string;
  readonly multipleOf?: number;
  readonly propertyNames?: Form;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly items?: Form;
  readonly prefixItems?: readonly Form[];
  readonly properties?: Readonly<Record<string, Form>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: Form | boolean;
  readonly anyOf?: readonly Form[];
  readonly oneOf?: readonly Form[];
}

/** What a schema asks of keys beyond what JSON Schema can say. */
const asked: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  language: fc.constantFrom("en", "de-AT", "pt-BR"),
  main: fc.constantFrom("#0a4d57", "#5B1A8C"),
  accent: fc.constantFrom("#a8330c", "#7a0045"),
  "site-address": fc.constantFrom("https://guide.example/", "http://makebelieve.example/a/b"),
};

/** What may be typed into a file of a schema, made from the schema itself. */
export function validValue(schema: z.ZodType): fc.Arbitrary<unknown> {
  return made(z.toJSONSchema(schema, { unrepresentable: "any", io: "input" }) as Form);
}

function made(form: Form): fc.Arbitrary<unknown> {
  if ("const" in form) return fc.constant(form.const);
  if (form.enum) return fc.constantFrom(...form.enum);
  if (form.like) return fc.constantFrom(...form.like);
  const choices = form.anyOf ?? form.oneOf;
  if (choices) return fc.oneof(...choices.map(made));
  if (form.type === "array") return list(form);
  if (form.type === "object") return record(form);
  if (form.type === "integer" || form.type === "number") return number(form);
  if (form.type === "boolean") return fc.boolean();
  if (form.type !== "string") throw new Error(`no value is known for ${JSON.stringify(form)}`);
  if (form.format === "date")
    return fc.date({ min: new Date("2000"), max: new Date("2099-12-31"), noInvalidDate: true }).map(dayOf);
  return form.pattern === undefined ? fc.string() : fc.stringMatching(asciiOf(form.pattern));
}

const dayOf = (date: Date) => date.toISOString().slice(0, 10);
const asciiOf = (pattern: string) => new RegExp(pattern.replaceAll("\\p{L}", "a-z"));

function list({ items, prefixItems, minItems = 0, maxItems = minItems + 3 }: Form): fc.Arbitrary<unknown> {
  if (prefixItems) return fc.tuple(...prefixItems.map(made));
  return fc.array(made(items!), { minLength: minItems, maxLength: maxItems });
}

function record(form: Form): fc.Arbitrary<unknown> {
  const { properties, required = [], additionalProperties, propertyNames } = form;
  if (!properties) {
    const key = made(propertyNames ?? { type: "string" }).filter(
      (name) => name !== "lead" && name !== "place",
    );
    return fc.dictionary(key as fc.Arbitrary<string>, made(additionalProperties as Form), { maxKeys: 3 });
  }
  const values = Object.entries(properties).map(([key, one]) => [key, asked[key] ?? made(one)] as const);
  return fc
    .record(Object.fromEntries(values), { requiredKeys: [...required] })
    .map((made) => ("low" in made && "high" in made ? inOrder(made) : made));
}

/** The lower of two figures first. */
const inOrder = (made: Record<string, unknown>) => {
  const [low, high] = [made.low as number, made.high as number].sort((a, b) => a - b);
  return { ...made, low, high };
};

function number({ type, exclusiveMinimum, minimum = -1000, maximum = 1000, multipleOf }: Form) {
  if (multipleOf !== undefined) return fc.integer({ min: 1, max: 100 }).map((times) => times * multipleOf);
  const min =
    exclusiveMinimum === undefined
      ? Math.max(minimum, -1000)
      : exclusiveMinimum + (type === "integer" ? 1 : 0.01);
  const range = { min, max: Math.min(maximum, 1000) };
  return type === "integer" ? fc.integer(range) : fc.double({ ...range, noNaN: true });
}
