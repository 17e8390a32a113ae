import { describe, expect, it } from "vitest";
import { blocksOf, hasNode, sectionsOf, sentencesOf } from "../../src/checks/blocks.ts";
import { readMarkdown } from "../../src/content/markdown-source.ts";

const text = `---
title: A text
---

## A heading

Alpha *bravo* charlie
delta **echo
foxtrot** golf.

- Hotel india
  juliett *kilo* lima
- Mike

| November | Oscar |
| --- | --- |
| Papa *quebec* | Romeo :figure[]{of=tip} sierra |

::table{}

Tango
`;
const { body } = readMarkdown(text, "a.md");
const bodyOf = (markdown: string) => readMarkdown(`---\ntitle: A\n---\n${markdown}`, "a.md").body;
const blocks = blocksOf(body, "a.md");

describe("the blocks of a text", () => {
  it("are its paragraphs, list items and cells, with one sign for a live figure", () => {
    expect(blocks.map(({ kind, text }) => [kind, text])).toEqual([
      ["paragraph", "Alpha bravo charlie\ndelta echo\nfoxtrot golf."],
      ["list item", "Hotel india\njuliett kilo lima"],
      ["list item", "Mike"],
      ["table cell", "November"],
      ["table cell", "Oscar"],
      ["table cell", "Papa quebec"],
      ["table cell", "Romeo \uFFFC sierra"],
      ["paragraph", "Tango"],
    ]);
  });

  it("know where each of their words stands in the file", () => {
    const lines = text.split("\n");
    let words = 0;
    for (const block of blocks) {
      for (const { 0: word, index } of block.text.matchAll(/\w+/g)) {
        const line = lines.findIndex((one) => one.includes(word));
        const place = { file: "a.md", line: line + 1, column: lines[line]!.indexOf(word) + 1 };
        expect(block.placeAt(index), word).toEqual(place);
        words += 1;
      }
    }
    expect(words).toBe(20);
  });

  it("are parted into sentences at a full stop before a space, not within a figure", () => {
    expect(sentencesOf({ text: "It is 1.5 m. Is it?  Yes" })).toEqual([
      { at: 0, text: "It is 1.5 m." },
      { at: 13, text: "Is it?" },
      { at: 21, text: "Yes" },
    ]);
  });
});

describe("a text", () => {
  it("is parted at its headings, without empty parts", () => {
    const parts = sectionsOf(bodyOf("One.\n\n## A\n\nTwo.\n\nThree.\n"));
    expect(parts.map(({ children }) => children.map(({ type }) => type))).toEqual([
      ["paragraph"],
      ["heading", "paragraph", "paragraph"],
    ]);
    expect(sectionsOf(bodyOf(""))).toEqual([]);
  });

  it("has a node or has none", () => {
    expect(hasNode(body, ({ type }) => type === "strong")).toBe(true);
    expect(hasNode(body, ({ type }) => type === "footnoteReference")).toBe(false);
  });
});
