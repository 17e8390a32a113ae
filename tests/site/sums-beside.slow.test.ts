import { rmSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { siteFiles } from "../../src/site/site-files.tsx";
import { startBrowser } from "../support/browser.ts";
import { serveFolder } from "../support/serve.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { sampleSite } from "./sample-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

/** Makes what workers answer wait until `letGo` is called. */
function holdAnswers(): void {
  const held: (() => void)[] = [];
  const Real = Worker;
  class Held extends EventTarget {
    onmessage?: (event: MessageEvent) => void;
    readonly real: Worker;
    constructor(address: string) {
      super();
      this.real = new Real(address);
      this.real.onmessage = (event) => held.push(() => this.onmessage?.(event));
    }
    postMessage(asked: unknown): void {
      this.real.postMessage(asked);
    }
    terminate(): void {
      this.real.terminate();
    }
  }
  Object.assign(globalThis, { Worker: Held, held, letGo: () => held.shift()?.() });
}

/** No worker answers: each fails as soon as it is asked. */
function failAll(): void {
  class Failing {
    onerror?: (event: Event) => void;
    postMessage(): void {
      this.onerror?.(new Event("error", { cancelable: true }));
    }
    terminate(): void {}
  }
  Object.assign(globalThis, { Worker: Failing });
}

describe.skipIf("reason" in started)(`the sums of a served rig's page${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let folder: string;
  let server: Awaited<ReturnType<typeof serveFolder>>;

  beforeAll(async () => {
    folder = await writeToNewFolder(siteFiles(await sampleSite()));
    server = await serveFolder(join(folder, "site"));
  });

  afterAll(async () => {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function open(workers: () => void, rig: string, clock = () => {}, missing?: string): Promise<Page> {
    const context = await browser.newContext({ serviceWorkers: "block" });
    const page = await context.newPage();
    if (missing) await page.route(missing, (route) => route.abort());
    await page.addInitScript(workers);
    await page.addInitScript(clock);
    await page.goto(`${server.address}rigs/${rig}.html?depth=1.5+m`);
    return page;
  }

  const answers = (page: Page) => page.evaluate(() => (globalThis as unknown as { held: [] }).held.length);
  const letGo = (page: Page) => page.evaluate(() => (globalThis as unknown as { letGo(): void }).letGo());
  const shown = (page: Page) =>
    page.evaluate(() => ({
      title: document.querySelector("#fitted h3")?.textContent ?? null,
      card: !(document.getElementById("fit-card") as HTMLButtonElement).disabled,
    }));

  test("are a worker's: until it answers there is no rig and no card, and the answer to an earlier depth offers none", async () => {
    const page = await open(holdAnswers, "waggler-strung-out");
    await expect.poll(() => answers(page)).toBe(1);
    expect(await shown(page)).toEqual({ title: null, card: false });
    await page.fill("#fit-depth", "2 m");
    await letGo(page);
    await expect.poll(() => shown(page)).toEqual({ title: "Water 1.5 m deep", card: false });
    await expect.poll(() => answers(page)).toBe(1);
    await letGo(page);
    await expect.poll(() => shown(page)).toEqual({ title: "Water 2 m deep", card: true });
    await page.fill("#fit-depth", "2.1 m");
    expect((await shown(page)).card).toBe(false);
    await page.fill("#fit-depth", "deep");
    // The fall of 2 m and the rig of 2.1 m come when nobody waits for them any more.
    await expect.poll(() => answers(page)).toBe(2);
    await letGo(page);
    await letGo(page);
    expect(await shown(page)).toEqual({ title: null, card: false });
    await page.context().close();
  });

  test("are shown in turns with the page: what is told meanwhile that cannot be read has nothing shown", async () => {
    // Each look at the clock is 10 ms later than the last, so that every piece of work ends a turn.
    const page = await open(holdAnswers, "waggler-strung-out", () => {
      let now = 0;
      performance.now = () => (now += 10);
    });
    await expect.poll(() => answers(page)).toBe(1);
    const turns = page.evaluate(async () => {
      const soon = () => new Promise((done) => setTimeout(done));
      const isShown = () => document.querySelector("#fitted h3") !== null;
      (globalThis as unknown as { letGo(): void }).letGo();
      let count = 0;
      for (; !isShown() && count < 10_000; count++) await soon();
      return count;
    });
    expect(await turns).toBeGreaterThan(2);
    await page.fill("#fit-depth", "2 m");
    // The fall of 1.5 m, which nobody waits for any more, and the rig of 2 m.
    await expect.poll(() => answers(page)).toBe(2);
    await page.evaluate(() => {
      const { letGo } = globalThis as unknown as { letGo(): void };
      letGo();
      letGo();
      const field = document.getElementById("fit-depth") as HTMLInputElement;
      field.value = "deep";
      field.dispatchEvent(new Event("input", { bubbles: true }));
    });
    await page.waitForTimeout(1_000);
    expect(await shown(page)).toEqual({ title: null, card: false });
    await page.context().close();
  });

  test("with a box are a worker's too, and so is what to buy where it cannot make the rig", async () => {
    const page = await open(holdAnswers, "waggler-strung-out");
    await page.goto(`${server.address}rigs/waggler-strung-out.html?depth=1.5+m&box=SSG`);
    await expect.poll(() => answers(page)).toBe(1);
    await letGo(page);
    await expect
      .poll(() => page.textContent("#fit-status"))
      .toContain("These shot (SSG) do not make this rig");
    await expect.poll(() => answers(page)).toBe(1);
    expect(await page.locator("#fit-result li").count()).toBe(0);
    await letGo(page);
    await expect.poll(() => page.locator("#fit-result li").count()).toBe(1);
    expect(await page.locator("#fit-result li").allTextContents()).toEqual([
      expect.stringContaining("One size worth buying"),
    ]);
    await page.context().close();
  });

  test("are asked for side by side: no script of theirs waits for another", async () => {
    const context = await browser.newContext({ serviceWorkers: "block" });
    const page = await context.newPage();
    const held = new Map<string, () => void>();
    await page.route(
      (url) => /\/(?:guide-data|fit|waggler-strung-out)\.[\da-f]+\.js$/.test(url.pathname),
      async (route) => {
        await new Promise<void>((letGo) => held.set(new URL(route.request().url()).pathname, letGo));
        await route.continue();
      },
    );
    await page.goto(`${server.address}rigs/waggler-strung-out.html`);
    const scripts = await page.evaluate(() => document.getElementById("fit")!.dataset.scripts!.split(" "));
    expect(scripts).toHaveLength(3);
    await page.click("#fit > summary");
    await expect.poll(() => held.size).toBe(scripts.length);
    for (const letGo of [...held.values()].reverse()) letGo();
    await page.waitForSelector("#fitted");
    await context.close();
  });

  test.each(["waggler-strung-out", "stick-shirt-button"])(
    "are done by the page of %s where no worker can",
    async (rig) => {
      const page = await open(failAll, rig);
      await page.waitForSelector("#fitted .in-water", { state: "attached" });
      expect(await shown(page)).toEqual({ title: "Water 1.5 m deep", card: true });
      await page.context().close();
    },
  );

  test("cannot be done where the worker's script is gone too, and the page says so", async () => {
    const page = await open(failAll, "waggler-strung-out", undefined, "**/sums-worker.*");
    await expect.poll(() => page.textContent("#fit-status")).toContain("This could not be loaded.");
    expect(await page.isEnabled("#fit-card")).toBe(false);
    await page.context().close();
  });
});
