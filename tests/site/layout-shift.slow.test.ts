import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startBrowser } from "../support/browser.ts";
import { serveRealSite } from "./real-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

/** One page of each kind, with answers where it takes them. */
const pages = [
  "index.html",
  "lessons/index.html",
  "lessons/find-the-depth.html",
  "rigs/index.html",
  "rigs/index.html?depth=1.7+m",
  "rigs/straight-waggler-strung-out.html",
  "rigs/straight-waggler-strung-out.html?depth=1.7+m",
  "rigs/stick-shirt-button.html?depth=1.3+m&box=BB%2C+No+4",
  "floats.html",
  "shot.html",
  "knots.html",
  "baits.html",
  "fish.html",
  "glossary.html",
  "what-the-float-says.html",
  "safety.html",
  "printables.html",
  "search.html",
  "search.html?q=float+keeps+going+under",
  "licences.html",
];
/** A slow phone network: 150 ms and 1.6 Mbit/s. */
const network = { offline: false, latency: 150, downloadThroughput: 200_000, uploadThroughput: 90_000 };
const restMs = 2500;

/** Source of the measure: the Layout Instability API (W3C, draft); what follows a tap within half a second is left out. */
describe.skipIf("reason" in started)(`a page that comes over a slow network${reason}`, () => {
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

  test.each(pages)("%s shifts by less than 0.02", async (path) => {
    const context = await browser.newContext({
      viewport: { width: 360, height: 740 },
      serviceWorkers: "block",
    });
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send("Network.enable");
    await session.send("Network.emulateNetworkConditions", network);
    await page.goto(site.address + path);
    await page.waitForTimeout(restMs);
    expect(await shiftOf(page)).toBeLessThan(0.02);
    await context.close();
  });
});

function shiftOf(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((told) => {
        let shift = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries() as (PerformanceEntry & {
            readonly value: number;
            readonly hadRecentInput: boolean;
          })[]) {
            if (!entry.hadRecentInput) shift += entry.value;
          }
        }).observe({ type: "layout-shift", buffered: true });
        setTimeout(() => told(shift), 200);
      }),
  );
}
