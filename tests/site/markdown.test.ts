import type { Paragraph, Root } from "mdast";
import remarkParse from "remark-parse";
import { unified } from "unified";
import { expect, test } from "vitest";
import { termLinker } from "../../src/site/glossary-links.ts";
import { type MarkdownOptions, markdownToHast } from "../../src/site/markdown.ts";
import { relativeHref } from "../../src/site/paths.ts";
import { renderDocument } from "../../src/site/render.ts";
import { fromHast } from "../../src/site/to-hast.ts";

function html(text: string | Root, options: Partial<MarkdownOptions> = {}): string {
  const body = typeof text === "string" ? unified().use(remarkParse).parse(text) : text;
  const nodes = markdownToHast(body, {
    path: "content/lessons/first.md",
    level: 2,
    idPrefix: "",
    nextTableName: () => "Table",
    href: (target) => target,
    pictures: () => [],
    film: () => [],
    image: () => {
      throw new Error("no picture of its own is in these texts");
    },
    linkTerms: () => undefined,
    ...options,
  });
  return renderDocument(nodes.map(fromHast)).replace("<!doctype html>", "");
}

const seenFromFirst = (target: string) => relativeHref("site/lessons/first.html", target);

const terms = [
  { forms: ["hook length", "hook link"], address: "#hook-length" },
  { forms: ["hook"], address: "#hook" },
];

test("a link to a content file leads to its page, with its anchor", () => {
  expect(html("[x](../rigs/stick.md#notes-a)")).toContain('href="site/rigs/stick.html#notes-a"');
});

test("a link to an entry of a list leads to its place on the list", () => {
  expect(html("[x](../floats/stick.yaml)")).toContain('href="site/floats.html#stick"');
});

test("a link to another host and a link within the page stay as they are", () => {
  expect(html("[x](https://a.example/b.md) [y](#z)", { href: seenFromFirst })).toMatch(
    /href="https:\/\/a\.example\/b\.md".*href="#z"/,
  );
});

test("a link by a scheme that no guide follows leads nowhere, by reference too", () => {
  const page = html("[x](javascript:alert(1)) [y][z]\n\n[z]: data:text/html,x");
  expect(page).not.toMatch(/javascript:|data:/);
});

test("the highest heading of a text gets the level of its place", () => {
  expect(html("# A\n\n## B", { level: 3, idPrefix: "n-" })).toMatch(/<h3 id="n-a">A<\/h3>\s*<h4 id="n-b">B/);
});

test("the first use of a word of the glossary is a link, the next is not", () => {
  const made = html("A hook length. Another hook length.", { linkTerms: termLinker(terms) });
  expect(made.match(/href="#hook-length"/g)).toHaveLength(1);
});

test("a word that one text of a page links stays plain in the page's next text", () => {
  const linkTerms = termLinker(terms);
  html("A hook length.", { linkTerms });
  expect(html("A hook length and a hook.", { linkTerms })).toBe(
    '<p>A hook length and a <a class="term" href="#hook">hook</a>.</p>\n',
  );
});

test("the longest word wins, and forms of one word count as one", () => {
  const made = html("A Hook length and a hook link.", { linkTerms: termLinker(terms) });
  expect(made).toContain('<a class="term" href="#hook-length">Hook length</a>');
  expect(made).not.toContain('href="#hook"');
});

test("a text that leads to a word's meaning itself gets no second link to it", () => {
  const made = html("A [hook](#hook). Another hook.", { linkTerms: termLinker(terms), href: seenFromFirst });
  expect(made).toBe('<p>A <a href="#hook">hook</a>. Another hook.</p>\n');
});

test("words that their author marks as of another sense stay plain, and the next in the glossary's sense is a link", () => {
  const marked: Root = {
    type: "root",
    children: [
      {
        type: "paragraph",
        children: [
          { type: "text", value: "Off the " },
          { type: "text", value: "hook", data: { hName: "span", hProperties: { className: ["unlinked"] } } },
          { type: "text", value: ", a hook." },
        ],
      },
    ],
  };
  expect(html(marked, { linkTerms: termLinker(terms) })).toBe(
    '<p>Off the hook, a <a class="term" href="#hook">hook</a>.</p>\n',
  );
});

test("words in headings, links, code and inside other words stay plain", () => {
  expect(html("# hook\n\n[hook](#a) `hook` hooked un-hook", { linkTerms: termLinker(terms) })).not.toContain(
    'class="term"',
  );
});

test("markup in the text of a lesson is not passed on", () => {
  expect(html("<script>alert(1)</script> a < b")).not.toContain("<script>");
});

test("a sign for where a figure comes from is a link with a name to where it is explained", () => {
  const body: Root = unified().use(remarkParse).parse("It is 5 cm");
  const sign = { type: "basisSign", sign: "†", spoken: "(common practice)" } as const;
  (body.children[0] as Paragraph).children.push({
    ...sign,
    url: "../pages/about-figures.md#common-practice",
  });
  expect(html(body, { linkTerms: termLinker([{ forms: ["†"], address: "#x" }]) })).toBe(
    '<p>It is 5 cm<a class="basis" href="site/about-figures.html#common-practice" title="(common practice)" aria-label="(common practice)">†</a></p>\n',
  );
});
