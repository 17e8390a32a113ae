import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { sitePaths } from "../../src/model/addresses.ts";
import { startBrowser } from "../support/browser.ts";
import { brokenRules, overWidthPx, smallTargets } from "../support/page-checks.ts";
import { type FilmPages, filmPages } from "./film-pages.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";
const lesson = sitePaths.lesson("shotting-patterns");
const knots = sitePaths.lesson("first-knots");
const limitMs = 120_000;

describe.skipIf("reason" in started)(`a film on a page${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let films: FilmPages;
  let said: readonly string[];

  beforeAll(async () => {
    films = await filmPages(browser, [lesson, knots]);
    said = films.said;
  }, limitMs);

  afterAll(async () => {
    await browser.close();
    films.close();
  });

  const open = (options: BrowserContextOptions = {}, path = lesson) => films.open(path, options);

  const marks = (page: Page) =>
    page.evaluate(() =>
      [...document.querySelectorAll(".film-moving > :not([visibility])")].map((mark) => mark.outerHTML),
    );
  const clock = (page: Page) => page.textContent(".film-clock");
  /** Words and picture have a frame each, and what is new in a picture comes bit by bit. */
  const settle = (page: Page) => page.clock.runFor(400);
  const press = async (page: Page, does: string) => {
    await page.click(`[data-does=${does}]`);
    if (does !== "play") await settle(page);
  };
  const caption = (page: Page) => page.textContent(".film-caption");

  test(
    "nothing moves until somebody asks; then it runs by the clock, and stops where it is told",
    async () => {
      const page = await open();
      // What the page has to make ready as it opens may ask for a frame.
      await settle(page);
      const before = await marks(page);
      expect(before.length).toBeGreaterThan(10);
      await page.evaluate(() => {
        const ask = window.requestAnimationFrame;
        const counted = window as unknown as { asked: number };
        counted.asked = 0;
        window.requestAnimationFrame = (draw) => {
          counted.asked++;
          return ask(draw);
        };
      });
      const asked = () => page.evaluate(() => (window as unknown as { asked: number }).asked);
      await page.clock.runFor(3000);
      expect(await asked()).toBe(0);
      expect(await marks(page)).toEqual(before);
      expect(await clock(page)).toBe("0.0 s");
      await press(page, "play");
      await page.clock.runFor(4000);
      await press(page, "play");
      await settle(page);
      const at = Number((await clock(page))?.replace(" s", ""));
      expect(at).toBeGreaterThan(3.7);
      expect(at).toBeLessThan(4.2);
      const then = await marks(page);
      expect(then).not.toEqual(before);
      await page.clock.runFor(2000);
      expect(await marks(page)).toEqual(then);
      const stopped = await asked();
      expect(stopped).toBeGreaterThan(100);
      await page.clock.runFor(2000);
      expect(await asked()).toBe(stopped);
      expect(said).toEqual([]);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "its discs have the places, sizes and colours that its strip has, however they are drawn",
    async () => {
      const page = await open();
      await page.focus(".film-time input");
      await page.keyboard.press("End");
      await settle(page);
      const discs = (picture: string) =>
        page.evaluate((picture) => {
          const told: { readonly colour: string | null; readonly sizes: number[] }[] = [];
          const tell = (colour: string | null, ...sizes: number[]) => told.push({ colour, sizes });
          const of = (mark: Element, name: string) => Number(mark.getAttribute(name));
          const shown = [...document.querySelectorAll(picture)].at(-1)!;
          for (const mark of shown.querySelectorAll("circle[fill], polyline[stroke-linecap=round]")) {
            if (mark.closest("[visibility]")) continue;
            const edge = mark.getAttribute("stroke");
            if (mark.tagName === "polyline") {
              const [x, y, toX] = mark.getAttribute("points")!.split(" ").map(Number) as [
                number,
                number,
                number,
              ];
              if (toX - x < 0.02) tell(edge, x, y, of(mark, "stroke-width"));
              continue;
            }
            const moved = mark.closest("[transform]")?.getAttribute("transform")?.slice(10, -1) ?? "0 0";
            const [x, y] = moved.split(" ").map(Number) as [number, number];
            const at = [x + of(mark, "cx"), y + of(mark, "cy")] as const;
            const wide = edge ? of(mark, "stroke-width") : 0;
            if (edge) tell(edge, ...at, 2 * of(mark, "r") + wide);
            tell(mark.getAttribute("fill"), ...at, 2 * of(mark, "r") - wide);
          }
          return told;
        }, picture);
      const inPlayer = await discs(".film-player svg");
      expect(inPlayer.length).toBeGreaterThan(20);
      expect(await page.locator(".film-moving circle[fill]").count()).toBe(0);
      const inStrip = await discs(".film-strip svg");
      expect(inPlayer.length).toBe(inStrip.length);
      // The player is sent places to the tenth of a millimetre.
      for (const { colour, sizes } of inStrip) {
        const found = inPlayer.findIndex(
          (one) => one.colour === colour && one.sizes.every((size, i) => Math.abs(size - sizes[i]!) < 0.06),
        );
        expect(found, `${colour} ${sizes}`).toBeGreaterThanOrEqual(0);
        inPlayer.splice(found, 1);
      }
      await page.context().close();
    },
    limitMs,
  );

  test(
    "slower is a quarter of the pace; at the end it stops and begins anew",
    async () => {
      const page = await open();
      await press(page, "slower");
      await press(page, "play");
      await page.clock.runFor(4000);
      expect(await page.getAttribute("[data-does=slower]", "aria-pressed")).toBe("true");
      expect(Math.abs(Number((await clock(page))?.replace(" s", "")) - 1)).toBeLessThan(0.15);
      await press(page, "slower");
      await page.clock.fastForward(30_000);
      await settle(page);
      expect(await page.textContent("[data-does=play]")).toBe("Play");
      expect(await caption(page)).toMatch(/there \d+ s sooner in a bulk\.$/);
      await press(page, "play");
      await page.clock.runFor(300);
      expect(Number((await clock(page))?.replace(" s", ""))).toBeLessThan(1);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "a knot's end goes its way as long as somebody asks, and each step is as its picture has it",
    async () => {
      const page = await open({}, knots);
      const player = page.locator(".film-player").first();
      const drawn = () =>
        player
          .locator(".film-moving path")
          .evaluateAll((paths) =>
            paths.reduce((sum, path) => sum + (path as SVGPathElement).getTotalLength(), 0),
          );
      const strip = page.locator(".film-strip").first();
      const captions = await strip.locator("figcaption").allTextContents();
      const first = await drawn();
      await player.locator("[data-does=play]").click();
      await page.clock.runFor(3000);
      await player.locator("[data-does=play]").click();
      const begun = await drawn();
      expect(begun).not.toBe(first);
      // The words are of the step that is being done.
      expect(await player.locator(".film-caption").textContent()).toBe(captions[1]);
      await player.locator("[data-does=on]").click();
      await settle(page);
      expect(await drawn()).toBeGreaterThan(begun);
      await player.locator(".film-time input").focus();
      await page.keyboard.press("End");
      await settle(page);
      expect(await player.locator(".film-caption").textContent()).toBe(captions.at(-1));
      expect(await player.locator(".film-moving text").allTextContents()).toEqual(["10 mm", "true size"]);
      expect(said).toEqual([]);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "while it runs, a frame has other words or another picture, never both",
    async () => {
      for (const path of [lesson, knots]) {
        const page = await open({}, path);
        await page.evaluate(() => {
          const seen: string[][] = [];
          const player = document.querySelector(".film-player")!;
          const ask = window.requestAnimationFrame;
          window.requestAnimationFrame = (draw) =>
            ask((atMs) => {
              draw(atMs);
              seen.push(
                [".film-caption", ".film-clock", ".film-moving"].map(
                  (part) => player.querySelector(part)?.innerHTML ?? "",
                ),
              );
            });
          (window as unknown as { seen: string[][] }).seen = seen;
        });
        await page.locator("[data-does=play]").first().click();
        await page.clock.runFor(7000);
        const seen = await page.evaluate(() => (window as unknown as { seen: string[][] }).seen);
        const changes = seen.slice(1).map((one, i) => one.map((part, at) => part !== seen[i]![at]));
        expect(changes.some(([words]) => words)).toBe(true);
        expect(changes.some(([, , picture]) => picture)).toBe(true);
        expect(changes.filter(([words, seconds, picture]) => (words || seconds) && picture)).toEqual([]);
        await page.context().close();
      }
    },
    limitMs,
  );

  test(
    "what stands below a caption stays where it is, however long the captions are",
    async () => {
      const page = await open({}, knots);
      const player = page.locator(".film-player").first();
      const heights = new Set<number>();
      const lengths = new Set<number>();
      for (let step = 0; step < 5; step++) {
        heights.add(await player.evaluate((one) => (one as HTMLElement).offsetHeight));
        lengths.add(((await player.locator(".film-caption").textContent()) ?? "").length);
        await player.locator("[data-does=on]").click();
        await settle(page);
      }
      expect(Math.max(...lengths)).toBeGreaterThan(2 * Math.min(...lengths));
      expect(heights.size).toBe(1);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "captions are read out where it stands, not while it runs",
    async () => {
      const page = await open();
      expect(await page.getAttribute(".film-caption", "aria-live")).toBe("polite");
      await press(page, "play");
      await page.clock.runFor(500);
      expect(await page.getAttribute(".film-caption", "aria-live")).toBe("off");
      await press(page, "play");
      expect(await page.getAttribute(".film-caption", "aria-live")).toBe("polite");
      await page.context().close();
    },
    limitMs,
  );

  test.each([
    ["without a script", { javaScriptEnabled: false }],
    ["with less motion", { reducedMotion: "reduce" }],
  ] as const)(
    "%s its strip stands with its captions, and no player",
    async (_, options) => {
      const page = await open(options);
      expect(await page.locator(".film-strip svg:visible").count()).toBe(4);
      expect(await page.locator(".film-strip figcaption:visible").count()).toBe(4);
      expect(await page.locator(".film-player:visible").count()).toBe(0);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "on a screen the player stands in place of the strip, on paper the strip",
    async () => {
      const page = await open();
      expect(await page.locator(".film-strip:visible").count()).toBe(0);
      expect(await page.locator(".film-player:visible").count()).toBe(1);
      await page.emulateMedia({ media: "print" });
      expect(await page.locator(".film-strip svg:visible").count()).toBe(4);
      expect(await page.locator(".film-player:visible").count()).toBe(0);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "it breaks no rule of axe-core, needs no scrolling sideways and is large enough to press",
    async () => {
      const page = await open();
      // What looks for broken rules goes by the clock itself.
      await page.clock.resume();
      expect(await brokenRules(page)).toEqual([]);
      expect(await smallTargets(page)).toEqual([]);
      expect(await overWidthPx(page, "112.5%")).toBeLessThanOrEqual(0);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "it goes step by step and by the slider, by keyboard as well, to the moments that the strip has",
    async () => {
      const page = await open();
      await press(page, "on");
      expect(await clock(page)).toBe("1.0 s");
      await press(page, "on");
      await press(page, "back");
      expect(await clock(page)).toBe("1.0 s");
      await page.focus(".film-time input");
      await page.keyboard.press("ArrowRight");
      await settle(page);
      expect(await clock(page)).toBe("1.1 s");
      expect(await page.getAttribute(".film-time input", "aria-valuetext")).toBe("1.1 s");
      await page.keyboard.press("End");
      await settle(page);
      const strip = await page.evaluate(() =>
        [...document.querySelectorAll(".film-strip figcaption")].map((one) => one.textContent),
      );
      expect(await caption(page)).toBe(strip.at(-1));
      await page.focus("[data-does=back]");
      await page.keyboard.press("Enter");
      await settle(page);
      expect(await caption(page)).not.toBe(strip.at(-1));
      // Near its end the clock tells whole seconds: where it is to the tenth, its slider has.
      expect(await clock(page)).toMatch(/^\d+ s$/);
      const from = await page.inputValue(".film-time input");
      await press(page, "play");
      await page.clock.runFor(500);
      await press(page, "play");
      await settle(page);
      expect(await page.inputValue(".film-time input")).not.toBe(from);
      expect(said).toEqual([]);
      await page.context().close();
    },
    limitMs,
  );
});
