import { HtmlValidate } from "html-validate";
import { beforeAll, describe, expect, test } from "vitest";
import { siteFile } from "../../src/site/site-files.tsx";
import { brokenLinks } from "../support/links.ts";
import { sampleFiles, sampleLibrary, sampleSite } from "./sample-site.ts";

const files = new Map<string, string | Uint8Array>();

beforeAll(async () => {
  for (const { path, content } of await sampleFiles()) files.set(path, content);
  for (const { path } of (await sampleSite()).printables) files.set(path, "");
});

function page(path: string): string {
  return String(files.get(path));
}

test("a guide without lessons leads to none from its menu, its foot and its first page", async () => {
  const input = await sampleSite();
  const home = siteFile("site/index.html", { ...input, library: { ...input.library, lessons: [] } })!;
  expect(String(home.content)).not.toMatch(/lessons\/|Lessons<|lesson 1|lessons in order/);
});

test("a list of some rigs shows a picture of each, one of very many none", async () => {
  const input = await sampleSite();
  const { rigs } = input.library;
  const listOf = (count: number) => {
    const some = Array.from({ length: count }, (_, at) => rigs[at % rigs.length]!);
    const list = siteFile("site/rigs/index.html", { ...input, library: { ...input.library, rigs: some } })!;
    return String(list.content);
  };
  const pictures = (html: string) => html.match(/class="small-picture"/g)?.length ?? 0;
  expect(pictures(listOf(rigs.length))).toBe(rigs.length);
  expect(pictures(listOf(300))).toBe(0);
  expect(listOf(300).match(/class="rig-summary"/g)).toHaveLength(300);
});

