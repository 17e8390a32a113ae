import { describe, expect, it } from "vitest";
import { outputFiles } from "../../src/build/build.ts";
import { formatReport } from "../../src/checks/reporter.ts";
import { cardContent } from "../../src/print/cards/card-content.ts";
import { contentWith, edited, solveWith } from "../support/smallest-content.ts";

const assets = new Map(["icon.svg", "site.css", "service-worker.js"].map((name) => [name, ""] as const));

/** Pages by their path, without the hashes in their addresses and what one of them tells of the size of others. */
async function pages(changes: Readonly<Record<string, string | null>>): Promise<ReadonlyMap<string, string>> {
  const { value, messages } = await solveWith(changes);
  if (!value) throw new Error(formatReport(messages));
  expect(messages).toEqual([]);
  const found = new Map<string, string>();
  for await (const { path, content } of outputFiles(value, { date: "2026-11-20", siteAssets: assets })) {
    if (path.endsWith(".html"))
      found.set(path, String(content).replace(/\.[\da-f]{8,}\.| data-bytes="\d+"/g, "."));
  }
  return found;
}

const foot = (html: string) => /<footer class="foot">([\s\S]*)<\/footer>/.exec(html)?.[1] ?? "";
const withoutFoot = (html: string) => html.replace(foot(html), "");

describe("a part of a card that a guide words itself", () => {
  it("is any sentence of it alone, such as its last line", async () => {
    const own = "  own-line: Ask for {publisher} at the gate.";
    const words = contentWith()["words/en.yaml"]!.replace(/^ {2}own-line: .*$/m, own);
    const { value } = await solveWith({ "words/en.yaml": words });
    const { rigs, library, kit } = value!;
    const card = cardContent(rigs[0]!, library.guide, kit, {});
    expect(card.publisher).toBe("Ask for Test club at the gate.");
  });
});

describe("a part of a page that a guide writes itself", () => {
  it("is the foot of every page, with its facts, its links as seen from the page, and our last lines below", async () => {
    const visit = 'visit: { address: "1 Makebelieve Lane", hours: [Mo 9:00] }';
    const guide = edited("guide.yaml", "edition:", `${visit}\nedition:`);
    const before = await pages(guide);
    const after = await pages({
      ...guide,
      "templates/foot.md":
        "Made by :guide[]{of=publisher}, :guide[]{of=edition}. Find us: :guide[]{of=address}, :guide[]{of=hours}.\n\nBegin with [our rig](../rigs/plain.md).\n",
    });
    expect(after.size).toBeGreaterThan(10);
    expect([...after.keys()]).toEqual([...before.keys()]);
    for (const [path, html] of after) {
      expect(withoutFoot(html), path).toBe(withoutFoot(before.get(path)!));
      expect(foot(html), path).toContain(
        "Made by Test club, 20 November 2026. Find us: 1 Makebelieve Lane, Mo 9:00.",
      );
      expect(foot(html), path).not.toContain("<nav");
      expect(foot(html), path).toMatch(/licences\.html/);
    }
    expect(foot(after.get("site/lessons/first.html")!)).toContain('href="../rigs/plain.html"');
    expect(foot(after.get("site/rigs/plain.html")!)).toContain('href="plain.html"');
  });

  it("is the head of every page beside the mark that leads home, with its facts and its links, and nothing else changes", async () => {
    const before = await pages({});
    const after = await pages({
      "templates/head.md": "**:guide[]{of=publisher}**, [our rig](../rigs/plain.md)\n",
    });
    const head = /(?:<div class="brand-beside">)?<a class="brand"[\s\S]*?(?=<nav class="menu")/;
    expect([...after.keys()]).toEqual([...before.keys()]);
    for (const [path, html] of after) {
      expect(html.replace(head, ""), path).toBe(before.get(path)!.replace(head, ""));
      const [own] = head.exec(html)!;
      expect(own, path).toMatch(
        /^<div class="brand-beside"><a class="brand" href="[^"]*" aria-label="Test guide"/,
      );
      expect(own, path).toContain("<strong>Test club</strong>, <a ");
      expect(own, path).not.toContain("Test guide<");
    }
    expect(after.get("site/lessons/first.html")).toContain('href="../rigs/plain.html">our rig</a>');
  });

  it("is the first page below its title, with live figures and drawings, and no other page", async () => {
    const before = await pages({});
    const after = await pages({
      "templates/home.md":
        '## Come in\n\nThe tip shows :figure[]{rig=plain depth="1 m" of=tip}.\n\n::rig-drawing{rig=plain depth="1 m"}\n',
    });
    const home = after.get("site/index.html")!;
    expect(home).toContain("<h1>Test guide</h1>");
    expect(home).toMatch(/<h2 id="come-in">Come in<\/h2>\s*<p>The tip shows 20 mm/);
    expect(home).toContain("<figure");
    expect(home).not.toContain("water.js");
    for (const [path, html] of after) if (path !== "site/index.html") expect(html).toBe(before.get(path)!);
  });

  it.each([
    ["a fact that the guide has not", "Find us: :guide[]{of=adress}.", '1:10 error "adress"', "publisher"],
    ["a link that leads nowhere", "See [it](../rigs/plan.md).", '1:5 error "plan"', "plain"],
    ["HTML", "A <b>word</b>.", "1:3 error", ""],
    ["a sign that no font has", "A ★ here.", "1:3 error", ""],
  ])("with %s is an error at its place", async (_, text, at, allowed) => {
    const { value, messages } = await solveWith({ "templates/foot.md": `${text}\n` });
    expect(value).toBeUndefined();
    const told = messages.map(
      ({ severity, place: { file, line, column }, values }) =>
        `${file}:${line}:${column} ${severity} ${JSON.stringify(values)}`,
    );
    expect(told[0]).toContain(`content/templates/foot.md:${at.split(" ")[0]} error`);
    expect(told[0]).toContain(allowed);
  });

  it("by another name is not read, and told", async () => {
    const { messages } = await solveWith({ "templates/feet.md": "x\n", "templates/masthead.md": "x\n" });
    const report = formatReport(messages);
    expect(report).toContain("did you mean foot.md?");
    expect(report).toContain("hint: templates are foot.md, head.md, home.md");
  });
});
