import type { Root } from "mdast";
import { describe, expect, test } from "vitest";
import { checkSources } from "../../../src/build/check-sources.ts";
import { isComment } from "../../../src/checks/markdown-allowed.ts";
import { formatReport } from "../../../src/checks/reporter.ts";

import { markdownToHast } from "../../../src/site/markdown.ts";
import { renderDocument } from "../../../src/site/render.ts";
import { fromHast } from "../../../src/site/to-hast.ts";
import { lesson } from "../../checks/checked.ts";
import { contentWith, sourcesOf } from "../../support/smallest-content.ts";
import { plain, readPdf } from "../read-pdf.ts";
import { handoutsOf, samplePress } from "./sample-lesson.ts";

const readFiles = (changes: Parameters<typeof contentWith>[0]) =>
  checkSources(sourcesOf(contentWith(changes)));

const read = async (markdown: string) => {
  const { value, messages } = await readFiles(lesson(markdown));
  return { value: value?.library, messages };
};

/** The words of a text as its page on the site has them. */
function onSite(body: Root): string {
  const options = {
    path: "content/lessons/first.md",
    level: 2,
    idPrefix: "",
    nextTableName: () => "Table",
    href: (target: string) => target,
    pictures: () => [],
    film: () => [],
    image: () => {
      throw new Error("no picture of its own is in these texts");
    },
    linkTerms: () => undefined,
  };
  const html = renderDocument(markdownToHast(body, options).map(fromHast));
  return plain(
    html
      .replace(/<[^>]*>/g, " ")
      .replace(/&#x3C;/g, "<")
      .replace(/&#x26;/g, "&"),
  );
}

/** Source: the constructs of CommonMark 0.31 and GFM 0.29, section by section. */
const allowed: Readonly<Record<string, readonly [markdown: string, words: readonly string[]]>> = {
  "a thematic break": ["Above it.\n\n---\n\nBelow it.", ["Above it.", "Below it."]],
  "headings of two levels": [
    "## Part one\n\n### Half of it\n\n## Part two",
    ["Part one", "Half of it", "Part two"],
  ],
  "headings from the first level": ["# Part one\n\n## Half of it", ["Part one", "Half of it"]],
  "an underlined heading": ["Part one\n--------", ["Part one"]],
  "an indented code block": ["Words:\n\n    tip 2\n      tip 3", ["tip 2", "tip 3"]],
  "a fenced code block": ["```text\nfloat: quill\n\n  tip: 3 mm\n```", ["float: quill", "tip: 3 mm"]],
  "a comment": ["Before. <!-- check this --> After.\n\n<!-- and\nthis -->", ["Before.", "After."]],
  "a link by reference": [
    "[The words][a] and [b].\n\n[a]: first.md\n[b]: first.md",
    ["The words", "and", "b"],
  ],
  "a paragraph over lines": ["One line\ngoes on.", ["One line goes on."]],
  "a table": ["| a | b |\n| :- | -: |\n| cell c | cell d |", ["cell c", "cell d"]],
  "a quotation": ["> Quoted words.\n>\n> - a point\n>\n> > Deeper.", ["Quoted words.", "a point", "Deeper."]],
  "a nested list": [
    "1. first\n   - inner one\n     1. inmost\n2. second",
    ["first", "inner one", "inmost", "second"],
  ],
  "a list that starts later": ["3) third\n4) fourth", ["third", "fourth"]],
  "a list of blocks": [
    "- One.\n\n  More of one.\n\n  ```\n  code of it\n  ```",
    ["More of one.", "code of it"],
  ],
  "a table in a list": ["- Words\n\n  | a | b |\n  | - | - |\n  | c1 | d1 |", ["c1", "d1"]],
  "code in a line": ["Write `:figure` here.", ["Write", ":figure", "here."]],
  emphasis: ["*soft* and **loud** and ***both***", ["soft", "loud", "both"]],
  "a bare address": ["See https://source.example/a now.", ["https://source.example/a"]],
  "hard line breaks": [
    "One line\\\nand the next  \nand **the last**",
    ["One line", "and the next", "the last"],
  ],
  "a break in a list, a cell of bold words and a heading": [
    "- one\\\n  two\n- three",
    ["one", "two", "three"],
  ],
  "signs of HTML": ["Less &lt; more &amp; \\*starred\\*", ["Less < more & *starred*"]],
};

describe("what is allowed stands on the page and in the handout", () => {
  test.each(Object.entries(allowed))("%s", async (_, [markdown, words]) => {
    const { value, messages } = await read(markdown);
    expect(messages).toEqual([]);
    const [first] = value!.lessons;
    const files = await handoutsOf([first!], samplePress());
    const { pages } = await readPdf(files.get("handouts/first-a5.pdf")!);
    const printed = pages.map(({ text }) => text).join(" ");
    for (const word of words) {
      expect(onSite(first!.body)).toContain(word);
      expect(printed).toContain(word);
    }
  });

  test("lines that an author broke off stay broken off", async () => {
    const files = await handoutsOf((await read("One line\\\nand the next")).value!.lessons, samplePress());
    const { pieces } = (await readPdf(files.get("handouts/first-a5.pdf")!)).pages[0]!;
    const y = (text: string) => pieces.find((piece) => piece.text.startsWith(text))!.y;
    expect(y("One line")).toBeGreaterThan(y("and the next"));
  });
});

/** Markdown that neither shows: where the message stands, and a part of it and of its hint. */
const leftOut: Readonly<Record<string, readonly [markdown: string, at: string, ...said: string[]]>> = {
  "a block of HTML": [
    "<div>\nWords.\n</div>",
    "8:1",
    "HTML is shown neither on pages nor on paper",
    "in Markdown",
  ],
  "HTML in a line": ["A <b>bold</b> word.", "8:3", "HTML is shown neither"],
  "a comment with HTML after it": ["<!-- a --> <hr>", "8:1", "HTML is shown neither"],
  "a footnote": ["Words.[^1]\n\n[^1]: More.", "8:7", "a footnote has no foot", "say it in the sentence"],
  "struck-out words": ["Not ~~this~~ that.", "8:5", "struck-out words", "take them out"],
  "boxes to tick": ["- [ ] rod\n- [x] reel", "8:1", "no boxes to tick", "take the [ ] out"],
  "a fenced directive": [":::note\nWords.\n:::", "8:1", ":::", "on a line of its own"],
  "a heading three levels down": [
    "## A\n\n### B\n\n#### C",
    "12:1",
    "a heading with ####",
    "use ## for the parts",
  ],
  "a heading above the first": ["### A\n\n## B", "10:1", "a heading with ##", "use ### for the parts"],
};

describe("what is not is an error at its place", () => {
  test.each(Object.entries(leftOut))("%s", async (_, [markdown, at, ...said]) => {
    const { messages } = await read(markdown);
    const report = formatReport(messages);
    expect(report).toMatch(new RegExp(`^content/lessons/first\\.md\n +${at}  error`));
    for (const part of said) expect(report).toContain(part);
  });

  test("in notes beside an entry too", async () => {
    const bait =
      "title: grub\nmass: 0.05 g\ndensity: 1.02 g/cm3\nbasis: from memory\nnotes: A ~~dead~~ grub.\n";
    const { messages } = await readFiles({ "baits/grub.yaml": bait });
    expect(messages.map(({ place, code }) => [place.file, place.line, place.column, code])).toEqual([
      ["content/baits/grub.yaml", 5, 10, "markdown-left-out"],
    ]);
  });
});

test.each([
  ["<!-- a -->", true],
  ["<!-- a\nb --> <!-- c -->", true],
  ["<!-- a --><b>", false],
  ["<!-->", false],
])("%j is a comment: %s", (html, comment) => {
  expect(isComment(html)).toBe(comment);
});
