import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { findingTable } from "../../src/core/finding-table.ts";
import type { WordTree } from "../../src/model/word-tree.ts";
import { sentences } from "../support/words-tree.ts";

const root = (path: string) => join(import.meta.dirname, "../..", path);

const makers = ["core", "solve"].flatMap((room) =>
  readdirSync(root(`src/${room}`), { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts") && path !== "finding-table.ts")
    .map((path) => readFileSync(root(`src/${room}/${path}`), "utf8")),
);
const code = makers.join("\n");

const words = parse(readFileSync(root("content/words/en.yaml"), "utf8")) as { reason: WordTree };
const reasons = new Map(sentences(words.reason));
const rows = Object.entries(findingTable);

/** Codes that are put together of two parts where they are given. */
const composed = [/^float-density-(marked|measured)$/, /^float-weighed-against-(marked|measured)$/];

describe("what the core can find", () => {
  it("has a sentence each, and no sentence is left over", () => {
    expect([...reasons.keys()].sort()).toEqual(Object.keys(findingTable).sort());
  });

  it.each(rows)("%s is found somewhere", (name) => {
    expect(code.includes(`"${name}"`) || composed.some((pattern) => pattern.test(name))).toBe(true);
  });

  it.each(rows)("%s tells only values that it has", (name, { values }) => {
    const gaps = [...reasons.get(name)!.matchAll(/\{(\w+)\}/g)].map(([, gap]) => gap!);
    expect(gaps.filter((gap) => !(gap in values))).toEqual([]);
  });
});
