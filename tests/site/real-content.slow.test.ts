import { rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { HtmlValidate } from "html-validate";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startBrowser } from "../support/browser.ts";
import { brokenRules, overWidthPx, smallTargets } from "../support/page-checks.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { realSiteFiles } from "./real-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";
const files = await realSiteFiles();
const pages = [...files.keys()].filter((path) => path.endsWith(".html"));

test("every page of the shipped content is valid HTML by the rules of html-validate", async () => {
  const validator = new HtmlValidate({ extends: ["html-validate:standard", "html-validate:a11y"] });
  const complaints: string[] = [];
  for (const path of pages) {
    const report = await validator.validateString(String(files.get(path)), path);
    for (const { messages } of report.results) {
      complaints.push(
        ...messages.map(({ line, ruleId, message }) => `${path}:${line} ${ruleId}: ${message}`),
      );
    }
  }
  expect(complaints).toEqual([]);
});

describe.skipIf("reason" in started)(`the shipped content opened from disk${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  const said: string[] = [];
  let folder: string;
  let page: Page;

  beforeAll(async () => {
    folder = await writeToNewFolder([...files].map(([path, content]) => ({ path, content })));
    page = await browser.newPage({ viewport: { width: 360, height: 740 } });
    page.on("console", (message) => said.push(`${page.url()}: ${message.text()}`));
    page.on("pageerror", (error) => said.push(`${page.url()}: ${error.message}`));
  });

  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function onEveryPage(look: (path: string) => Promise<readonly string[]>): Promise<string[]> {
    const found: string[] = [];
    for (const path of pages) {
      await page.goto(pathToFileURL(join(folder, path)).href);
      found.push(...(await look(path)).map((what) => `${path}: ${what}`));
    }
    return found;
  }

  test.each(["light", "dark"] as const)(
    "no page breaks a rule of axe-core in the %s theme",
    async (theme) => {
      await page.emulateMedia({ colorScheme: theme });
      expect(await onEveryPage(() => brokenRules(page))).toEqual([]);
      expect(said).toEqual([]);
    },
  );

  test.each([
    [320, "112.5%"],
    [1280, "225%"],
  ] as const)("no page scrolls sideways at %i px with its text at %s", async (width, rootSize) => {
    await page.setViewportSize({ width, height: 740 });
    const wide = await onEveryPage(async () => {
      const over = await overWidthPx(page, rootSize);
      return over > 0 ? [`${over} px too wide`] : [];
    });
    expect(wide).toEqual([]);
  });

  test("everything to press outside running text is at least 24 px wide and high", async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    expect(await onEveryPage(() => smallTargets(page))).toEqual([]);
  });

  test("every rig fitted to a depth of its own gives the figures that were built for that depth", async () => {
    await page.setViewportSize({ width: 1280, height: 900 });
    const rigs = pages.filter((path) => /^site\/rigs\/(?!index)/.test(path));
    expect(rigs.length).toBeGreaterThanOrEqual(10);
    for (const path of rigs) {
      const [depth] = await depthsOn(path);
      await page.goto(`${pathToFileURL(join(folder, path)).href}?depth=${depth! / 100}+m`);
      await page.waitForSelector("#fitted .in-water", { state: "attached" });
      expect(await page.textContent("#fit-problems"), path).toBe("");
      for (const part of ["h3", ".key-figures", ".depth-columns table", ".guide", ".in-water table"]) {
        const told = (id: string) => page.locator(`${id} ${part}`).allTextContents();
        expect(await told("#fitted"), `${part} of ${path}`).toEqual(await told(`#depth-${depth}`));
      }
    }
    expect(said).toEqual([]);
  });

  /** Depths that a rig's page shows [cm], deepest first. */
  async function depthsOn(path: string): Promise<number[]> {
    const ids = [...String(files.get(path)).matchAll(/href="#depth-(\d+)"/g)].map((match) =>
      Number(match[1]),
    );
    return ids.sort((a, b) => b - a);
  }
});
