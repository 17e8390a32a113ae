import { gzipSync } from "node:zlib";
import { beforeAll, describe, expect, test } from "vitest";
import type { OutputFile } from "../../src/markup/output.ts";
import { brokenLinks } from "../support/links.ts";
import { realSiteFiles } from "./real-site.ts";

describe("the site of the shipped content", () => {
  let files: Map<string, OutputFile["content"]>;

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

  test("all that a phone keeps is under 5 MB", () => {
    const list = /guideFiles=(\{.*?\})/.exec(String(files.get("site/sw.js")))![1]!;
    const kept = Object.keys(JSON.parse(list) as object).map((path) => files.get(`site/${path}`)!);
    expect(kept.length).toBeGreaterThan(80);
    // Cards have no content here; 30 kB each is half as much again as they are.
    const bytes = kept.reduce((sum, content) => sum + (Buffer.byteLength(content) || 30_000), 0);
    expect(bytes).toBeLessThan(5_000_000);
  });

  test("no page says undefined, NaN or shows a gap that nothing filled", () => {
    for (const [path, content] of files) {
      if (path.endsWith(".html")) expect(String(content), path).not.toMatch(/undefined|NaN|\{[a-z]+\}(?!")/i);
    }
  });
});
