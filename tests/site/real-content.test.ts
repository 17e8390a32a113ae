import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { beforeAll, describe, expect, test } from "vitest";
import { parse } from "yaml";
import type { OutputFile } from "../../src/markup/output.ts";
import { brokenLinks } from "../support/links.ts";
import { realSiteFiles } from "./real-site.ts";

/** Words of the trade where they mean something else, the link's word in brackets: the senses that once went wrong. */
const otherSenses = [
  /open \[lock\]/i,
  /\[dust\] or pollen/i,
  /\[dust\] and old soap/i,
  /\[bed\] against the eye/i,
  /\[bed\] of food/i,
  /like a \[dart\]/i,
  /tiny \[anchor\]/i,
  /empty a \[tub\]/i,
  /before you \[shot\] a float/i,
];

describe("the site of the shipped content", () => {
  let files: ReadonlyMap<string, OutputFile["content"]>;

  beforeAll(async () => {
    files = await realSiteFiles();
  }, 120_000);

  test("every link and anchor leads to something, and none leaves the guide", () => {
    expect(brokenLinks(files)).toEqual([]);
  });

  test("a rig's page with all that it loads before anything is opened is under 150 kB as servers send it", () => {
    const bytes = (path: string) => gzipSync(files.get(path)!).length;
    const shared = [...files.keys()].filter((path) => /\/assets\/(?:(?:site|page|rig)\.|plex-)/.test(path));
    expect(shared).toHaveLength(5);
    const sharedBytes = shared.map(bytes).reduce((sum, size) => sum + size, 0);
    for (const path of files.keys()) {
      if (!/^site\/rigs\/(?!index).*\.html$/.test(path)) continue;
      expect(bytes(path) + sharedBytes, path).toBeLessThan(150_000);
    }
  });

  test("a float's page tells how thick its tip is and how much of it shows as the drawing beside it does", () => {
    const floats = String(files.get("site/floats.html")).split('<section class="float"').slice(1);
    expect(floats.length).toBeGreaterThan(10);
    for (const float of floats) {
      const plain = float.replace(/<[^>]*>/g, " ").replace(/\s+/g, " ");
      const [, told] = /Tip thickness ([\d.]+ mm)/.exec(plain)!;
      expect(plain).toContain(`tip ${told} thick`);
      const [, showing] = /Tip showing then ([\d.]+ mm)/.exec(plain)!;
      expect(plain).toContain(`${showing} of tip shows`);
    }
  });

  test("the page of cautions begins with what to do, and whom to ring with the club's own lines as guide.yaml has them", () => {
    const guide = parse(readFileSync("content/guide.yaml", "utf8")) as Record<string, string>;
    const safety = String(files.get("site/safety.html"));
    const headings = [...safety.matchAll(/<h2[^>]*>(.*?)<\/h2>/g)].map(([, text]) => text);
    expect(headings.slice(0, 2)).toEqual(["If it happens", "Whom to ring"]);
    const [, ring] = /id="whom-to-ring">([\s\S]*?)<h2/.exec(safety)!;
    for (const line of ["club-number", "access-point"] as const)
      expect(ring).toContain(`<td>${guide[line]}</td>`);
  });

  test("a phone keeps the coaches' plans once somebody has opened them, and not before", () => {
    const worker = String(files.get("site/sw.js"));
    const listed = (name: string) =>
      Object.keys(JSON.parse(new RegExp(`${name}=(\\{.*?\\})`).exec(worker)![1]!) as object);
    const isPlan = (path: string) => path.startsWith("plans/");
    expect(listed("guideFiles").filter(isPlan)).toEqual([]);
    expect(listed("guideFilesOnDemand").filter(isPlan)).toHaveLength(35);
  });

  test("all that a phone keeps, its pictures of fish, baits and signs among it, is under 6 MB", () => {
    const list = /guideFiles=(\{.*?\})/.exec(String(files.get("site/sw.js")))![1]!;
    const kept = Object.keys(JSON.parse(list) as object).map((path) => files.get(`site/${path}`)!);
    expect(kept.length).toBeGreaterThan(80);
    // Cards have no content here; 30 kB each is half as much again as they are.
    const bytes = kept.reduce((sum, content) => sum + (Buffer.byteLength(content) || 30_000), 0);
    expect(bytes).toBeLessThan(6_000_000);
  });

  test("no word is a link to the glossary where it stands in another sense than there", () => {
    const pages = [...files].filter(([path]) => path.endsWith(".html")).map(([, content]) => String(content));
    const links = pages.flatMap((page) => [
      ...page.matchAll(/.{0,40}<a class="term" href="[^"]*#([\w-]+)">([^<]*)<\/a>.{0,30}/gs),
    ]);
    expect(links.length).toBeGreaterThan(400);
    const read = links.map(([found, , word]) =>
      found.replace(/<a class="term"[^>]*>/, "[").replace(`${word}</a>`, `${word}]`),
    );
    const wrong = read.filter((text) => otherSenses.some((sense) => sense.test(text.replace(/\s+/g, " "))));
    expect(wrong).toEqual([]);
    // The texts do use those words so; a sense that nobody writes any more has no place in the list.
    const texts = pages.join(" ").replace(/\s+/g, " ");
    expect(
      otherSenses.filter((sense) => !new RegExp(sense.source.replace(/\\[[[\]]/g, ""), "i").test(texts)),
    ).toEqual([]);
  });

  test("no page says undefined, NaN or shows a gap that nothing filled", () => {
    for (const [path, content] of files) {
      if (!path.endsWith(".html")) continue;
      // What the page's script says later waits, with its gaps, in attributes of its own.
      const shown = String(content).replace(/ data-[a-z-]+="[^"]*"/g, "");
      expect(shown, path).not.toMatch(/undefined|NaN|\{[a-z]+\}/);
    }
  });
});
