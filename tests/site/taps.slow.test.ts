import { rmSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startBrowser } from "../support/browser.ts";
import { goOffline } from "../support/go-offline.ts";
import { serveFolder } from "../support/serve.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { realSiteFiles } from "./real-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";
const screen360 = { width: 360, height: 740 };

/** What a beginner at the water asks: each tap from the first page on, what is typed, and where the answer stands. */
interface Question {
  readonly asks: string;
  readonly taps: readonly (string | { readonly tap: string; readonly type: string })[];
  readonly answer: string;
}

const depth = { tap: "#water-depth", type: "1.7 m" };
const showRig = ".questions [type=submit]";
const foot = (name: string) => `.foot a:text-is("${name}")`;
const menu = (name: string) => `.menu a:text-is("${name}")`;

const questions: readonly Question[] = [
  { asks: "the card for my water", taps: [depth, showRig, "#fit-card"], answer: "#fit-card-shown svg" },
  { asks: "how far the float is from the hook", taps: [depth, showRig], answer: "#fit-brief:not(:empty)" },
  { asks: "a rig for running water", taps: ["text=Running water", depth, showRig], answer: "#fit-own-pace" },
  { asks: "a hook in the skin", taps: [menu("Safety")], answer: "#if-it-happens ~ ul li:nth-child(2)" },
  {
    asks: "what a float that lies flat means",
    taps: [foot("What the float says"), "text=As it settles", '#signs a:has-text("lies flat")'],
    answer: "#the-float-lies-flat",
  },
  {
    asks: "what to do in lightning",
    taps: [menu("Search"), { tap: "#query", type: "lightning" }, "#search-results a >> nth=0"],
    answer: "text=thunder >> nth=0",
  },
  { asks: "how to tie a hook", taps: [foot("Knots")], answer: "h1" },
  { asks: "the first lesson", taps: ['a.button:has-text("Start")'], answer: "h1" },
];
const mostTaps = 3;

describe.skipIf("reason" in started)(`eight questions on a phone${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let folder: string;

  beforeAll(async () => {
    folder = await writeToNewFolder(
      [...(await realSiteFiles())].map(([path, content]) => ({ path, content })),
    );
  }, 120_000);

  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test.each(["with a signal", "without one"])(
    "are answered in three taps %s",
    async (signal) => {
      const server = await serveFolder(join(folder, "site"));
      const context = await browser.newContext({ viewport: screen360 });
      const page = await context.newPage();
      if (signal === "without one") await goOffline(page, server);
      for (const question of questions) {
        expect(question.taps.length, question.asks).toBeLessThanOrEqual(mostTaps);
        await page.goto(server.address);
        await page.evaluate(() => sessionStorage.clear());
        for (const step of question.taps) await take(page, step);
        await page.waitForSelector(question.answer, { timeout: 10_000 });
      }
      await context.close();
      if (signal === "with a signal") await server.close();
    },
    120_000,
  );
});

async function take(page: Page, step: Question["taps"][number]): Promise<void> {
  if (typeof step === "string") return page.click(step);
  await page.click(step.tap);
  await page.keyboard.type(step.type);
}
