import { rmSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { solveContent } from "../../src/build/build.ts";
import { startBrowser } from "../support/browser.ts";
import { goOffline } from "../support/go-offline.ts";
import { inUnits } from "../support/in-units.ts";
import { serveFolder } from "../support/serve.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { siteFilesOf } from "./real-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";
const screen360 = { width: 360, height: 740 };
/** The systems of units that a guide may speak, and 1.7 m as its readers write it. */
const unitSystems = [
  ["metric first", "1.7 m", "Water 1.7 m"],
  ["imperial", "5 ft 7 in", "Water 5 ft 7 in"],
] as const;

/** What a beginner at the water asks: each tap from the first page on, what is typed, and where the answer stands. */
interface Question {
  readonly asks: string;
  readonly taps: readonly (string | { readonly tap: string; readonly type: string })[];
  readonly answer: string;
}

/** Stands for the depth as a reader of the guide writes it. */
const written = "{depth}";
const depth = { tap: "#water-depth", type: written };
const showRig = ".questions [type=submit]";
const atTheBank = (name: string) => `main a:text-is("${name}")`;
const menu = (name: string) => `.menu a:text-is("${name}")`;

const questions: readonly Question[] = [
  { asks: "the card for my water", taps: [depth, showRig, "#fit-card"], answer: "#fit-card-shown svg" },
  { asks: "how far the float is from the hook", taps: [depth, showRig], answer: "#fit-brief:not(:empty)" },
  { asks: "a rig for running water", taps: ["text=Running water", depth, showRig], answer: "#fit-own-pace" },
  { asks: "a hook in the skin", taps: [menu("Safety")], answer: "#if-it-happens ~ ul li:nth-child(2)" },
  {
    asks: "what a float that lies flat means",
    taps: [atTheBank("What the float says"), "text=As it settles", '#signs a:has-text("lies flat")'],
    answer: "#the-float-lies-flat",
  },
  {
    asks: "what to do in lightning",
    taps: [menu("Search"), { tap: "#query", type: "lightning" }, "#search-results a >> nth=0"],
    answer: "text=thunder >> nth=0",
  },
  { asks: "how to tie a hook", taps: [atTheBank("Knots")], answer: "h1" },
  { asks: "the first lesson", taps: ['a.button:has-text("Start")'], answer: "h1" },
];
const mostTaps = 3;
/** How far a page has to be moved to all that is tapped and to the answer, together. */
const mostScreens = 1;

describe.skipIf("reason" in started)(`eight questions on a phone${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;

  afterAll(() => browser.close());

  describe.each(unitSystems)("of a guide in %s units", (units, typed, water) => {
    let folder: string;

    beforeAll(async () => {
      const { value } = await solveContent(inUnits(units), ["content"]);
      const files = await siteFilesOf(value!);
      folder = await writeToNewFolder([...files].map(([path, content]) => ({ path, content })));
    });

    afterAll(() => rmSync(folder, { recursive: true, force: true }));

    test.each(["with a signal", "without one"])(
      "are answered in three taps and within one screen %s",
      async (signal) => {
        const server = await serveFolder(join(folder, "site"));
        const context = await browser.newContext({ viewport: screen360, reducedMotion: "reduce" });
        const page = await context.newPage();
        if (signal === "without one") await goOffline(page, server);
        for (const { asks, taps, answer } of questions) {
          expect(taps.length, asks).toBeLessThanOrEqual(mostTaps);
          await page.goto(server.address);
          await page.evaluate(() => sessionStorage.clear());
          let screens = 0;
          for (const step of taps) {
            const { tap, type = "" } = typeof step === "string" ? { tap: step } : step;
            screens += await screensTo(page, tap);
            await page.click(tap);
            await page.keyboard.type(type.replace(written, typed));
          }
          screens += await screensTo(page, answer);
          expect(screens, asks).toBeLessThanOrEqual(mostScreens);
          if (taps.includes(depth)) expect(await page.textContent("#fitted h3"), asks).toContain(water);
        }
        await context.close();
        if (signal === "with a signal") await server.close();
      },
    );
  });
});

/** How far the page has to be moved until this is seen above the menu: all of it, or what is a line or two of it [screens]. */
async function screensTo(page: Page, selector: string): Promise<number> {
  const found = page.locator(selector).first();
  await found.waitFor({ timeout: 60_000 });
  const { y, height } = (await found.boundingBox())!;
  const menu = (await page.locator(".menu").boundingBox())!;
  const seen = 60;
  const below = Math.max(0, y + Math.min(height, seen) - menu.y);
  return (below + Math.max(0, -y)) / screen360.height;
}
