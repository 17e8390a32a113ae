import { type AddressInfo, createServer } from "node:net";
import lighthouse from "lighthouse";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startBrowser } from "../support/browser.ts";
import { serveRealSite } from "./real-site.ts";

const port = await freePort();
const started = await startBrowser(port);
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

const categories = ["performance", "accessibility", "best-practices", "seo"] as const;
const runs = 5;
const least = 0.99;

/** Source of the scores: Lighthouse with its own settings, a phone on a slow network that it reckons, not waits for. */
describe.skipIf("reason" in started)(`the shipped content measured by Lighthouse${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let site: Awaited<ReturnType<typeof serveRealSite>>;

  beforeAll(async () => {
    site = await serveRealSite();
  });

  afterAll(async () => {
    await browser.close();
    await site.close();
  });

  test.each(["index.html", "lessons/find-the-depth.html", "rigs/stick-shirt-button.html"])(
    "%s has a median of at least 99 in every category",
    async (path) => {
      const scores: Record<string, number[]> = Object.fromEntries(categories.map((name) => [name, []]));
      for (let run = 0; run < runs; run++) {
        const result = await lighthouse(site.address + path, { port, logLevel: "silent" });
        for (const name of categories) scores[name]!.push(result!.lhr.categories[name]!.score!);
      }
      for (const name of categories) {
        expect(median(scores[name]!), `${name} of ${path}: ${scores[name]}`).toBeGreaterThanOrEqual(least);
      }
    },
  );
});

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
}

/** A port that nobody listens on. */
async function freePort(): Promise<number> {
  const probe = createServer().listen(0, "127.0.0.1");
  await new Promise((listening) => probe.once("listening", listening));
  const { port: free } = probe.address() as AddressInfo;
  await new Promise((closed) => probe.close(closed));
  return free;
}
