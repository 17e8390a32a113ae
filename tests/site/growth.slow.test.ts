import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import type { OutputFile } from "../../src/markup/output.ts";
import type { SiteInput } from "../../src/site/input.ts";
import { siteFiles } from "../../src/site/site-files.tsx";
import { realSite } from "./real-site.ts";
import { withRigs } from "./with-rigs.ts";

/** What each rig more may add to the files that a phone keeps, the search index among them [byte, gzipped]. */
const mostBytesEach = 25_000;

/** All that a phone keeps of a site [byte, gzipped one by one]. */
async function keptBytes(input: SiteInput): Promise<number> {
  const files = new Map<string, OutputFile["content"]>();
  for await (const { path, content } of siteFiles(input)) files.set(path, content);
  const list = /guideFiles=(\{.*?\})/.exec(String(files.get("site/sw.js")))![1]!;
  return Object.keys(JSON.parse(list) as object).reduce(
    (sum, path) => sum + gzipSync(files.get(`site/${path}`) ?? "").length,
    0,
  );
}

test("twice as many rigs add at most 25 kB each to what a phone keeps, search index and all", async () => {
  const once = await realSite();
  const twice = withRigs(once, 2 * once.library.rigs.length);
  const grown = (await keptBytes(twice)) - (await keptBytes(once));
  const each = grown / once.library.rigs.length;
  expect(each).toBeLessThan(mostBytesEach);
  // A rig that added nothing would not have been built.
  expect(each).toBeGreaterThan(5_000);
});
