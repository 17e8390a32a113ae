import { rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readLibrary } from "../../src/content/read-library.ts";
import { siteFile } from "../../src/site/site-files.tsx";
import { startBrowser } from "../support/browser.ts";
import { brokenRules } from "../support/page-checks.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";
import { realSite } from "./real-site.ts";

const input = await realSite();
const assets = ["site/assets/site.css", "site/assets/soundings.js", "site/assets/page.js"];
const files = ["site/soundings.html", ...assets].map((path) => siteFile(path, input)!);

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

describe.skipIf("reason" in started)(`the form of a swim${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let folder: string;
  let page: Page;

  beforeAll(async () => {
    folder = await writeToNewFolder(files);
    page = await browser.newPage({ viewport: { width: 360, height: 740 } });
  });

  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const open = (path: string) => page.goto(pathToFileURL(join(folder, path)).href);

  test("makes a file that the reader takes from what is typed into it, and says first what is wrong", async () => {
    await open("site/soundings.html");
    await page.click("form.soundings button");
    await page.waitForSelector("#swim-problems:not([hidden])");
    expect(await page.textContent("#swim-problems")).toContain("This is still wanted: Name of the swim.");
    expect(await page.isVisible("#swim-result")).toBe(false);
    const typed = { title: "Our pond", summary: "A pond.", road: "Pond Road", places: "2", fish: "roach" };
    for (const [name, text] of Object.entries(typed)) await page.fill(`#swim-${name}`, text);
    await page.fill("#swim-sounded", "2026-11-20");
    await page.fill("#swim-line", "Straight out");
    for (const [at, [from, depth]] of [
      ["0 m", "40 cm"],
      ["2 m", "90 cm"],
      ["4 m", "1.1 m"],
    ].entries()) {
      await page.locator("[name=from-bank]").nth(at).fill(from!);
      await page.locator("[name=depth]").nth(at).fill(depth!);
    }
    await page.locator("[name=spot]").first().fill("Close in");
    await page.locator("[name=spot-from-bank]").first().fill("2 m");
    await page.locator("select[name=hazard]").first().selectOption("soft edge");
    await page.locator("[name=hazard-where]").first().fill("By the reeds");
    await page.locator("[name=hazard-do]").first().fill("Keep off.");
    await page.click("form.soundings button");
    await page.waitForSelector("#swim-result:not([hidden])");
    const text = await page.inputValue("#swim-text");
    const { value, messages } = readLibrary(
      sourcesOf(
        contentWith({
          "swims/mine.yaml": text,
          "species/roach.yaml": "title: Roach\nasks: A bait.\nnotes: Silver.\n",
        }),
      ),
    );
    expect(messages).toEqual([]);
    expect(value!.swims[0]).toMatchObject({
      title: "Our pond",
      spots: [{ title: "Close in", fromBankMm: 2000 }],
      hazards: [{ kind: "soft edge", where: "By the reeds", measure: "Keep off." }],
    });
    expect(await page.getAttribute("#swim-save", "href")).toMatch(/^blob:/);
    expect(await brokenRules(page)).toEqual([]);
  });
});
