import { expect, test } from "vitest";
import { solveContent } from "../../src/build/build.ts";
import { formatReport } from "../../src/checks/reporter.ts";
import { disk } from "../../src/cli/disk.ts";
import type { SiteInput } from "../../src/site/input.ts";
import { siteFiles } from "../../src/site/site-files.tsx";
import { temporaryFolder, writeContent } from "../support/cli.ts";
import { brokenLinks } from "../support/links.ts";
import { realSite } from "./real-site.ts";
import { withRigs } from "./with-rigs.ts";

/** A guide of one's own that takes these rigs of the library, and every lesson. */
async function taking(...rigs: readonly string[]): Promise<SiteInput> {
  const own = `title: Ours\npublisher: Makebelieve Club\nedition: 2026-11-27\nlibrary: { rigs: [${rigs.join(", ")}] }\n`;
  const folder = writeContent(temporaryFolder(), { "guide.yaml": own });
  const { value, messages } = await solveContent(disk, [folder], "content");
  if (!value) throw new Error(formatReport(messages));
  return realSite(value);
}

const guides: readonly (readonly [number, () => Promise<SiteInput>])[] = [
  [1, () => taking("first-session")],
  [3, () => taking("margin", "lift-method", "avon-bulk")],
  [100, async () => withRigs(await realSite(), 100)],
];

test.each(guides)(
  "no link of a site with %i rigs leads nowhere, and its list leads to each",
  async (count, siteOf) => {
    const input = await siteOf();
    const files = new Map<string, string | Uint8Array>();
    for await (const { path, content } of siteFiles(input)) files.set(path, content);
    for (const { path } of input.printables) files.set(path, "");
    const { rigs, guide } = input.library;
    expect(rigs).toHaveLength(count);
    expect(brokenLinks(files, guide.siteAddress)).toEqual([]);
    const list = String(files.get("site/rigs/index.html"));
    for (const { id } of rigs) expect(list).toContain(`href="${id}.html"`);
  },
);
