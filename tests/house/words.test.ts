import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import type { WordTree } from "../../src/report/words.ts";

const root = join(import.meta.dirname, "../..");

function keysOf(tree: WordTree, path = ""): string[] {
  return Object.entries(tree).flatMap(([key, node]) =>
    typeof node === "string" ? [`${path}${key}`] : keysOf(node, `${path}${key}.`),
  );
}

const tree = parse(readFileSync(join(root, "content/words/en.yaml"), "utf8")) as WordTree;
const keys = keysOf(tree);

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

/** Words asked for in the code by a plain key. */
const asked = new Set([...code.matchAll(/\bwords\(\s*"([^"]+)"/g)].map(([, key]) => key!));

/** Every quoted or templated text of the code that could be a key, as a pattern; gaps may be anything. */
const patterns = [...code.matchAll(/"([\w. -]+)"|`([^`\n]+)`/g)].map(([, plain, templated]) => {
  const text = plain ?? templated!;
  const escaped = text.split(/\$\{[^}]*\}/).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
  return { text, pattern: new RegExp(`^${escaped.join(".+")}$`), hasGap: escaped.length > 1 };
});

const plainTexts = new Set(patterns.filter(({ hasGap }) => !hasGap).map(({ text }) => text));
const gapped = patterns.filter(({ text, hasGap }) => hasGap && /^[\w-]+[.-]/.test(text));

describe("the words file", () => {
  it("has every word that the code asks for by name", () => {
    expect(asked.size).toBeGreaterThan(30);
    expect([...asked].filter((key) => !keys.includes(key))).toEqual([]);
  });

  it("has no word that nothing asks for", () => {
    const matches = (key: string) =>
      plainTexts.has(key) ||
      gapped.some(({ pattern, text }) => !text.startsWith("reason.") && pattern.test(key));
    const used = (key: string) =>
      matches(key) || (key.startsWith("reason.") && matches(key.slice("reason.".length)));
    expect(keys.filter((key) => !used(key))).toEqual([]);
  });

  it("words every reason of the core", () => {
    const core = [...code.matchAll(/\b(?:noAnswer|warning|fault)\(\s*"([^"]+)"/g)].map(
      ([, reason]) => `reason.${reason}`,
    );
    expect(core.length).toBeGreaterThan(10);
    expect(core.filter((key) => !keys.includes(key))).toEqual([]);
  });
});
