import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import formats from "ajv-formats";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import type { JsonSchema } from "../../src/content/schema/as-json-schema.ts";
import { fileKinds } from "../../src/content/schema/file-kinds.ts";
import { jsonSchemaOf, keysOf } from "../../src/content/schema/json-schema.ts";
import { type FileKind, keyNotes } from "../../src/content/schema/key-notes.ts";

const content = join(import.meta.dirname, "../../content");
const kinds = Object.keys(fileKinds) as FileKind[];
const ajv = formats.default(new Ajv2020({ strict: false, allErrors: true }));

/** Files of the shipped content of a kind, as data. */
function files(kind: FileKind): readonly (readonly [string, unknown])[] {
  const { folder, ending } = fileKinds[kind];
  const paths = folder
    ? readdirSync(join(content, folder)).map((name) => join(folder, name))
    : [`${kind}.yaml`];
  return paths.map((path) => {
    const text = readFileSync(join(content, path), "utf8");
    return [path, parse(ending === ".md" ? text.split(/^---$/m)[1]! : text)];
  });
}

/** Paths of all keys of a schema, however they are nested. */
function paths(schema: JsonSchema, path = ""): string[] {
  const named = Object.entries(schema.properties ?? {}).flatMap(([key, value]) => {
    const at = path === "" ? key : `${path}.${key}`;
    return [at, ...paths(value, at)];
  });
  const others = [schema.items, ...(schema.anyOf ?? []), ...(schema.oneOf ?? [])];
  return [...named, ...others.flatMap((one) => (one ? paths(one, path) : []))];
}

describe.each(kinds)("the schema of a %s", (kind) => {
  const validate = ajv.compile(jsonSchemaOf(kind));

  it("takes every file of the shipped content, by another reader of the standard", () => {
    const all = files(kind);
    expect(all.length).toBeGreaterThan(0);
    for (const [path, data] of all)
      expect([path, validate(data), validate.errors]).toEqual([path, true, null]);
  });

  it("refuses a key that there is not, and a file without one that it needs", () => {
    const [, data] = files(kind)[0]!;
    const whole = data as Record<string, unknown>;
    // A plan is called as its lesson is; rules for choosing, and notes of a day, have no name.
    const named: Partial<Record<FileKind, string>> = { plan: "aim", choosing: "basis", notes: "date" };
    const { [named[kind] ?? "title"]: needed, ...others } = whole;
    expect(needed).toBeDefined();
    expect(validate({ ...whole, unheard: 1 })).toBe(false);
    expect(validate(others)).toBe(false);
  });

  it("explains every key, and no other", () => {
    // A knot's picture has places and forms that the types in the code explain.
    const all = new Set(paths(jsonSchemaOf(kind)).filter((path) => !/^steps\.\w+\./.test(path)));
    expect(Object.keys(keyNotes[kind]).sort()).toEqual([...all].sort());
  });

  it("names the units of each quantity", () => {
    const units = keysOf(kind).filter(({ path }) =>
      /(?:strength|diameter|length|mass|depths|gap)$/.test(path),
    );
    for (const { path, form } of units.filter(({ form: one }) => !one.includes("group")))
      expect([path, form]).toEqual([path, expect.stringMatching(/such as .*\d (?:mm|cm|m|lb|g)\b/)]);
  });

  it("lists each key with what may stand there", () => {
    for (const { path, form } of keysOf(kind))
      expect([path, form]).toEqual([path, expect.stringMatching(/\w/)]);
  });
});
