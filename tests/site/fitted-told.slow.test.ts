import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { sitePaths } from "../../src/model/addresses.ts";
import { once } from "../../src/model/kept.ts";
import { siteFile, siteFiles } from "../../src/site/site-files.tsx";
import { readPdf } from "../print/read-pdf.ts";
import { startBrowser } from "../support/browser.ts";
import { realSite } from "./real-site.ts";
import { type RigPages, rigPages } from "./rig-page.ts";
import { sampleSite } from "./sample-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

/** A card breaks its lines where it has to. */
const words = (text: string | null | undefined) => text?.replace(/\s+/g, " ").trim() ?? "";

describe.skipIf("reason" in started)(`what is told of a fitted rig${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let sample: RigPages;
  const rig = "rigs/waggler-strung-out.html";

  beforeAll(async () => {
    sample = await rigPages(browser, siteFiles(await sampleSite()));
  });

  afterAll(async () => {
    await browser.close();
    sample.close();
  });

  test.each([
    "#fitted .picture",
    "#fitted .key-figures",
    "#fitted .depth-columns tbody",
    "#fitted .guide tbody",
  ])(
    "the slider stays in reach while %s changes below it, in its place, whatever comes and goes above",
    async (part) => {
      const { page } = sample;
      await sample.open(`${rig}?depth=2.2+m`);
      await page.waitForSelector("#fitted .in-water", { state: "attached" });
      const changing = page.locator(part).first();
      const html = () => changing.innerHTML();
      // In one turn of the page: what is found in one may be replaced in the next.
      const place = () =>
        page.evaluate((selector) => {
          const { y, height } = document.querySelector(selector)!.getBoundingClientRect();
          return { y, height };
        }, part);
      const [before, findings] = [await html(), await page.locator("#fitted .findings").count()];
      await changing.evaluate((found) => found.scrollIntoView({ behavior: "instant", block: "center" }));
      const seen = await place();
      const slider = (await page.locator("#fit-slider").boundingBox())!;
      expect(slider.y).toBeGreaterThanOrEqual(0);
      expect(slider.y + slider.height).toBeLessThan(120);
      expect(seen.y + seen.height).toBeGreaterThan(slider.y + slider.height);
      await page.evaluate(() => document.getElementById("fit-slider")!.focus({ preventScroll: true }));
      // The sample is too deep there for a fixed float, so that a warning comes above all the rest.
      await page.keyboard.press("End");
      await expect.poll(html).not.toBe(before);
      expect(await page.locator("#fitted .findings").count()).toBeGreaterThan(findings);
      // A page is moved by whole pixels.
      expect(Math.abs((await place()).y - seen.y)).toBeLessThan(1);
    },
  );

  // While a page glides nothing counts as its first sight, and there is none to measure it by.
  test.each([["?depth=2.2+m"], ["?#depth-150"], ["?#fit"]])(
    "a page opened at %s begins there at once",
    async (at) => {
      const context = await browser.newContext({ reducedMotion: "no-preference" });
      const page = await context.newPage();
      await page.addInitScript(() => {
        const how: unknown[] = [];
        Object.assign(globalThis, { how });
        const real = Element.prototype.scrollIntoView;
        Element.prototype.scrollIntoView = function (options) {
          how.push(options);
          real.call(this, options);
        };
      });
      await page.goto((await addressOf(rig)) + at);
      const how = await page.evaluate(() => (globalThis as unknown as { how: unknown[] }).how);
      expect(how).toEqual([{ behavior: "instant" }]);
      await context.close();
    },
  );

  test("a warning that came above is named in the bar, which leads to it", async () => {
    const { page } = sample;
    await sample.open(`${rig}?depth=9+m`);
    await page.waitForSelector("#fitted .in-water", { state: "attached" });
    await page.locator("#fitted .guide").scrollIntoViewIfNeeded();
    const found = page.locator("#fitted .findings");
    const count = await found.locator("li").count();
    expect(await page.textContent("#fit-brief a")).toBe(
      count === 1 ? "One thing to mind" : `${count} things to mind`,
    );
    await page.click("#fit-brief a");
    const bar = (await page.locator(".water-bar").boundingBox())!;
    await expect.poll(async () => (await found.boundingBox())!.y).toBeGreaterThanOrEqual(bar.y + bar.height);
    expect((await found.boundingBox())!.y).toBeLessThan(740);
    await sample.open(`${rig}?depth=1.5+m`);
    await page.waitForSelector("#fitted .in-water", { state: "attached" });
    expect(await page.locator("#fit-brief a").count()).toBe(0);
  });

  test.each(["5 foot 7", "1.7 metres", "1.7 fathoms"])(
    "“%s” typed sign by sign is announced once, when nobody types any more",
    async (typed) => {
      const page = await browser.newPage();
      await page.clock.install({ time: 0 });
      await page.goto(await addressOf(`${rig}?depth=1.5+m`));
      await page.waitForSelector("#fitted .in-water", { state: "attached" });
      // From here on time goes only as far as it is told, however slow the machine is.
      await page.clock.pauseAt(3_600_000);
      const told = await page.evaluateHandle(() => {
        const texts: string[] = [];
        const live = document.querySelectorAll(
          "[role=status], [role=alert], [role=log], [aria-live]:not([aria-live=off])",
        );
        for (const part of live) {
          const look = () => texts.push(part.textContent ?? "");
          new MutationObserver(look).observe(part, { childList: true, characterData: true, subtree: true });
        }
        return texts;
      });
      await page.locator("#fit-depth").selectText();
      for (const sign of typed) {
        await page.keyboard.type(sign);
        await page.clock.runFor(300);
      }
      const announced = async () => (await told.jsonValue()).filter((text) => text !== "");
      expect(await announced()).toEqual([]);
      await expect
        .poll(() => page.locator("#fit-result").getAttribute("aria-busy"), { timeout: 60_000 })
        .toBeNull();
      await page.clock.runFor(10_000);
      const [only, ...others] = await announced();
      expect(others).toEqual([]);
      expect(only).toMatch(typed.includes("fathoms") ? /cannot be read/ : /^Fitted to water 1\.7/);
      await page.close();
    },
  );

  async function addressOf(address: string): Promise<string> {
    await sample.open(address);
    return sample.page.url();
  }

  const shipped = once(realSite);

  /** Water and tackle that the sums warn of, and the words of the page that say so. */
  const warned: readonly (readonly [string, string, string, RegExp])[] = [
    ["a rod too short", "straight-waggler-strung-out", "depth=4.5+m&rod=3+m", /use a sliding float/],
    [
      "a sliding float too light",
      "sliding-float-deep",
      "depth=4+m&capacity=2+AAA+%2B+1+BB",
      /will not pull the line through/,
    ],
    [
      "lead in the box",
      "straight-waggler-strung-out",
      "depth=2+m&box=lead+AAA%2C+BB%2C+No+4%2C+No+8",
      /lead/i,
    ],
  ];

  test.each(warned)(
    "%s is said at the depth, and stands on the card that is saved",
    async (_, id, query, says) => {
      const input = await shipped();
      const assets = [...input.assets.keys()].map(sitePaths.asset);
      const paths = [sitePaths.rig(id), sitePaths.rigData(id), sitePaths.asset("guide-data.js"), ...assets];
      const real = await rigPages(
        browser,
        paths.flatMap((path) => siteFile(path, input) ?? []),
      );
      const { page } = real;
      await real.open(`rigs/${id}.html?${query}`);
      await page.waitForSelector("#fit-card:enabled");
      const told = await page.locator("#fitted .findings li").allTextContents();
      const warning = told.find((text) => says.test(text));
      expect(warning).toBeDefined();
      await page.click("#fit-card");
      await page.waitForSelector("#fit-card-save:visible");
      expect(words(await page.textContent("#fit-card-shown"))).toContain(words(warning));
      const [saved] = await Promise.all([page.waitForEvent("download"), page.click("#fit-card-save")]);
      const { pages } = await readPdf(new Uint8Array(readFileSync((await saved.path())!)));
      expect(words(pages.map(({ text }) => text).join(" "))).toContain(words(warning));
      expect(real.said).toEqual([]);
      await page.close();
      real.close();
    },
  );
});