describe("the pages of the site", () => {
  test("there is one for every rig, lesson and page of the library, and the lists", () => {
    const pages = [...files.keys()].filter((path) => path.endsWith(".html")).sort();
    expect(pages).toEqual([
      "site/404.html",
      "site/baits.html",
      "site/fish.html",
      "site/floats.html",
      "site/glossary.html",
      "site/index.html",
      "site/knots.html",
      "site/lessons/first.html",
      "site/lessons/index.html",
      "site/lessons/second.html",
      "site/licences.html",
      "site/on-this-phone.html",
      "site/printables.html",
      "site/rigs/avon-bulk.html",
      "site/rigs/index.html",
      "site/rigs/stick-shirt-button.html",
      "site/rigs/waggler-strung-out.html",
      "site/safety.html",
      "site/search.html",
      "site/shot.html",
      "site/try.html",
      "site/what-the-float-says.html",
    ]);
  });

  test("every page is valid HTML by the rules of html-validate", async () => {
    const validator = new HtmlValidate({ extends: ["html-validate:standard", "html-validate:a11y"] });
    for (const [path, content] of files) {
      if (!path.endsWith(".html")) continue;
      const report = await validator.validateString(String(content), path);
      const complaints = report.results.flatMap(({ messages }) =>
        messages.map(
          ({ line, column, ruleId, message }) => `${path}:${line}:${column} ${ruleId}: ${message}`,
        ),
      );
      expect(complaints).toEqual([]);
    }
  });

  test("no page may run or load anything but the guide's own files, without an exception", () => {
    for (const [path, content] of files) {
      if (!path.endsWith(".html")) continue;
      const [, written] = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(String(content))!;
      const policy = written!.replaceAll("&#x27;", "'");
      for (const directive of policy.split("; ")) {
        expect(directive, path).toMatch(/^[a-z]+(?:-[a-z]+)* (?:'none'|'self')$/);
      }
      expect(policy, path).toMatch(/^default-src 'none'; script-src 'self';/);
    }
  });

  test("every link and anchor leads to something, and none leaves the guide", () => {
    expect(brokenLinks(files, sampleLibrary.guide.siteAddress)).toEqual([]);
  });

  test("no page holds a script or a style of its own", () => {
    for (const [path, content] of files) {
      if (!path.endsWith(".html")) continue;
      expect(String(content), path).not.toMatch(/<script(?![^>]* src=)|<style|\sstyle=|\son[a-z]+=/);
    }
  });

  test("a rig's page gives the figures of every depth", () => {
    const html = page("site/rigs/waggler-strung-out.html");
    expect(html).toContain('id="depth-150"');
    expect(html).toContain('id="depth-300"');
    // Float to hook 2815 mm and the lock of two BB and two No 4, as the sample rig has them.
    expect(html).toContain("282 cm");
    expect(html).toContain("2\u00a0×\u00a0BB\u00a0+ 2\u00a0×\u00a0No\u00a04");
    expect(html).toContain("BB\u00a0+ No\u00a04 above, BB\u00a0+ No\u00a04 below");
  });

  test("a rig's page links its card, and a rig without a card links none", () => {
    expect(page("site/rigs/waggler-strung-out.html")).toContain('href="../cards/waggler-strung-out.pdf"');
    expect(page("site/rigs/avon-bulk.html")).not.toContain(".pdf");
  });

  test("links between content files lead to the pages that show them", () => {
    const html = page("site/lessons/first.html");
    expect(html).toContain('href="../safety.html"');
    expect(html).toContain('href="../rigs/waggler-strung-out.html#notes-how-it-works"');
    expect(html).toContain('href="second.html"');
  });

  test("a word of the glossary is a link where it is first used, an everyday word never", () => {
    const html = page("site/lessons/first.html");
    expect(html.match(/glossary\.html#hook-length"/g)).toHaveLength(1);
    expect(html).toContain("Tie the ");
    expect(html).not.toContain("glossary.html#tie");
    expect(page("site/glossary.html")).toContain('id="tie"');
  });

  test("the scales that differ on a size are named, those that agree are not", () => {
    const rows = page("site/shot.html").split("<tr>");
    expect(rows.find((row) => row.includes("No 8"))).toContain("they differ");
    expect(rows.find((row) => row.includes("AAA"))).not.toContain("they differ");
  });
});

test("the feed tells what is new, with the address of its page", () => {
  const feed = page("site/feed.xml");
  expect(feed).toContain("<title>A new lesson</title>");
  expect(feed).toContain('href="https://makebelieve.example/guide/lessons/second.html"');
  expect(feed).toContain("<updated>2026-11-20T00:00:00Z</updated>");
});

/** Where the sample guide says that it is served. */
const published = (path: string) => `${sampleLibrary.guide.siteAddress}${path.replace("site/", "")}`;

// Source: the sitemaps.org protocol 0.9: one <url> with its <loc> for each page, dates as W3C dates.
test("the site map has every page once, at its published address, with the day of the edition", () => {
  const map = page("site/sitemap.xml");
  const places = [...map.matchAll(/<loc>([^<]*)<\/loc>/g)].map(([, place]) => place);
  // The page for addresses where there is nothing is no place to go to.
  const pages = [...files.keys()].filter((path) => path.endsWith(".html") && path !== "site/404.html");
  expect(places.toSorted()).toEqual(pages.map(published).toSorted());
  expect(map.match(/<lastmod>\d{4}-\d\d-\d\d<\/lastmod>/g)).toHaveLength(pages.length);
});

// Source: the Open Graph protocol, basic metadata: title, type, url and image, the last two as whole addresses.
test("every page has a title, a description, its address and a picture for sharing", () => {
  const told = (html: string, property: string) =>
    html.match(new RegExp(`<meta property="og:${property}" content="([^"]+)"`))?.[1];
  for (const path of [...files.keys()].filter((one) => one.endsWith(".html"))) {
    expect(told(page(path), "title"), path).toBeTruthy();
    expect(told(page(path), "description"), path).toBeTruthy();
    expect(told(page(path), "type"), path).toMatch(/^(website|article)$/);
    expect(told(page(path), "url"), path).toBe(published(path));
    // The one rig of the sample that has a card.
    expect(told(page(path), "image"), path).toBe(published("site/previews/waggler-strung-out-front.png"));
  }
});

// Source: W3C Web Application Manifest; a browser that installs asks for a name, icons, a start and a display mode.
test("the manifest has what a phone needs to put the guide on its home screen", () => {
  const manifest = JSON.parse(page("site/manifest.webmanifest"));
  expect(manifest).toMatchObject({ name: sampleLibrary.guide.title, display: "standalone", scope: "./" });
  expect(manifest.short_name.length).toBeLessThanOrEqual(30);
  expect(files.has(`site/${manifest.start_url}`)).toBe(true);
  expect(manifest.icons.length).toBeGreaterThan(0);
  expect(page("site/index.html")).toContain('rel="manifest" href="manifest.webmanifest"');
});

test("a file to print is shown as a small page, which a browser fetches once it comes into view", async () => {
  const input = await sampleSite();
  const [card, ...others] = input.printables;
  const smallPage = { path: "site/previews/cards/one.svg", widthMm: 53.98, heightMm: 85.6 };
  const printables = [{ ...card!, smallPage }, ...others];
  const { content } = siteFile("site/printables.html", { ...input, printables })!;
  expect(String(content)).toContain(
    '<img src="previews/cards/one.svg" width="54" height="86" alt="" loading="lazy" decoding="async">',
  );
  expect(String(content).match(/<img/g)).toHaveLength(1);
});

// A ball of 0.40 g of tin (7.29 g/cm³, CRC Handbook; from memory) is 4.71 mm across: (6 · 0.4 / (π · 7.29))^(1/3) cm.
test("shot are shown as large as they are, where they are told and where they are ticked", () => {
  const row = /<th scope="row">BB<\/th><td>tin<\/td>.*?<\/tr>/.exec(page("site/shot.html"))?.[0] ?? "";
  expect(Number(/<svg[^>]* width="([\d.]+)mm"/.exec(row)?.[1])).toBeCloseTo(4.71, 1);
  expect(row).toContain("</svg> 4.7");
  expect(page("site/rigs/waggler-strung-out.html")).toContain('BB <svg class="shot-disc"');
});
