import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import type { WordTree } from "../../src/model/word-tree.ts";
import { sentences } from "../support/words-tree.ts";

const root = join(import.meta.dirname, "../..");

const tree = parse(readFileSync(join(root, "content/words/en.yaml"), "utf8")) as WordTree;
const keys = sentences(tree).map(([key]) => key);

/** Parts that keep words of their own, so that what reads as elsewhere is no copy there. */
const ownWords = {
  "card.": "a card's labels are as short as its paper",
  "drawing.": "a picture's labels stand with the picture",
  "page.menu.": "the menu may say less than the title of the page it leads to",
  "sheet.": "a sheet's labels stand in columns of plain text",
};

/** What else may stand under two keys, and why it means two things. */
const twoMeanings = {
  Bait: "what the rig asks for, and a column of the list of baits",
  Fish: "the page of fish, and the column of fish beside their line",
  Floats: "the page of floats, and the row of a kit",
  "{way} in {time}": "how fast a stream runs, and how fast a bait sinks",
  "Rig cards": "a kind of thing to print, and a chapter of the booklet",
  Page: "what kind of thing was found, and the number at a sheet's foot",
  Search: "the page, and what its button does",
  "Spread bulk": "a rig's pattern, and a way to hang the same shot; each list is told whole",
  "Tip showing then": "a field to fill in, and a figure of a float",
  "lies flat": "a state, a run and a sign of the plummet; each list is told whole",
  Depth: "a field to fill in, and the head of a column",
  Rig: "what kind of thing was found, and the head of a column",
};

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

/** Code that draws, for pages and paper alike. */
const drawingCode = readdirSync(join(root, "src/drawing"), { recursive: true, encoding: "utf8" })
  .filter((path) => path.endsWith(".ts"))
  .map((path) => readFileSync(join(root, "src/drawing", path), "utf8"))
  .join("\n");

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

  it("says nothing under two keys that means one thing", () => {
    const shared = sentences(tree).filter(
      ([key]) => !Object.keys(ownWords).some((part) => key.startsWith(part)),
    );
    const keysOf = new Map<string, string[]>();
    for (const [key, said] of shared) keysOf.set(said, [...(keysOf.get(said) ?? []), key]);
    expect([...keysOf].filter(([said, found]) => found.length > 1 && !(said in twoMeanings))).toEqual([]);
  });
});

/** Sentences that are the same in both languages. */
const alikeInGerman = ["handout.fill-in.name", "page.printables.size", "printable.lesson.letter"];

describe("the German words", () => {
  const german = new Map(
    sentences(parse(readFileSync(join(root, "content/words/de.yaml"), "utf8")) as WordTree),
  );
  const english = new Map(sentences(tree));

  it("have no key that the English file has not", () => {
    expect([...german.keys()].filter((key) => !english.has(key))).toEqual([]);
  });

  it("lack no more than the newest: a German guide is told what stands in English", () => {
    const missing = [...english.keys()].filter((key) => !german.has(key));
    expect(missing.length, missing.join(", ")).toBeLessThan(english.size / 20);
  });

  it("have the gaps of the English ones", () => {
    const gaps = (sentence = "") =>
      [...new Set([...sentence.matchAll(/\{(\w+)(?:\}|, plural,)/g)].map(([, gap]) => gap))].sort();
    for (const [key, sentence] of german) expect(gaps(sentence), key).toEqual(gaps(english.get(key)));
  });

  it("leave no sentence in English", () => {
    const hasWords = (sentence: string) => /\p{L}{3}/u.test(sentence.replace(/\{\w+\}/g, ""));
    const alike = [...german].filter(([key, said]) => hasWords(said) && english.get(key) === said);
    expect(alike.map(([key]) => key).sort()).toEqual(alikeInGerman);
  });

  it("of pages is asked for by no drawing, as paper does not know when it changes", () => {
    expect(drawingCode).toMatch(/words\("drawing\./);
    expect(drawingCode.match(/["`]page\.[^"`]*/g)).toBeNull();
  });
});
