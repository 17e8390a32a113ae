import { rmSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { once } from "../../src/model/kept.ts";
import { startBrowser } from "../support/browser.ts";
import {
  brokenRules,
  clippedText,
  overWidthPx,
  smallTargets,
  spreadText,
  unfoldAll,
} from "../support/page-checks.ts";
import { fittedPages, onDisk, sampleOnDisk } from "./sample-on-disk.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

describe.skipIf("reason" in started)(`the sample's pages for all readers${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let folder: string;
  let pages: readonly string[];
  let page: Page;

  beforeAll(async () => {
    ({ folder, pages } = await sampleOnDisk());
    page = await browser.newPage({ viewport: { width: 360, height: 740 } });
  });

  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const open = (path: string) => page.goto(onDisk(folder, path));

  const themes = [
    ["light", "all"],
    ["dark", "colours"],
  ] as const;
  const sizes = [
    [320, "112.5%"],
    [1280, "225%"],
  ] as const;

  /** What each check finds: a page is opened once for all of them. */
  const found = once(async () => {
    const broken: Record<"light" | "dark", string[]> = { light: [], dark: [] };
    const tooWide: Record<number, string[]> = {};
    const small: string[] = [];
    for (const path of [...pages, ...fittedPages]) {
      await open(path);
      if (pages.includes(path)) small.push(...(await smallTargets(page)).map((text) => `${path}: ${text}`));
      if (path.includes("?depth")) await page.waitForSelector("#fitted .in-water", { state: "attached" });
      await unfoldAll(page);
      for (const [theme, rules] of themes) {
        await page.emulateMedia({ colorScheme: theme });
        broken[theme].push(...(await brokenRules(page, rules)).map((rule) => `${path}: ${rule}`));
      }
      await page.emulateMedia({ colorScheme: "light" });
      await spreadText(page);
      for (const [width, rootSize] of sizes) {
        await page.setViewportSize({ width, height: 740 });
        const over = await overWidthPx(page, rootSize);
        tooWide[width] ??= [];
        if (over > 0) tooWide[width].push(`${path}: ${over} px too wide`);
        tooWide[width].push(...(await clippedText(page)).map((text) => `${path}: ${text}`));
      }
      await page.setViewportSize({ width: 360, height: 740 });
    }
    return { broken, tooWide, small };
  });

  test.each(themes)("no page breaks a rule of axe-core in the %s theme", async (theme) => {
    expect((await found()).broken[theme]).toEqual([]);
  });

  test.each(sizes)(
    "no page scrolls sideways or clips text at %i px with its text at %s, everything unfolded and the text set apart",
    async (width) => {
      expect((await found()).tooWide[width]).toEqual([]);
    },
  );

  test("everything to press outside running text is at least 24 px wide and high", async () => {
    expect((await found()).small).toEqual([]);
  });
});
