import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import type { OutputFile } from "../../src/markup/output.ts";
import type { SiteInput } from "../../src/site/input.ts";
import { siteFiles } from "../../src/site/site-files.tsx";
import { realSite } from "./real-site.ts";
import { withRigs } from "./with-rigs.ts";

/** What each rig more may add to the files that a phone may keep, the search index among them [byte, gzipped]. */
const mostBytesEach = 25_000;

interface Grown {
  /** All pages, their data and the search index [byte, gzipped one by one]. */
  readonly gzipped: number;
  /** What a phone keeps at once [byte]. */
  readonly atOnce: number;
  /** Of it, what the search looks through [byte]. */
  readonly searched: number;
}

async function sizesOf(input: SiteInput): Promise<Grown> {
  const files = new Map<string, OutputFile["content"]>();
  for await (const { path, content } of siteFiles(input)) files.set(path, content);
  const worker = String(files.get("site/sw.js"));
  const listed = (name: string) =>
    Object.keys(JSON.parse(new RegExp(`${name}=(\\{.*?\\})`).exec(worker)![1]!) as object).filter((path) =>
      files.has(`site/${path}`),
    );
  const contentOf = (path: string) => files.get(`site/${path}`)!;
  const atOnce = listed("guideFiles");
  const bytes = (paths: readonly string[]) =>
    paths.reduce((sum, path) => sum + Buffer.byteLength(contentOf(path)), 0);
  return {
    gzipped: [...atOnce, ...listed("guideFilesOnDemand")].reduce(
      (sum, path) => sum + gzipSync(contentOf(path)).length,
      0,
    ),
    atOnce: bytes(atOnce),
    searched: bytes(atOnce.filter((path) => path.startsWith("assets/search-"))),
  };
}

test("twice as many rigs add at most 25 kB each to what a phone may keep, search index and all", async () => {
  const once = await realSite();
  const twice = withRigs(once, 2 * once.library.rigs.length);
  const [small, large] = [await sizesOf(once), await sizesOf(twice)];
  const each = (large.gzipped - small.gzipped) / once.library.rigs.length;
  expect(each).toBeLessThan(mostBytesEach);
  // A rig that added nothing would not have been built.
  expect(each).toBeGreaterThan(5_000);
});

test("with a hundred rigs a phone keeps no more at once than it has room for, and searches what it keeps", async () => {
  const { atOnce, searched } = await sizesOf(withRigs(await realSite(), 100));
  expect(atOnce).toBeLessThanOrEqual(5_000_000);
  expect(searched).toBeLessThan(650_000);
  expect(searched).toBeGreaterThan(500_000);
});
