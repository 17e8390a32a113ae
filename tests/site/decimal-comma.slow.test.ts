import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { solveContent } from "../../src/build/build.ts";
import { startBrowser } from "../support/browser.ts";
import { germanClub } from "../support/german-club.ts";
import { siteFilesOf } from "./real-site.ts";
import { type RigPages, rigPages } from "./rig-page.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

const pointed = /\d\.\d/;

describe.skipIf("reason" in started)(`a guide in German on a phone${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let german: RigPages;
  const rig = "rigs/first-session.html";

  beforeAll(async () => {
    const { value } = await solveContent(germanClub, ["club"], "content");
    const files = await siteFilesOf(value!);
    german = await rigPages(
      browser,
      [...files].map(([path, content]) => ({ path, content })),
    );
  });

  afterAll(async () => {
    await browser.close();
    german.close();
  });

  test.each(["1,7", "1.7 m"])("takes “%s” and shows every figure with a comma", async (typed) => {
    const { page } = german;
    await german.open(`${rig}?depth=1,2+m`);
    await page.waitForSelector("#fitted");
    expect(await page.inputValue("#fit-depth")).toBe("1,2 m");
    await page.fill("#fit-depth", typed);
    await expect.poll(() => page.textContent("#fitted h3")).toContain("1,7 m");
    await page.waitForSelector("#fitted .in-water", { state: "attached" });
    for (const part of ["#fitted", "#fit-brief", "#fit-status"]) {
      expect(await page.textContent(part), part).not.toMatch(pointed);
    }
    expect(await page.textContent("#fit-status")).toContain("1,7 m");
    await page.click("#fit-card");
    await page.waitForSelector("#fit-card-shown svg >> nth=1");
    expect(await page.textContent("#fit-card-shown")).toContain("1,7 m");
    expect(await page.textContent("#fit-card-shown")).not.toMatch(pointed);
    await page.reload();
    await expect.poll(() => page.textContent("#fitted h3")).toContain("1,7 m");
    expect(german.said).toEqual([]);
  });

  test("the slider writes its depth with a comma, and a likely reading is offered with one", async () => {
    const { page } = german;
    await german.open(`${rig}?depth=1,2+m`);
    await page.waitForSelector("#fitted");
    await page.focus("#fit-slider");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => page.inputValue("#fit-depth")).toMatch(/^1,\d+ m$/);
    await page.fill("#fit-depth", "5,5");
    await expect
      .poll(() => page.locator("#fit-problems button, #fitted h3").allTextContents())
      .toContainEqual(expect.stringContaining("5,5 m"));
    expect(await page.textContent("#fit-answer")).not.toMatch(pointed);
  });

  test("the depth asked for on the first page goes along with its comma", async () => {
    const { page } = german;
    await german.open("index.html");
    await page.fill("#water-depth", "1,3 m");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#fitted");
    expect(await page.textContent("#fitted h3")).toContain("1,3 m");
  });
});
