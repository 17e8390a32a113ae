import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import type { WordTree } from "../../src/model/word-tree.ts";
import { sentences } from "../support/words-tree.ts";

const root = (path: string) => join(import.meta.dirname, "../..", path);

const core = readdirSync(root("src/core"), { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".ts"))
  .map((path) => readFileSync(root(`src/core/${path}`), "utf8"))
  .join("\n");

const words = parse(readFileSync(root("content/words/en.yaml"), "utf8")) as { reason: WordTree };
const reasons = new Map(sentences(words.reason));

/** Codes as the core writes them; `${…}` in one stands for any text. */
const codes = [...core.matchAll(/\b(?:noAnswer|warning|fault)\(\s*(["`])([^"`]+)\1/g)].map(
  (found) => found[2]!,
);
const pattern = (code: string) =>
  new RegExp(`^${code.replaceAll(".", "\\.").replaceAll(/\$\{[^}]*\}/g, ".+")}$`);

describe("the reasons of the core", () => {
  it.each([...new Set(codes)])("%s has its sentence", (code) => {
    expect([...reasons.keys()].some((key) => pattern(code).test(key))).toBe(true);
  });

  it.each([...reasons])(
    "%s is a code that the core gives, with every figure that it names",
    (key, sentence) => {
      const given = core.includes(`"${key}"`) || codes.some((code) => pattern(code).test(key));
      expect(given).toBe(true);
      for (const [, gap] of sentence.matchAll(/\{(\w+)\}/g)) expect(core).toMatch(new RegExp(`\\b${gap}\\b`));
    },
  );
});
