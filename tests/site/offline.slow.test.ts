import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startBrowser } from "../support/browser.ts";
import { goOffline } from "../support/go-offline.ts";
import { serveFolder } from "../support/serve.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { sampleFiles, samplePdf, sampleSite } from "./sample-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

describe.skipIf("reason" in started)(`the site served, then without a network${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let folder: string;
  let server: Awaited<ReturnType<typeof serveFolder>>;

  beforeAll(async () => {
    const printed = (await sampleSite()).printables.map(({ path }) => ({ path, content: samplePdf }));
    folder = await writeToNewFolder([...printed, ...(await sampleFiles())]);
    server = await serveFolder(join(folder, "site"));
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test("after one visit every page, picture and sum is there, and a card is made, without a network", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const said: string[] = [];
    page.on("console", (message) => said.push(message.text()));
    page.on("pageerror", (error) => said.push(error.message));
    const foreign: string[] = [];
    page.on("request", (request) => {
      if (!request.url().startsWith(server.address)) foreign.push(request.url());
    });
    await goOffline(page, server);

    await page.reload();
    expect(await page.textContent("h1")).toBe("Float Fishing from the First Knot");
    await page.goto(`${server.address}rigs/waggler-strung-out.html?depth=2+m`);
    await page.waitForSelector("#fitted");
    expect(await page.textContent("#fitted h3")).toBe("Water 2 m deep");
    await page.click("#fit-card");
    await page.waitForSelector("#fit-card-save:visible");
    const [saved] = await Promise.all([page.waitForEvent("download"), page.click("#fit-card-save")]);
    expect(readFileSync((await saved.path())!, "latin1")).toMatch(/^%PDF-1\.7/);
    await page.goto(`${server.address}search.html?q=weaker`);
    await expect.poll(() => page.locator("#search-results a").count()).toBeGreaterThan(0);
    await page.goto(`${server.address}lessons/`);
    expect(await page.textContent("h1")).toBe("Lessons");
    await page.goto(`${server.address}rigs/waggler-strung-out.html#depth-150`);
    await page.click("#built-card");
    await page.waitForSelector("#fit-card-shown svg >> nth=1");
    expect(await page.textContent("#fit-card-shown")).toContain("1.5 m");
    expect(said).toEqual([]);
    // The sample is served elsewhere than it says, so this page finds no style sheet here.
    expect(await page.goto(`${server.address}no/such/page.html`).then((got) => got?.status())).toBe(404);
    expect(await page.textContent("h1")).toBe("This page is not here");
    expect(foreign).toEqual([]);
    await context.close();
  });
});
