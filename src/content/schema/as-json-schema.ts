import * as z from "zod";

/** What is used of JSON Schema, draft 2020-12. */
export interface JsonSchema {
  readonly description?: string;
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly examples?: readonly string[];
  readonly default?: unknown;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly required?: readonly string[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly additionalProperties?: JsonSchema | boolean;
  readonly items?: JsonSchema;
  readonly prefixItems?: readonly JsonSchema[];
  readonly anyOf?: readonly JsonSchema[];
  readonly oneOf?: readonly JsonSchema[];
  /** What a value of several forms may be, in words; not of the standard. */
  readonly form?: string;
}

/** A file with many mistakes asks for its schema as often. */
const written = new WeakMap<z.ZodType, JsonSchema>();

/** A schema of content as plain data: what may be written, before it is made into values. */
export function asJsonSchema(schema: z.ZodType): JsonSchema {
  const known = written.get(schema) ?? toJsonSchema(schema);
  written.set(schema, known);
  return known;
}

function toJsonSchema(schema: z.ZodType): JsonSchema {
  return z.toJSONSchema(schema, {
    unrepresentable: "any",
    io: "input",
    override: ({ jsonSchema }) => {
      const { like } = jsonSchema;
      if (like === undefined) return;
      jsonSchema.examples = like as string[];
      delete jsonSchema.like;
    },
  }) as JsonSchema;
}
