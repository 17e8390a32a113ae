import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readPdf } from "../print/read-pdf.ts";
import { startBrowser } from "../support/browser.ts";
import { cli } from "../support/cli.ts";
import { goOffline } from "../support/go-offline.ts";
import { keptBytes } from "../support/kept-bytes.ts";
import { serveFolder } from "../support/serve.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

describe.skipIf("reason" in started)(`the shipped guide after one visit, without a network${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  const folder = mkdtempSync(join(tmpdir(), "dotdown-built-"));
  const site = join(folder, "out/site");
  let server: Awaited<ReturnType<typeof serveFolder>>;

  beforeAll(async () => {
    const { code, report } = await cli("build", "--content", "content", "--out", join(folder, "out"));
    if (code !== 0) throw new Error(report);
    server = await serveFolder(site);
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test("every page opens, a rig never seen is fitted, its card is made, and all is as small as the page says", async () => {
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    const page = await context.newPage();
    const said: string[] = [];
    page.on("console", (message) => said.push(`${page.url()}: ${message.text()}`));
    page.on("pageerror", (error) => said.push(`${page.url()}: ${error.message}`));
    await goOffline(page, server);

    await page.reload();
    const title = await page.textContent("h1");
    const stated = Number(/([\d.]+) MB/.exec((await page.textContent("main"))!)![1]);
    await page.click("#first-rig ~ * a");
    await page.waitForSelector(".depth-picker");
    expect(title).toBe("Float Fishing from the First Knot");

    const files = keptFiles(site);
    for (const path of files.filter((file) => file.endsWith(".html"))) {
      const answer = await page.goto(server.address + path);
      expect(answer?.status(), path).toBe(200);
      expect(await page.textContent("h1"), path).not.toBe("");
    }

    await page.goto(`${server.address}rigs/avon-bulk.html?depth=2.1+m`);
    await page.waitForSelector("#fitted");
    expect(await page.textContent("#fitted h3")).toContain("2.1 m");
    await page.click("#fit-card");
    await page.waitForSelector("#fit-card-shown svg >> nth=1");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#fit-card-save")]);
    expect((await readPdf(new Uint8Array(readFileSync((await download.path())!)))).pages).toHaveLength(2);

    const keptMb = (await keptBytes(page)) / 1e6;
    expect(keptMb).toBeLessThan(5);
    expect(keptMb).toBeLessThanOrEqual(stated);
    expect(keptMb).toBeGreaterThan(stated - 0.2);
    expect(said).toEqual([]);
    await context.close();
  });
});

/** What the service worker keeps from the start. */
function keptFiles(site: string): string[] {
  const worker = readFileSync(join(site, "sw.js"), "utf8");
  return Object.keys(JSON.parse(/guideFiles=(\{.*?\})/.exec(worker)![1]!) as object);
}
