import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import type { OutputFile } from "../../src/markup/output.ts";
import type { SiteInput } from "../../src/site/input.ts";
import { siteFiles } from "../../src/site/site-files.tsx";
import { startBrowser } from "../support/browser.ts";
import { serveFolder } from "../support/serve.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { samplePdf, sampleSite } from "./sample-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

const rigPage = "rigs/waggler-strung-out.html";

/** The sample guide in an edition that says its name on the first page, and once more in what its scripts load. */
function edition(site: SiteInput, name: string): SiteInput {
  const { words } = site.library;
  const page = words.page as Record<string, Record<string, string>>;
  const fit = { ...page.fit, done: `Fitted by edition ${name}` };
  const library = {
    ...site.library,
    guide: { ...site.library.guide, title: `Edition ${name}` },
    words: { ...words, page: { ...page, fit } },
  } as SiteInput["library"];
  return { ...site, library };
}

describe.skipIf("reason" in started)(`one edition after another on a phone${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  const built = new Map<string, string>();
  let served: string;
  let server: Awaited<ReturnType<typeof serveFolder>>;

  beforeAll(async () => {
    const site = await sampleSite();
    for (const name of ["A", "B"]) {
      const input = edition(site, name);
      const files: OutputFile[] = input.printables.map(({ path }) => ({ path, content: samplePdf }));
      for await (const file of siteFiles(input)) files.push(file);
      built.set(name, await writeToNewFolder(files));
    }
  });

  beforeEach(async () => {
    served = mkdtempSync(join(tmpdir(), "dotdown-served-"));
    server = await serveFolder(served);
  });

  afterEach(async () => {
    await server.close();
    rmSync(served, { recursive: true, force: true });
  });

  afterAll(async () => {
    await browser.close();
    for (const folder of built.values()) rmSync(folder, { recursive: true, force: true });
  });

  /** Puts an edition in the place of what is served, below a folder or at the top. */
  function serve(name: string, below = ""): void {
    rmSync(join(served, below), { recursive: true, force: true });
    cpSync(join(built.get(name)!, "site"), join(served, below), { recursive: true });
  }

  async function keep(page: Page, below = ""): Promise<void> {
    await page.goto(`${server.address}${below}`);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  }

  /** Until another edition, which is served by now, waits for its turn. */
  async function waitForNext(page: Page): Promise<void> {
    await page.evaluate(async () => {
      const registration = (await navigator.serviceWorker.getRegistration())!;
      await registration.update();
      while (!registration.waiting) await new Promise((soon) => setTimeout(soon, 20));
    });
  }

  /** What the page says when its fit is opened: words that its scripts brought. */
  async function fitOf(page: Page): Promise<string> {
    await page.click("#fit > summary");
    await page.waitForFunction(() => {
      const status = document.getElementById("fit-status")!.textContent;
      return status !== "" && status !== document.getElementById("fit-answer")!.dataset.working;
    });
    return (await page.textContent("#fit-status"))!;
  }

  /** The page's heading; none while it loads itself anew. */
  const headOf = (page: Page) => page.textContent("h1", { timeout: 1000 }).catch(() => null);

  /** Opens the first page until it is of an edition: on a machine with much else to do a page that was left stays listed for long. */
  const opensAs = (page: Page, name: string) =>
    expect
      .poll(
        async () => {
          await page.click("a.brand", { timeout: 5000 }).catch(() => {});
          const isOf = await page
            .waitForFunction((title) => document.querySelector("h1")?.textContent === title, name, {
              timeout: 10_000,
            })
            .catch(() => undefined);
          return isOf !== undefined;
        },
        { timeout: 60_000 },
      )
      .toBe(true);

  const caches = (page: Page) => page.evaluate(async () => (await window.caches.keys()).sort());

  test("a page that is open stays whole, and the next one is whole of the new edition", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    serve("A");
    await keep(page);
    await page.goto(server.address + rigPage);
    serve("B");
    await waitForNext(page);
    expect(await fitOf(page)).toBe("Fitted by edition A");

    await opensAs(page, "Edition B");
    expect(await caches(page)).toHaveLength(1);
    await context.setOffline(true);
    await page.goto(server.address + rigPage);
    expect(await fitOf(page)).toBe("Fitted by edition B");
    await context.close();
  });

  test("a page that is being read keeps the next edition waiting, until it is left", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    serve("A");
    await keep(page);
    const read = await context.newPage();
    await read.goto(server.address + rigPage);
    serve("B");
    await waitForNext(page);
    for (const _ of ["once", "again"]) {
      await page.click("a.brand");
      await page.waitForTimeout(6000);
      expect(await headOf(page)).toBe("Edition A");
    }
    expect(await fitOf(read)).toBe("Fitted by edition A");
    await read.close();
    await opensAs(page, "Edition B");
    await context.close();
  });

  test("a page that no worker keeps yet takes no data of the edition that came meanwhile", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    const page = await context.newPage();
    serve("A");
    await page.goto(server.address + rigPage);
    serve("B");
    expect(await fitOf(page)).toContain("load the page again");
    await page.reload();
    expect(await fitOf(page)).toBe("Fitted by edition B");
    await context.close();
  });

  test("the list of rigs, whose name stays, is taken only where it names all that this page is made with", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    const page = await context.newPage();
    const listOf = (name: string) =>
      readFileSync(join(built.get(name)!, "site/assets/rig-list.js"), "utf8")
        // A rig that the box makes; the sample has it for other water.
        .replaceAll('"water":"flowing"', '"water":"still"');
    /** What the page offers in place of a rig that the box cannot make, with a list that says so. */
    const offered = async (list: string): Promise<string[]> => {
      writeFileSync(join(served, "assets/rig-list.js"), list);
      await page.goto(`${server.address}${rigPage}?depth=1.5+m&box=BB`);
      const asked = page.waitForResponse((response) => response.url().includes("/assets/rig-list.js"));
      await page.waitForSelector("#fit-result .findings", { state: "attached" });
      await (await asked).finished();
      const link = page.locator("#fit-result .findings a").first();
      await link.waitFor({ timeout: 4000 }).catch(() => {});
      return page
        .locator("#fit-result .findings a")
        .evaluateAll((links) => links.map((one) => (one as HTMLAnchorElement).pathname));
    };
    serve("A");
    expect(await offered(listOf("A"))).toEqual(["/rigs/stick-shirt-button.html"]);
    // Another rig was changed since: this page is as it was.
    const [data] = /data\/stick-shirt-button\.\w+\.js/.exec(listOf("A"))!;
    const later = data.replace(/\.\w+\./, ".0f0f.");
    cpSync(join(served, data), join(served, later));
    rmSync(join(served, data));
    expect(await offered(listOf("A").replace(data, later))).toEqual(["/rigs/stick-shirt-button.html"]);
    // This one was, or what all pages load.
    const own = /data\/waggler-strung-out\.\w+\.js/;
    expect(
      await offered(listOf("A").replace(data, later).replace(own, "data/waggler-strung-out.0f0f.js")),
    ).toEqual([]);
    cpSync(join(built.get("B")!, "site/data"), join(served, "data"), { recursive: true });
    expect(await offered(listOf("B"))).toEqual([]);
    await context.close();
  });

  test("an edition that is only half on the server is not kept, and the one before it is", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    serve("A");
    await keep(page);
    const before = await caches(page);
    serve("B");
    const lesson = readdirSync(join(built.get("A")!, "site/lessons"))[0]!;
    cpSync(join(built.get("A")!, "site/lessons", lesson), join(served, "lessons", lesson));
    const failed = await page.evaluate(async () => {
      const registration = (await navigator.serviceWorker.getRegistration())!;
      await registration.update();
      const worker = registration.installing ?? registration.waiting!;
      while (worker.state === "installing") await new Promise((soon) => setTimeout(soon, 20));
      return worker.state;
    });
    expect(failed).toBe("redundant");
    expect(await caches(page)).toEqual(before);
    await context.setOffline(true);
    await page.reload();
    expect(await page.textContent("h1")).toBe("Edition A");
    await context.close();
  });

  test("two guides on one host keep their own copies, and neither deletes the other's", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    serve("A");
    serve("B", "other/");
    await keep(page, "other/");
    await keep(page);
    expect(await caches(page)).toHaveLength(2);
    await context.setOffline(true);
    await page.goto(`${server.address}other/`);
    expect(await page.textContent("h1")).toBe("Edition B");
    await page.goto(server.address);
    expect(await page.textContent("h1")).toBe("Edition A");
    await context.close();
  });

  test("a large file is kept once asked for, and only as the edition has it", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    serve("A");
    await keep(page);
    const fetched = (path: string) => page.evaluate(async (address) => (await fetch(address)).text(), path);
    writeFileSync(join(served, "cards/all.pdf"), "another edition's");
    expect(await fetched("cards/all.pdf")).toBe("another edition's");
    writeFileSync(join(served, "cards/all.pdf"), samplePdf);
    expect(await fetched("cards/all.pdf")).toBe(samplePdf);
    await context.setOffline(true);
    expect(await fetched("cards/all.pdf")).toBe(samplePdf);
    await context.close();
  });

  test("what somebody asked for in one edition stays on the phone with the next", async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const fetched = () => page.evaluate(async () => (await fetch("cards/all.pdf")).text());
    serve("A");
    await keep(page);
    expect(await fetched()).toBe(samplePdf);
    serve("B");
    await waitForNext(page);
    await opensAs(page, "Edition B");
    expect(await caches(page)).toHaveLength(1);
    await context.setOffline(true);
    expect(await fetched()).toBe(samplePdf);
    await context.close();
  });
});
