import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { first } from "../../src/core/lists.ts";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { cardNotes } from "../../src/model/card-content.ts";
import { cardFormats } from "../../src/print/cards/card-formats.ts";
import { cardSides } from "../../src/print/cards/card-sides.ts";
import { layOutCard } from "../../src/print/cards/lay-out-card.ts";
import { paintPdf } from "../../src/print/pdf/pdf.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { shotRows } from "../../templates/pages/shot-groups.ts";
import { readPdf } from "../print/read-pdf.ts";
import { startBrowser } from "../support/browser.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { brokenRules, smallTargets, unfoldAll } from "../support/page-checks.ts";
import { sampleWaggler } from "../support/sample-rig.ts";
import { fittedPages, onDisk, sampleOnDisk } from "./sample-on-disk.ts";
import { sampleLibrary } from "./sample-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

describe.skipIf("reason" in started)(`the site opened from disk${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  const said: string[] = [];
  const asked: string[] = [];
  let folder: string;
  let pages: readonly string[];
  let context: BrowserContext;
  let page: Page;

  beforeAll(async () => {
    ({ folder, pages } = await sampleOnDisk());
    context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    page = await context.newPage();
    page.on("console", (message) => said.push(`${page.url()}: ${message.text()}`));
    page.on("pageerror", (error) => said.push(`${page.url()}: ${error.message}`));
    page.on("request", (request) => asked.push(request.url()));
  });

  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  // What one test answers is nothing to the next.
  beforeEach(() => page.evaluate(() => location.protocol === "file:" && sessionStorage.clear()));

  const open = (path: string) => page.goto(onDisk(folder, path));

  test("every page opens without a message and asks for nothing but its own files", async () => {
    for (const path of [...pages, ...fittedPages]) {
      await open(path);
      if (fittedPages.includes(path)) await page.waitForSelector("#fitted .in-water", { state: "attached" });
    }
    expect(said).toEqual([]);
    expect(asked.filter((url) => !url.startsWith(pathToFileURL(folder).href))).toEqual([]);
  });

  // Every page, in both themes, is looked at in a slow test.
  test("a fitted page breaks no rule of axe-core, and has nothing too small to press", async () => {
    await open(fittedPages[0]!);
    await page.waitForSelector("#fitted .in-water", { state: "attached" });
    await unfoldAll(page);
    expect(await brokenRules(page)).toEqual([]);
    expect(await smallTargets(page)).toEqual([]);
  });

  test("the picker shows one depth at a time and keeps it in the address", async () => {
    await open("site/rigs/waggler-strung-out.html");
    expect(await page.isVisible("#depth-150")).toBe(true);
    expect(await page.isVisible("#depth-300")).toBe(false);
    await page.focus('.depth-picker a[href="#depth-300"]');
    await page.keyboard.press("Enter");
    expect(await page.isVisible("#depth-150")).toBe(false);
    expect(await page.isVisible("#depth-300")).toBe(true);
    expect(page.url()).toMatch(/#depth-300$/);
    await page.reload();
    expect(await page.isVisible("#depth-300")).toBe(true);
    expect(await page.getAttribute('.depth-picker a[href="#depth-300"]', "aria-current")).toBe("true");
  });

  test("the guide's own fonts are the ones shown", async () => {
    await open("site/rigs/waggler-strung-out.html");
    const loaded = await page.evaluate(async () => {
      await document.fonts.ready;
      return [...document.fonts]
        .filter(({ family }) => family === "IBM Plex Sans")
        .map(({ weight, status }) => `${weight} ${status}`);
    });
    expect(loaded).toEqual(["400 loaded", "600 700 loaded"]);
  });

  test("a rig is fitted to typed figures, and the link brings them back", async () => {
    await open("site/rigs/waggler-strung-out.html");
    await page.click("#fit > summary");
    await page.waitForSelector("#fitted");
    expect(await page.textContent("#fitted h3")).toBe("Water 1.5 m deep");
    await page.fill("#fit-depth", "6 ft");
    await page.fill("#fit-temperature", "50 F");
    await page.waitForSelector("#fit-result:not([aria-busy])");
    // 6 ft is 1.8288 m (International Yard and Pound Agreement 1959).
    expect(await page.textContent("#fitted h3")).toBe("Water 1.83 m deep");
    const expected = solveRig({
      ...sampleWaggler.rig,
      depthsMm: [1828.8],
      conditions: { ...sampleWaggler.rig.conditions, tempC: 10 },
    });
    if (!expected.ok) throw new Error("the sample rig does not solve");
    const [depth] = expected.value.depths;
    expect(await page.textContent("#fitted .key-figures dd")).toBe(
      drawingKit.figures.gap(drawingKit.figures.settingMm(depth!)),
    );
    const rows = await page
      .locator("#fitted .depth-columns table")
      .first()
      .locator("tbody tr th")
      .allTextContents();
    expect(rows).toEqual(shotRows(depth!).map(({ shots }) => drawingKit.figures.shot(shots)));
    expect(await page.locator("#fitted .depth-columns .picture svg").count()).toBe(1);
    const link = await page.getAttribute("#fit-link", "href");
    expect(link).toContain("depth=6+ft&temperature=50+F");
    await page.goto(new URL(link!, page.url()).href);
    await page.waitForSelector("#fitted");
    expect(await page.inputValue("#fit-depth")).toBe("6 ft");
    expect(await page.textContent("#fitted h3")).toBe("Water 1.83 m deep");
    expect(said).toEqual([]);
  });

  test("the card made on the page is the built card of the same rig, byte for byte", async () => {
    const { rig } = sampleWaggler;
    const solved = solveRig({ ...rig, depthsMm: [2000] });
    if (!solved.ok) throw new Error("the sample rig does not solve");
    await open(`site/rigs/${rig.id}.html?depth=2+m`);
    await page.waitForSelector("#fit-card:enabled");
    await page.click("#fit-card");
    await page.waitForSelector("#fit-card-save:visible");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#fit-card-save")]);
    // The rig and the depth in centimetres, as the built cards are named.
    expect(download.suggestedFilename()).toBe(`${rig.id}-200.pdf`);
    const made = readFileSync((await download.path())!);
    const fonts = nodeFonts();
    const entry = sampleLibrary.rigs.find(({ id }) => id === rig.id)!;
    const { marking } = sampleLibrary.floats.find(({ float }) => float.id === rig.float.id)!;
    expect(marking).toMatch(/\w/);
    expect(entry.changeFirst.length).toBeGreaterThan(0);
    const faces = layOutCard(
      solved.value,
      cardFormats["ID-1"],
      sampleLibrary.guide,
      { ...drawingKit, measure: fonts.measure },
      fonts,
      { notes: cardNotes(entry, marking) },
    );
    const { publisher: author, language, edition: date } = sampleLibrary.guide;
    const title = drawingKit.words("card.document", { rig: rig.title });
    const built = paintPdf(cardSides(faces.alone), { title, author, language, date }, fonts);
    expect(made.equals(built)).toBe(true);
    expect((await readPdf(built)).pages).toHaveLength(2);
    expect(said).toEqual([]);
  });

  test("without scripts every depth is there to read", async () => {
    const plain = await browser.newContext({ javaScriptEnabled: false });
    const bare = await plain.newPage();
    await bare.goto(pathToFileURL(join(folder, "site/rigs/waggler-strung-out.html")).href);
    expect(await bare.isVisible("#depth-150")).toBe(true);
    expect(await bare.isVisible("#depth-300")).toBe(true);
    await plain.close();
  });

  test("the first page leads to the rig for the water in two taps, made for it, by keyboard too", async () => {
    await open("site/index.html");
    await page.click("#water-depth");
    await page.keyboard.type("1,7 m");
    await page.click(".questions [type=submit]");
    await page.waitForSelector("#fitted");
    expect(page.url()).toMatch(/rigs\/waggler-strung-out\.html\?depth=1%2C7\+m/);
    expect(await page.textContent("#fitted h3")).toBe("Water 1.7 m deep");
    // The water and its figures are on the screen, and so is the way to the card.
    for (const found of ["#fit-depth", "#fit-status", "#fit-card"]) {
      const box = (await page.locator(found).boundingBox())!;
      expect(box.y).toBeGreaterThan(0);
      expect(box.y + box.height).toBeLessThan(740);
    }
    await open("site/index.html");
    await page.focus("[name=water]:checked");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Tab");
    await page.keyboard.type("1.2 m");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#fitted");
    expect(page.url()).toMatch(/rigs\/(?:stick|avon).*\.html\?depth=1\.2\+m/);
  });

  test("what was answered goes along to other pages, and back to the first", async () => {
    const tab = await context.newPage();
    const go = (path: string) => tab.goto(pathToFileURL(join(folder, path)).href);
    await go("site/index.html");
    await tab.fill("#water-depth", "2.2 m");
    await go("site/rigs/waggler-strung-out.html");
    await tab.waitForSelector("#fitted");
    expect(await tab.textContent("#fitted h3")).toBe("Water 2.2 m deep");
    await go("site/rigs/index.html");
    expect(await tab.inputValue("#water-depth")).toBe("2.2 m");
    expect(await tab.getAttribute("#rig-list article:not([hidden]) a", "href")).toContain("depth=2.2+m");
    await go("site/index.html");
    expect(await tab.inputValue("#water-depth")).toBe("2.2 m");
    await tab.close();
  });

  test("answers stay on the device only where the reader says so, and go when told", async () => {
    const tab = await context.newPage();
    const kept = () => tab.evaluate(() => localStorage.length);
    await tab.goto(pathToFileURL(join(folder, "site/index.html")).href);
    await tab.fill("#water-depth", "2.2 m");
    expect(await kept()).toBe(0);
    await tab.check("#keep");
    expect(await kept()).toBe(1);
    await tab.uncheck("#keep");
    expect(await kept()).toBe(0);
    await tab.close();
  });

  test("a slider moves the depth in the rig's own steps, and the picture with it", async () => {
    await open("site/rigs/waggler-strung-out.html");
    await page.focus("#fit-slider");
    await page.keyboard.press("ArrowRight");
    await page.waitForSelector("#fitted");
    expect(await page.inputValue("#fit-depth")).toBe("1.55 m");
    expect(await page.textContent("#fitted h3")).toBe("Water 1.55 m deep");
    expect(await page.getAttribute("#fit-slider", "aria-valuetext")).toBe("1.55 m");
    expect(await page.isVisible("#depth-150")).toBe(false);
    await page.click('.depth-picker a[href="#depth-300"]');
    expect(await page.textContent("#fitted h3")).toBe("Water 3 m deep");
    await page.reload();
    await page.waitForSelector("#fitted");
    expect(await page.textContent("#fitted h3")).toBe("Water 3 m deep");
  });

  test("where no rig fits every answer, the filters show the nearest and say what they let go", async () => {
    await open("site/rigs/index.html?water=still&catch=chub");
    expect(await page.locator("#rig-list article:visible h2").allTextContents()).toEqual([
      sampleWaggler.rig.title,
    ]);
    expect(await page.textContent("#filter-result")).toBe(
      "Rigs shown: 1. No rig fits every answer, so these are the nearest. Not asked: What would you like to catch?",
    );
  });

  test("the search finds a rig by its title, and the section of a lesson by a word in it, which it marks", async () => {
    await open("site/search.html?q=shirt+button");
    expect(await page.locator("#search-results a").first().textContent()).toBe("Stick float, shirt button");
    await page.fill("#query", "weaker");
    const found = page.locator("#search-results li", { hasText: "Tie a loop" }).first();
    expect(await found.locator("mark").allTextContents()).toEqual(["weaker"]);
    await found.locator("a").click();
    await page.waitForSelector("#then");
    expect(page.url()).toMatch(/lessons\/first\.html#then$/);
  });

  test("the search forgives a slip of the finger", async () => {
    await open("site/search.html?q=shirt+buton");
    expect(await page.locator("#search-results a").first().textContent()).toBe("Stick float, shirt button");
  });

  test("the search says so when nothing is found", async () => {
    await open("site/search.html?q=xylophone");
    expect(await page.locator("#search-results li").count()).toBe(0);
    expect(await page.textContent("#search-count")).toContain("Nothing found");
  });

  test("a reader drives the films of a rig: the tip goes with its shot, and the float with the depth", async () => {
    const { rig } = sampleWaggler;
    const depthMm = first(rig.depthsMm);
    const solved = solveRig({ ...rig, depthsMm: [depthMm] });
    if (!solved.ok) throw new Error("the sample rig does not solve");
    const { figures } = drawingKit;
    await open(`site/try.html?rig=${rig.id}&depth=${figures.shortDepth(depthMm).replace(" ", "+")}`);
    const caption = (film: string) => page.textContent(`#try-${film} .film-caption`);
    await page.waitForSelector("#try-depth .film-caption");
    await expect.poll(() => caption("settling")).toContain("that is what the rig wants");
    const { size, oneMoreMm } = first(first(solved.value.depths).shotEffects);
    await page.click(`#try-settling [aria-label="Add one ${size}"]`);
    await expect
      .poll(() => caption("settling"))
      .toContain(oneMoreMm === null ? "The float is under" : `${figures.tip(oneMoreMm)} of tip shows`);
    await expect.poll(() => caption("depth")).not.toBe("");
    const before = await caption("depth");
    await page.focus("#try-depth input[type=range]");
    await page.keyboard.press("End");
    await expect.poll(() => caption("depth")).not.toBe(before);
    expect(said).toEqual([]);
  });
});
