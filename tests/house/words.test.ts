import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import type { WordTree } from "../../src/model/word-tree.ts";
import { sentences } from "../support/words-tree.ts";

const root = join(import.meta.dirname, "../..");

const tree = parse(readFileSync(join(root, "content/words/en.yaml"), "utf8")) as WordTree;
const keys = sentences(tree).map(([key]) => key);

const code = ["src", "templates"]
  .flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: "utf8" }).map((path) =>
      join(root, folder, path),
    ),
  )
  .filter((path) => /\.tsx?$/.test(path))
  .map((path) => readFileSync(path, "utf8"))
  .join("\n")
  .replace(/\/\*\*[\s\S]*?\*\//g, "");

/** Every quoted text of the code. */
const plainTexts = new Set([...code.matchAll(/"([\w. -]+)"/g)].map(([, text]) => text!));

/** Every templated text of the code that could be a key; its gaps may be anything. */
const templates = [...code.matchAll(/`([\w-]+[.-][^`\n]*\$\{[^`\n]*)`/g)].map(([, text]) => {
  const parts = text!.split(/\$\{[^}]*\}/).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  return new RegExp(`^${parts.join(".+")}$`);
});

/** Templates that only make reasons are no sign that a word outside them is used. */
const reasonTemplate = "^reason\\.";

describe("the words file", () => {
  it("has keys of one style", () => {
    const parts = new Set(keys.flatMap((key) => key.split(".")));
    expect([...parts].filter((part) => !/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(part))).toEqual([]);
  });

  it("has no word that nothing asks for", () => {
    const own = templates.filter(({ source }) => !source.startsWith(reasonTemplate));
    // Pages look their words up below `page.`; reasons of the core have a test of their own.
    const asks = (key: string) => plainTexts.has(key) || own.some((pattern) => pattern.test(key));
    const used = (key: string) => asks(key) || (key.startsWith("page.") && asks(key.slice("page.".length)));
    expect(keys.filter((key) => !key.startsWith("reason.") && !used(key))).toEqual([]);
  });
});
