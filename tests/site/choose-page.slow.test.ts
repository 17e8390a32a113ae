import { rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { HtmlValidate } from "html-validate";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { withId } from "../../src/core/lists.ts";
import type { Conditions } from "../../src/model/choosing.ts";
import { siteFile } from "../../src/site/site-files.tsx";
import { chooseRigs } from "../../src/solve/choosing/choose.ts";
import { conditionsAt } from "../../src/solve/choosing/conditions-at.ts";
import { startBrowser } from "../support/browser.ts";
import { brokenRules, overWidthPx, smallTargets } from "../support/page-checks.ts";
import { shippedGuide } from "../support/shipped-guide.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { realSite } from "./real-site.ts";

const input = await realSite();
const { library } = shippedGuide;
const path = "site/choose.html";
const scripts = [
  "site.css",
  "page.js",
  "guide-data.js",
  "rig-list.js",
  "choosing-data.js",
  "choose.js",
  "sums-worker.js",
];
const files = [path, ...scripts.map((name) => `site/assets/${name}`)].map((one) => siteFile(one, input)!);

test("the page to choose a rig by is valid HTML by the rules of html-validate", async () => {
  const validator = new HtmlValidate({ extends: ["html-validate:standard", "html-validate:a11y"] });
  const { results } = await validator.validateString(String(files[0]!.content), path);
  const said = results.flatMap(({ messages }) =>
    messages.map(({ line, ruleId, message }) => `${line} ${ruleId}: ${message}`),
  );
  expect(said).toEqual([]);
});

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

describe.skipIf("reason" in started)(`the form to choose a rig${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  const limitMs = 120_000;
  let folder: string;
  let page: Page;
  const errors: string[] = [];

  beforeAll(async () => {
    folder = await writeToNewFolder(files);
    page = await browser.newPage({ viewport: { width: 360, height: 740 } });
    page.on("pageerror", (error) => errors.push(error.message));
  }, limitMs);

  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const open = async (query: string) => {
    await page.goto(`${pathToFileURL(join(folder, path)).href}${query}`);
    await page.waitForFunction(() => document.getElementById("choose-said")?.textContent !== "");
  };
  const answered = () =>
    page.waitForFunction(() => !document.getElementById("choose-result")?.hasAttribute("aria-busy"));
  const offered = () => page.locator("#choose-result ol a").allTextContents();
  const ruledOut = () => page.locator("#choose-result dt").allTextContents();

  /** What the command line says of the same. */
  function core(conditions: Conditions) {
    const choice = chooseRigs(library.choosing!, conditions, library);
    return {
      offered: choice.offered.map(({ entry }) => entry.title),
      ruledOut: choice.ruledOut.map(({ entry }) => entry.title),
    };
  }

  test(
    "says of a swim's place what the command says, hazards first, and leads to each rig's page for that water",
    async () => {
      const swim = withId(library.swims, "makebelieve-river-glide");
      const spot = swim.spots.find(({ title }) => title === "Crease")!;
      await open("?place=makebelieve-river-glide%7CCrease");
      const said = core(conditionsAt(swim, spot, { wind: "calm", learner: "next" })!);
      expect(await offered()).toEqual(said.offered);
      expect(await ruledOut()).toEqual(said.ruledOut);
      const text = (await page.textContent("#choose-result"))!;
      expect(text.indexOf(swim.hazards[0]!.where)).toBeGreaterThan(0);
      expect(text.indexOf(swim.hazards[0]!.where)).toBeLessThan(text.indexOf(said.offered[0]!));
      const address = new URL((await page.getAttribute("#choose-result ol a", "href"))!);
      expect(address.pathname).toMatch(/\/rigs\/[a-z-]+\.html$/);
      expect(Object.fromEntries(address.searchParams)).toEqual({ depth: "1.2 m", pace: "10 m in 40 s" });
      expect(errors).toEqual([]);
    },
    limitMs,
  );

  test(
    "follows each answer, keeps them in the address, and says what it cannot read",
    async () => {
      const swim = withId(library.swims, "makebelieve-pool-willow");
      const [shelf] = swim.spots;
      await open("?place=makebelieve-pool-willow%7COn%20the%20shelf");
      await page.selectOption("#choose-wind", "breeze");
      await page.selectOption("#choose-learner", "first");
      await page.fill("#choose-level", "-10 cm");
      await page.click("summary:has-text('Which fish')");
      await page.check("[name=fish][value=Roach]");
      await answered();
      const asked = { wind: "breeze", learner: "first", levelMm: -100, fish: ["Roach"] } as const;
      const said = core(conditionsAt(swim, shelf!, asked)!);
      await page.waitForFunction(
        (first) => document.querySelector("#choose-result ol a")?.textContent === first,
        said.offered[0],
      );
      expect(await offered()).toEqual(said.offered);
      expect(await ruledOut()).toEqual(said.ruledOut);
      const given = new URL(page.url()).searchParams;
      expect(Object.fromEntries(given)).toMatchObject({
        wind: "breeze",
        learner: "first",
        level: "-10 cm",
        fish: "Roach",
      });
      await page.reload();
      await page.waitForSelector("#choose-result ol a");
      expect(await offered()).toEqual(said.offered);
      await page.fill("#choose-level", "much");
      await page.waitForFunction(() => document.querySelector("#choose-result ol") === null);
      expect(await page.textContent("#choose-said")).toContain(
        "“much” is not understood; write it like -10 cm.",
      );
    },
    limitMs,
  );

  test(
    "asks of another water its depth and distance, and leaves the level out",
    async () => {
      await open("?water=still");
      expect(await page.textContent("#choose-said")).toContain("How deep the water is: wanted, like 1.7 m.");
      expect(await page.isVisible("#choose-level")).toBe(false);
      await page.fill("#choose-depth", "1.2 m");
      await page.fill("#choose-distance", "6 m");
      await page.waitForSelector("#choose-result ol a");
      const conditions = {
        water: "still",
        depthMm: 1200,
        fromBankMm: 6000,
        fish: [],
        fishWanted: "every",
        wind: "calm",
        learner: "next",
      } as const;
      expect(await offered()).toEqual(core(conditions).offered);
    },
    limitMs,
  );

  test(
    "keeps to the rules for all readers in light and dark, at 320 pixels too",
    async () => {
      for (const colorScheme of ["light", "dark"] as const) {
        await page.emulateMedia({ colorScheme });
        await page.setViewportSize({ width: 320, height: 640 });
        await open("?place=makebelieve-canal-wide%7CNear%20shelf");
        await page.waitForSelector("#choose-result dt");
        expect([colorScheme, await brokenRules(page)]).toEqual([colorScheme, []]);
        expect(await overWidthPx(page, "16px")).toBe(0);
        expect(await smallTargets(page)).toEqual([]);
      }
    },
    limitMs,
  );
});
