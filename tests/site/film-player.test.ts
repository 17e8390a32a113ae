import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { sitePaths } from "../../src/model/addresses.ts";
import { startBrowser } from "../support/browser.ts";
import { type FilmPages, filmPages } from "./film-pages.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";
const lesson = sitePaths.lesson("shotting-patterns");
const limitMs = 120_000;

// How long it takes, other ways to see it and a knot's film stand in a slow test.
describe.skipIf("reason" in started)(`a film on a page${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let films: FilmPages;

  beforeAll(async () => {
    films = await filmPages(browser, [lesson]);
  }, limitMs);

  afterAll(async () => {
    await browser.close();
    films.close();
  });

  const clock = (page: Page) => page.textContent(".film-clock");
  const press = (page: Page, does: string) => page.click(`[data-does=${does}]`);
  const caption = (page: Page) => page.textContent(".film-caption");

  test(
    "it goes step by step and by the slider, by keyboard as well, to the moments that the strip has",
    async () => {
      const page = await films.open(lesson);
      await press(page, "on");
      expect(await clock(page)).toBe("1.0 s");
      await press(page, "on");
      await press(page, "back");
      expect(await clock(page)).toBe("1.0 s");
      await page.focus(".film-time input");
      await page.keyboard.press("ArrowRight");
      expect(await clock(page)).toBe("1.1 s");
      expect(await page.getAttribute(".film-time input", "aria-valuetext")).toBe("1.1 s");
      await page.keyboard.press("End");
      const strip = await page.evaluate(() =>
        [...document.querySelectorAll(".film-strip figcaption")].map((one) => one.textContent),
      );
      expect(await caption(page)).toBe(strip.at(-1));
      await page.focus("[data-does=back]");
      await page.keyboard.press("Enter");
      expect(await caption(page)).not.toBe(strip.at(-1));
      const from = await clock(page);
      await press(page, "play");
      await page.clock.runFor(500);
      await press(page, "play");
      expect(await clock(page)).not.toBe(from);
      expect(films.said).toEqual([]);
      await page.context().close();
    },
    limitMs,
  );
});
