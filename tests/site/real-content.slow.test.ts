import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { HtmlValidate } from "html-validate";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readPdf } from "../print/read-pdf.ts";
import { startBrowser } from "../support/browser.ts";
import {
  brokenRules,
  clippedText,
  overWidthPx,
  smallTargets,
  spreadText,
  unfoldAll,
} from "../support/page-checks.ts";
import { realSiteFiles, serveRealSite } from "./real-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";
const files = await realSiteFiles();
const pages = [...files.keys()].filter((path) => path.endsWith(".html"));
const rigPages = pages.filter((path) => /^site\/rigs\/(?!index)/.test(path));

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

const ways = ["opened from disk", "served"] as const;

describe.skipIf("reason" in started)(`the shipped content in a browser${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  const said: string[] = [];
  const asked: string[] = [];
  let site: Awaited<ReturnType<typeof serveRealSite>>;
  let page: Page;

  beforeAll(async () => {
    page = await browser.newPage({ viewport: { width: 360, height: 740 } });
    page.on("console", (message) => said.push(`${page.url()}: ${message.text()}`));
    page.on("pageerror", (error) => said.push(`${page.url()}: ${error.message}`));
    page.on("request", (request) => asked.push(request.url()));
    site = await serveRealSite();
  });

  afterAll(async () => {
    await browser.close();
    await site.close();
  });

  /** Looks at every page with all its parts unfolded; served, each rig is fitted to one of its depths as well. */
  async function onEveryPage(
    look: () => Promise<readonly string[]>,
    way: (typeof ways)[number] = "opened from disk",
  ): Promise<string[]> {
    const found: string[] = [];
    // The page for addresses that are not there is a server's alone: it does not know how deep it is shown.
    const shown =
      way === "served"
        ? [...pages, ...rigPages.map(fittedPath)]
        : pages.filter((path) => path !== "site/404.html");
    for (const path of shown) {
      const served = site.address + path.replace(/^site\//, "");
      await page.goto(way === "served" ? served : pathToFileURL(join(site.folder, path)).href);
      if (path.includes("?depth")) await page.waitForSelector("#fitted .in-water", { state: "attached" });
      await unfoldAll(page);
      found.push(...(await look()).map((what) => `${path}: ${what}`));
    }
    return found;
  }

  const fittedPath = (path: string) => `${path}?depth=${depthsOn(path)[0]! / 100}+m`;

  test.each(ways.flatMap((way) => [[way, "light"] as const, [way, "dark"] as const]))(
    "%s, no page breaks a rule of axe-core in the %s theme with everything unfolded, says a word or asks another host",
    async (way, theme) => {
      await page.emulateMedia({ colorScheme: theme });
      expect(await onEveryPage(() => brokenRules(page), way)).toEqual([]);
      expect(said).toEqual([]);
      const own = [pathToFileURL(site.folder).href, site.address];
      expect(asked.filter((url) => !own.some((start) => url.startsWith(start)))).toEqual([]);
    },
  );

  // 320 px is what is left of 1280 px at four times the size. Source: WCAG 2.2, success criterion 1.4.10.
  test.each([
    [320, 256, "112.5%"],
    [320, 740, "112.5%"],
    [1280, 1024, "225%"],
  ] as const)(
    "no page scrolls sideways or clips text at %i × %i px with its text at %s, nor with its letters, words and lines set apart",
    async (width, height, rootSize) => {
      await page.setViewportSize({ width, height });
      const lost = async () => {
        const over = await overWidthPx(page, rootSize);
        return [...(over > 0 ? [`${over} px too wide`] : []), ...(await clippedText(page))];
      };
      const found = await onEveryPage(async () => {
        const plain = await lost();
        await spreadText(page);
        return [...plain, ...(await lost()).map((what) => `set apart: ${what}`)];
      }, "served");
      expect(found).toEqual([]);
    },
  );

  test("everything to press outside running text is at least 24 px wide and high", async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    expect(await onEveryPage(() => smallTargets(page))).toEqual([]);
  });

  test("every rig fitted to a depth of its own gives the figures that were built for that depth", async () => {
    await page.setViewportSize({ width: 1280, height: 900 });
    expect(rigPages.length).toBeGreaterThanOrEqual(10);
    for (const path of rigPages) {
      const [depth] = depthsOn(path);
      await page.goto(`${pathToFileURL(join(site.folder, path)).href}?depth=${depth! / 100}+m`);
      await page.waitForSelector("#fitted .in-water", { state: "attached" });
      expect(await page.textContent("#fit-problems"), path).toBe("");
      for (const part of ["h3", ".key-figures", ".depth-columns table", ".guide", ".in-water table"]) {
        const told = (id: string) => page.locator(`${id} ${part}`).allTextContents();
        expect(await told("#fitted"), `${part} of ${path}`).toEqual(await told(`#depth-${depth}`));
      }
    }
    expect(said).toEqual([]);
  });

  test("every rig that was fitted prints on one sheet, of A4 and of Letter", async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    const sheets: string[] = [];
    for (const path of rigPages) {
      await page.goto(pathToFileURL(join(site.folder, path)).href + fittedPath(path).slice(path.length));
      await page.waitForSelector("#fitted .in-water", { state: "attached" });
      for (const format of ["A4", "Letter"]) {
        const { pages: printed } = await readPdf(new Uint8Array(await page.pdf({ format })));
        if (printed.length !== 1) sheets.push(`${path} takes ${printed.length} sheets of ${format}`);
      }
    }
    expect(sheets).toEqual([]);
  });

  /** Depths that a rig's page shows [cm], deepest first. */
  function depthsOn(path: string): number[] {
    const ids = [...String(files.get(path)).matchAll(/href="#depth-(\d+)"/g)].map((match) =>
      Number(match[1]),
    );
    return ids.sort((a, b) => b - a);
  }
});
