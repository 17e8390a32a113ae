import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import type { OutputFile } from "../../src/markup/output.ts";
import { roomAtOnce } from "../../src/site/kept-at-once.ts";
import { siteFiles } from "../../src/site/site-files.tsx";
import { startBrowser } from "../support/browser.ts";
import { goOffline } from "../support/go-offline.ts";
import { keptBytes } from "../support/kept-bytes.ts";
import { serveFolder } from "../support/serve.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { sampleSite } from "./sample-site.ts";
import { withRigs } from "./with-rigs.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

/** More than a phone keeps at once: the sample's own rigs, over and over. */
const rigs = 90;

describe.skipIf("reason" in started)(`a guide too large to be kept whole${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let folder: string;
  let server: Awaited<ReturnType<typeof serveFolder>>;
  /** Addresses below the site of what is kept at once, and of what is not. */
  let atOnce: readonly string[];
  let later: readonly string[];

  beforeAll(async () => {
    const files: OutputFile[] = [];
    for await (const file of siteFiles(withRigs(await sampleSite(), rigs))) files.push(file);
    folder = await writeToNewFolder(files);
    const worker = readFileSync(join(folder, "site/sw.js"), "utf8");
    const listed = (name: string) =>
      Object.keys(JSON.parse(new RegExp(`${name}=(\\{.*?\\})`).exec(worker)![1]!) as object);
    atOnce = listed("guideFiles");
    later = listed("guideFilesOnDemand");
  });

  beforeEach(async () => {
    server = await serveFolder(join(folder, "site"));
    return () => server.close().catch(() => {});
  });

  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const isRigPage = (path: string) => /^rigs\/.+\.html$/.test(path) && path !== "rigs/index.html";
  const rigLater = () => later.find(isRigPage)!;

  async function onPhone(run: (page: Page) => Promise<void>): Promise<void> {
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    const page = await context.newPage();
    await page.goto(server.address);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await run(page);
    await context.close();
  }

  /** Waits until all of this is kept. */
  async function areKept(page: Page, paths: readonly string[]): Promise<void> {
    const addresses = paths.map((path) => server.address + path);
    await page.waitForFunction(
      async (wanted) => {
        for (const address of wanted)
          if (!(await caches.match(address, { ignoreSearch: true }))) return false;
        return true;
      },
      addresses,
      { polling: 50 },
    );
  }

  const dataOf = (rigPage: string) => {
    const id = /rigs\/(.+)\.html/.exec(rigPage)![1]!;
    return [...atOnce, ...later].find((path) => path.startsWith(`data/${id}.`))!;
  };

  test("keeps at once what has room, with the first page saying how much that is, and of both kinds of water", () => {
    const size = (path: string) => readFileSync(join(folder, "site", path)).length;
    const bytes = atOnce.reduce((sum, path) => sum + size(path), 0);
    expect(bytes).toBeLessThanOrEqual(roomAtOnce);
    expect(bytes).toBeGreaterThan(0.95 * roomAtOnce);
    const home = readFileSync(join(folder, "site/index.html"), "utf8");
    const stated = Number(/([\d.]+) MB in all/.exec(home)![1]);
    expect(stated).toBeGreaterThanOrEqual(bytes / 1e6);
    expect(stated).toBeLessThan(bytes / 1e6 + 0.2);
    const kept = atOnce.filter((path) => isRigPage(path) || /^lessons\/(?!index)/.test(path)).length;
    expect(home).toContain(`${kept} of the `);
    for (const path of ["safety.html", "search.html", "404.html", "on-this-phone.html", "knots.html"]) {
      expect(atOnce).toContain(path);
    }
    for (const path of atOnce.filter(isRigPage)) expect(atOnce).toContain(dataOf(path));
    for (const path of later.filter(isRigPage)) expect(later).toContain(dataOf(path));
  });

  test("leads from a page that is not kept to one that says so and which are, and back once there is a signal", async () => {
    await onPhone(async (page) => {
      await page.context().setOffline(true);
      await page.goto(`${server.address}${rigLater()}?depth=1.7+m`);
      await page.waitForSelector("#missed:not([hidden])");
      expect(await page.textContent("#missed")).toContain(", again” is not on this phone yet");
      await page.waitForSelector("#not-kept:not([hidden])");
      const kept = await page
        .locator("#kept a")
        .evaluateAll((links) => links.map((link) => link.getAttribute("href")));
      const missing = await page
        .locator("#not-kept a")
        .evaluateAll((links) => links.map((link) => link.getAttribute("href")));
      expect(missing.sort()).toEqual(later.filter((path) => path.endsWith(".html")).sort());
      const itself = ["404.html", "on-this-phone.html"];
      expect(kept.sort()).toEqual(
        atOnce.filter((path) => path.endsWith(".html") && !itself.includes(path)).sort(),
      );
      await page.context().setOffline(false);
      await page.click("#missed a");
      await page.waitForSelector("#fitted");
      expect(await page.textContent("#fitted h3")).toContain("1.7 m");
    });
  });

  test("keeps a page that was opened, with what makes its rig for another water", async () => {
    await onPhone(async (page) => {
      const opened = rigLater();
      await page.goto(server.address + opened);
      await areKept(page, [opened, dataOf(opened)]);
      await page.context().setOffline(true);
      await page.goto(`${server.address}${opened}?depth=2.1+m`);
      await page.waitForSelector("#fitted");
      expect(await page.textContent("#fitted h3")).toContain("2.1 m");
    });
  });

  test("keeps the rigs for the water that was asked for", async () => {
    await onPhone(async (page) => {
      await page.click("text=Running water");
      await page.fill("#water-depth", "2 m");
      await page.press("#water-depth", "Tab");
      const offered = await page
        .locator("#water-rigs li:not([hidden]) a")
        .evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).href));
      const paths = offered.map((address) => address.replace(server.address, "").replace(/\?.*/, ""));
      expect(paths.length).toBeGreaterThan(0);
      await areKept(page, [...paths, ...paths.map(dataOf)]);
    });
  });

  test("keeps a whole water, and every page, at the press of a button that says how much that is", async () => {
    await onPhone(async (page) => {
      await page.goto(`${server.address}on-this-phone.html`);
      const flowing = page.locator("#keep-more button[data-water=flowing]");
      await flowing.waitFor();
      expect(await flowing.textContent()).toMatch(/running water \(\d+\.\d MB\)/);
      await flowing.click();
      await page.waitForFunction(
        () => document.getElementById("keep-status")!.textContent === "They are kept.",
      );
      expect(await flowing.isHidden()).toBe(true);
      const all = page.locator("#keep-more button:not([data-water])");
      const stated = Number(/([\d.]+) MB/.exec((await all.textContent())!)![1]) * 1e6;
      const before = await keptBytes(page);
      await all.click();
      await page.waitForSelector("#keep-more", { state: "hidden" });
      const grown = (await keptBytes(page)) - before;
      expect(grown).toBeLessThanOrEqual(stated);
      expect(grown).toBeGreaterThan(stated - 2e5);
      const pages = later.filter((path) => path.endsWith(".html"));
      await areKept(page, [...pages, ...pages.filter(isRigPage).map(dataOf)]);
      await goOffline(page, server);
      await page.goto(server.address + pages.at(-1));
      expect(page.url()).toBe(server.address + pages.at(-1));
    });
  });
});
