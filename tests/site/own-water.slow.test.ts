import { rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { siteFiles } from "../../src/site/site-files.tsx";
import { readPdf } from "../print/read-pdf.ts";
import { startBrowser } from "../support/browser.ts";
import { depthSpellings } from "../support/depth-spellings.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { readCode } from "../support/read-code.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { sampleLibrary, sampleSite } from "./sample-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";
/** The sample rig finds room for its shot from here on [mm]. */
const leastMadeUpMm = 1000;
const rigPage = "site/rigs/waggler-strung-out.html";

describe.skipIf("reason" in started)(`a rig's page asked for another water${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  const said: string[] = [];
  let folder: string;
  let page: Page;

  beforeAll(async () => {
    folder = await writeToNewFolder(siteFiles(await sampleSite()));
    page = await browser.newPage({ viewport: { width: 360, height: 740 } });
    page.on("console", (message) => said.push(message.text()));
    page.on("pageerror", (error) => said.push(error.message));
  });

  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const open = (query: string) => page.goto(pathToFileURL(join(folder, rigPage)).href + query);

  const unfoldAll = () =>
    page.evaluate(() => {
      for (const part of document.querySelectorAll("#fit, #fit details")) part.setAttribute("open", "");
    });

  /** What the page shows and offers: the title of the fitted water and whether a card of it may be had. */
  const shown = async () => {
    await page.waitForSelector("#fit-result:not([aria-busy])", { state: "attached" });
    return page.evaluate(() => ({
      title: document.querySelector("#fitted h3")?.textContent ?? null,
      card: !(document.getElementById("fit-card") as HTMLButtonElement).disabled,
    }));
  };

  test("no way of writing a depth leaves a result or a card for another water", async () => {
    await open("?depth=1.5+m");
    await page.waitForSelector("#fitted");
    const texts = depthSpellings.map(({ text }) => text);
    expect(new Set(texts).size).toBeGreaterThanOrEqual(300);
    const shownFor = await page.evaluate(async (spellings) => {
      const field = document.getElementById("fit-depth") as HTMLInputElement;
      const card = document.getElementById("fit-card") as HTMLButtonElement;
      const got: { title: string | null; card: boolean }[] = [];
      for (const spelling of spellings) {
        field.value = spelling;
        field.dispatchEvent(new Event("input", { bubbles: true }));
        while (document.querySelector("#fit-result[aria-busy]"))
          await new Promise((soon) => setTimeout(soon));
        got.push({ title: document.querySelector("#fitted h3")?.textContent ?? null, card: !card.disabled });
      }
      return got;
    }, texts);
    const wrong = depthSpellings.flatMap(({ text, mm }, at) => {
      const got = shownFor[at]!;
      const refused = got.title === null && !got.card;
      const fits = mm !== null && got.card && got.title === `Water ${drawingKit.figures.depth(mm)} deep`;
      // The sample rig needs some water to be made up at all.
      const right = mm === null ? refused : fits || (refused && mm < leastMadeUpMm);
      return right ? [] : [{ text, mm, ...got }];
    });
    expect(wrong).toEqual([]);
    expect(said).toEqual([]);
  });

  test("a depth that cannot be read comes back with its range, an example and the likely readings to tap", async () => {
    await open("?depth=6");
    await page.waitForSelector("#fit-problems button");
    expect(await shown()).toEqual({ title: null, card: false });
    expect(await page.textContent("#fit-problems li")).toContain(
      "“6” cannot be read, or in more than one way. Write a figure from 0.2 m to 12 m, like 1.7 m.",
    );
    expect(await page.getAttribute("#fit-depth", "aria-invalid")).toBe("true");
    expect(await page.locator("#fit-problems button").allTextContents()).toEqual([
      "Did you mean 6 m?",
      "Did you mean 6 ft?",
    ]);
    await page.click("text=Did you mean 6 ft?");
    expect(await shown()).toEqual({ title: "Water 1.83 m deep", card: true });
    expect(await page.textContent("#fit-problems")).toBe("");
    expect(await page.getAttribute("#fit-depth", "aria-invalid")).toBe(null);
  });

  const unread = [
    ["depth", ""],
    ["rod", "long"],
    ["temperature", "99"],
    ["capacity", "3 XYZ"],
    ["box", "-3 AAA"],
    ["box", "none"],
  ] as const;

  test("what cannot be read leaves no card while it stands in its field", async () => {
    await open("?depth=1.5+m");
    await page.waitForSelector("#fitted");
    await unfoldAll();
    const type = (name: string, text: string) =>
      page.evaluate(
        ([field, typed]) => {
          const input = document.querySelector<HTMLInputElement>(`[name="${field}"]`)!;
          const before = input.value;
          input.value = typed!;
          input.dispatchEvent(new Event("input", { bubbles: true }));
          return before;
        },
        [name, text],
      );
    for (const [name, text] of unread) {
      const before = await type(name, text);
      expect(await shown(), `${name} “${text}”`).toEqual({ title: null, card: false });
      await type(name, before);
      expect(await shown(), `${name} “${before}”`).toEqual({ title: "Water 1.5 m deep", card: true });
    }
  });

  test.each(unread)("%s given as “%s” in the address leaves no card", async (name, text) => {
    await open(`?${new URLSearchParams({ depth: "1.5 m", [name]: text })}`);
    await page.waitForSelector("#fit-problems li");
    expect(await shown()).toEqual({ title: null, card: false });
  });

  test("what the sums warn of stands above the picture and is announced with the result", async () => {
    await open("?depth=9+m");
    await page.waitForSelector("#fitted");
    const warned = await page.locator("#fitted .findings li").allTextContents();
    expect(warned.join(" ")).toContain("use a sliding float");
    await expect.poll(() => page.textContent("#fit-said")).toContain(warned[0]);
    const places = await page.evaluate(() =>
      ["#fitted .findings", "#fitted .picture"].map(
        (found) => document.querySelector(found)!.getBoundingClientRect().top,
      ),
    );
    expect(places[0]).toBeLessThan(places[1]!);
  });

  test("ticks and counts are the reader's own box; what it changes is told and announced, and back at the guide's not", async () => {
    await open("?depth=1.5+m");
    await page.waitForSelector("#fitted");
    await unfoldAll();
    const row = (size: string) => page.locator(`#fit [data-size="${size}"]`);
    const loads = await page
      .locator("#fitted .depth-columns table")
      .first()
      .locator("tbody th")
      .allTextContents();
    const telltale = loads.at(-1)!;
    expect(telltale).toMatch(/^(?:\d+ × )?No\u00a0\d+$/);
    const size = telltale.replace(/^\d+ × /, "").replace("\u00a0", " ");
    // How many is asked of the sizes that it takes, and of no others.
    expect(await row(size).locator(".count").isVisible()).toBe(true);
    expect(await page.locator("#fit .count:visible").count()).toBeLessThan(
      await page.locator("#fit .count").count(),
    );
    await row(size).locator("[type=checkbox]").uncheck();
    await page.waitForSelector("#fitted .in-water", { state: "attached" });
    const told = () => page.locator("#fitted .findings li").allTextContents();
    await expect.poll(async () => (await told()).join(" ")).toContain("One size worth buying:");
    expect((await told()).join(" ")).toMatch(/From your box: .+ down the line, where the guide has /);
    expect((await told()).join(" ")).toMatch(/The bait takes \d+ s to sink/);
    await expect.poll(() => page.textContent("#fit-said")).toContain("From your box:");
    expect(new URL(page.url()).searchParams.get("box")).not.toContain(size);
    await page.reload();
    // Until all of the answer is there, rows may still move below the pointer.
    await page.waitForSelector("#fitted .in-water", { state: "attached" });
    await unfoldAll();
    expect(await row(size).locator("[type=checkbox]").isChecked()).toBe(false);
    await row(size).locator("[type=checkbox]").check();
    await expect
      .poll(() => page.textContent("#fit-status"))
      .toContain("Your box makes it as the guide has it.");
    expect((await told()).filter((text) => text.includes("box"))).toEqual([]);
    await page.click("#fit [type=reset]");
    await expect.poll(() => page.url()).not.toContain("box=");
    expect(said).toEqual([]);
  });

  test("a box that cannot make the rig leaves no card", async () => {
    await open("?depth=1.5+m&box=SSG");
    await expect
      .poll(() => page.textContent("#fit-status"))
      .toContain("These shot (SSG) do not make this rig");
    expect(await shown()).toEqual({ title: null, card: false });
    expect(said).toEqual([]);
  });

  test("the card is on the screen at the next tap, both sides, and goes with the water that it is for", async () => {
    await open("?depth=2.2+m");
    await page.waitForSelector("#fit-card:enabled");
    await page.click("#fit-card");
    await page.waitForSelector("#fit-card-shown svg >> nth=1");
    expect(await page.textContent("#fit-card-shown")).toContain("2.2 m");
    expect(await page.isVisible("#fit-card-save")).toBe(true);
    await page.fill("#fit-depth", "2.3 m");
    expect(await page.locator("#fit-card-shown svg").count()).toBe(0);
    expect(await page.isVisible("#fit-card-save")).toBe(false);
  });

  test("what a card had no room for is said beside it", async () => {
    await open("?depth=2.2+m");
    await page.waitForSelector("#fit-card:enabled");
    await page.evaluate(() => {
      const side = { widthMm: 54, heightMm: 86, items: [] };
      const card = { front: side, back: side, lacks: ["true-tip", "change-first"] };
      Object.assign(globalThis, { dotdownCard: async () => card });
    });
    await page.click("#fit-card");
    await expect
      .poll(() => page.textContent("#fit-card-status"))
      .toBe(
        "This is the card, both sides. It had no room for the tip at its true size, what to change first: you find that below, on this page.",
      );
  });

  test("the figures are shown as a code that another phone reads", async () => {
    await open("?depth=2.2+m");
    await page.waitForSelector("#fitted");
    await page.evaluate(() => {
      for (const part of document.querySelectorAll("#fit, #fit-share")) part.setAttribute("open", "");
    });
    await page.waitForSelector("#fit-code svg");
    // The rest of the answer may come meanwhile, and the page with the code in it move.
    const read = async () => readCode(await page.locator("#fit-code svg").screenshot());
    await expect
      .poll(read)
      .toBe(`${sampleLibrary.guide.siteAddress}rigs/waggler-strung-out.html?depth=2.2+m`);
  });

  test("a built depth that was picked is not overruled by the depth of an earlier answer", async () => {
    await open("?depth=2.2+m");
    await page.waitForSelector("#fitted");
    await open("");
    await page.waitForSelector("#fitted");
    expect((await shown()).title).toBe("Water 2.2 m deep");
    await page.goto("about:blank");
    await page.goto(`${pathToFileURL(join(folder, rigPage)).href}#depth-150`);
    await page.click("#fit > summary");
    await page.waitForSelector("#fitted");
    expect((await shown()).title).toBe("Water 1.5 m deep");
  });

  test("a fitted page prints as the rig that was asked for, on one sheet", async () => {
    await open("?depth=2.2+m");
    await page.waitForSelector("#fitted .in-water", { state: "attached" });
    const { pages } = await readPdf(new Uint8Array(await page.pdf({ format: "A4" })));
    expect(pages).toHaveLength(1);
    const text = pages[0]!.text.replace(/\s+/g, " ");
    expect(text).toContain("Water 2.2 m deep");
    for (const left of ["Save this as a pocket card", "What you need", "Water 1.5 m deep"]) {
      expect(text).not.toContain(left);
    }
  });

  test("where what makes cards cannot be had, the page says that and not that the figures are wrong", async () => {
    await open("?depth=2.2+m");
    await page.waitForSelector("#fit-card:enabled");
    await page.evaluate(() => {
      document.getElementById("fit-card")!.dataset.script = "not-there.js";
    });
    await page.click("#fit-card");
    await expect.poll(() => page.textContent("#fit-card-status")).toContain("not on this phone yet");
    said.splice(0);
  });
});
