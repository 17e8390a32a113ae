import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { z } from "zod";
import { worded } from "../../src/checks/messages.ts";
import { guideSchema } from "../../src/content/schema/guide-schema.ts";
import { knotSchema } from "../../src/content/schema/knot-schema.ts";
import { readSchema } from "../../src/content/schema/read-schema.ts";
import {
  changesSchema,
  glossarySchema,
  linesSchema,
  speciesSchema,
  synonymsSchema,
  troublesSchema,
} from "../../src/content/schema/reference-schema.ts";
import { lessonSchema, pageSchema, rigSchema } from "../../src/content/schema/rig-schema.ts";
import {
  baitSchema,
  floatSchema,
  hooksSchema,
  kitSchema,
  scaleSchema,
  tubSchema,
} from "../../src/content/schema/tackle-schema.ts";
import { readYaml } from "../../src/content/yaml-source.ts";
import type { Message } from "../../src/model/message.ts";
import { validValue } from "./valid-value.ts";

const schemas = {
  guideSchema,
  knotSchema,
  changesSchema,
  glossarySchema,
  linesSchema,
  speciesSchema,
  synonymsSchema,
  troublesSchema,
  lessonSchema,
  pageSchema,
  rigSchema,
  baitSchema,
  floatSchema,
  hooksSchema,
  kitSchema,
  scaleSchema,
  tubSchema,
};

/** What is JSON is YAML, too (YAML 1.2.2, chapter 1.2), and takes less time to write. */
const read = (schema: z.ZodType, data: unknown) =>
  readSchema(schema, readYaml(JSON.stringify(data) ?? "", "content/any.yaml"));

function expectTold(messages: readonly Message[]): void {
  for (const message of messages) {
    expect(message.place.line).toBeGreaterThan(0);
    expect(worded(message).reason).not.toMatch(/undefined|\[object/);
  }
}

/** Keys that a schema has somewhere, and names that mean something to a program. */
const keysOf = (schema: object): string[] =>
  [...JSON.stringify(schema, (_, value) => value).matchAll(/"([a-z][a-z-]*)":/g)].map(([, key]) => key!);

const quantity = fc.constantFrom(
  "30 cm",
  "0.4 g",
  "45 s",
  "12 C",
  "10 ml",
  "10 m in 25 s",
  "1.02 g/cm3",
  "70 %",
  "30",
  "-1 m",
);
const leaf = fc.oneof(
  quantity,
  fc.constantFrom(
    "lead",
    "tin",
    "still",
    "bulk",
    "lift",
    "first",
    "bottom",
    "shot",
    "from memory",
    "2026-11-20",
    "plenty",
  ),
  fc.string(),
  fc.integer({ min: -5, max: 40 }),
  fc.constantFrom(null, true, 1e308, -0),
);

function anyOf(schema: object): fc.Arbitrary<unknown> {
  const key = fc.constantFrom(
    ...keysOf(schema),
    "__proto__",
    "constructor",
    "toString",
    "pattern",
    "size",
    "telltale",
  );
  const { value } = fc.letrec((tie) => ({
    value: fc.oneof(
      { depthSize: "small", withCrossShrink: true },
      leaf,
      fc.array(tie("value"), { maxLength: 4 }),
      fc.dictionary(key, tie("value"), { maxKeys: 4 }),
    ),
  }));
  return fc.oneof(value, fc.dictionary(key, value, { minKeys: 4, maxKeys: 25 }), fc.array(value));
}

describe("whatever a file holds is a value of its schema, or messages with their places and words", () => {
  it.each(Object.entries(schemas))("%s", (_, schema) => {
    fc.assert(
      fc.property(anyOf(schema), (data) => {
        const { value, messages } = read(schema, data);
        expect(value === undefined).toBe(messages.length > 0);
        expectTold(messages);
      }),
      { seed: 14, numRuns: 110 },
    );
  });
});

describe("what a schema asks for is read, all of it, and one thing wrong in it is told", () => {
  it.each(Object.entries(schemas))("%s", (_, schema) => {
    /** What no schema takes, and nothing at all. */
    const wrong = fc.constantFrom({ "no-such-key": [[]] }, undefined);
    fc.assert(
      fc.property(validValue(schema), wrong, fc.nat(), (data, put, number) => {
        expect(read(schema, data).messages).toEqual([]);
        const withChange = (change: Record<string, unknown>) =>
          Array.isArray(data)
            ? data.map((entry, at) => (at === number % data.length ? { ...entry, ...change } : entry))
            : { ...(data as object), ...change };
        const holder = Array.isArray(data) ? data[number % data.length] : data;
        const needed = Object.keys(holder ?? {}).filter(
          (key) => !schema.safeParse(withChange({ [key]: undefined })).success,
        );
        if (needed.length === 0) return;
        const { value, messages } = read(schema, withChange({ [needed[number % needed.length]!]: put }));
        expect(value).toBeUndefined();
        expectTold(messages);
      }),
      { seed: 14, numRuns: 50 },
    );
  });
});
