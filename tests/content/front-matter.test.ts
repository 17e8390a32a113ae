import fc from "fast-check";
import type { Root } from "mdast";
import remarkFrontmatter from "remark-frontmatter";
import remarkParse from "remark-parse";
import { unified } from "unified";
import { expect, it } from "vitest";
import { solveChecked } from "../../src/build/build.ts";
import { checkSources } from "../../src/build/check-sources.ts";
import { disk } from "../../src/cli/disk.ts";
import { readMarkdown } from "../../src/content/markdown-source.ts";
import { readSources } from "../../src/content/world.ts";
import { readYaml } from "../../src/content/yaml-source.ts";
import { type Keep, makeAnew } from "../../src/model/kept.ts";
import { temporaryFolder, writeContent } from "../support/cli.ts";

// A general-purpose parser says what a front matter is: remark with remark-frontmatter.
const parser = unified().use(remarkParse).use(remarkFrontmatter, ["yaml"]);

/** What a text's front matter says, and the kinds of what comes after it. */
function asParsed(text: string) {
  const { children } = parser.parse(text) as Root;
  const [front, ...rest] = children;
  const isFront = front?.type === "yaml";
  return {
    data: isFront ? readYaml(front.value, "x.md").data : null,
    body: (isFront ? rest : children).map(({ type }) => type),
  };
}

function asRead(text: string) {
  const { front, body, messages } = readMarkdown(text, "x.md");
  const isMissing = messages.some(({ code }) => code === "no-front-matter");
  return { data: isMissing ? null : front.data, body: body.children.map(({ type }) => type) };
}

it("takes for a front matter what the parser of Markdown does, wherever its lines end", () => {
  const line = fc.constantFrom(
    "---",
    "--- ",
    "---\t",
    " ---",
    "----",
    "a: 1",
    "b: \0",
    "",
    "# c",
    "\ufeff---",
  );
  const lines = fc.array(line, { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(lines, fc.constantFrom("\n", "\r\n", "\r"), fc.boolean(), (typed, end, ends) => {
      const text = `${typed.join(end)}${ends ? end : ""}`;
      expect(asRead(text)).toEqual(asParsed(text));
    }),
    { numRuns: 200, seed: 12 },
  );
});

it("parses no text of the library that a guide leaves out", async () => {
  const facts = "title: Own\npublisher: Us\nedition: 2026-11-20\n";
  const chosen = "library: { lessons: none, rigs: none, pages: [safety] }\n";
  const folder = writeContent(temporaryFolder(), { "guide.yaml": `${facts}${chosen}` });
  const parsed: string[] = [];
  const keep: Keep = (kind, from, make) => {
    if (kind === "markdown") parsed.push(from);
    return makeAnew(kind, from, make);
  };
  const sources = await readSources(disk, [folder], "content");
  const { value } = await solveChecked(checkSources(sources, keep));
  const published = value && [...value.library.rigs, ...value.library.pages, ...value.library.floats];
  expect(parsed.length).toBeLessThanOrEqual(published?.length ?? 0);
});
