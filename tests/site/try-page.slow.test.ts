import { readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { first, last } from "../../src/core/lists.ts";
import { spoken } from "../../src/drawing/spoken.ts";
import type { SolvedRig } from "../../src/model/solved.ts";
import { siteFiles } from "../../src/site/site-files.tsx";
import { solveInWater } from "../../src/solve/in-water.ts";
import { sameShot } from "../../src/solve/same-shot.ts";
import { sinkInWay } from "../../src/solve/sink-in-way.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { startBrowser } from "../support/browser.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { brokenRules, overWidthPx, smallTargets } from "../support/page-checks.ts";
import { sampleStick, sampleWaggler } from "../support/sample-rig.ts";
import { serveFolder } from "../support/serve.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { sampleSite } from "./sample-site.ts";

const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";
const limitMs = 120_000;
const { figures } = drawingKit;

describe.skipIf("reason" in started)(`the page where a reader drives films${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  let folder: string;
  let server: Awaited<ReturnType<typeof serveFolder>>;
  const said: string[] = [];

  beforeAll(async () => {
    folder = await writeToNewFolder(siteFiles(await sampleSite()));
    server = await serveFolder(join(folder, "site"));
  }, limitMs);

  afterAll(async () => {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function open(
    query: string,
    options: BrowserContextOptions = {},
    base = server.address,
  ): Promise<Page> {
    const context = await browser.newContext({ viewport: { width: 360, height: 740 }, ...options });
    const page = await context.newPage();
    page.on("console", (message) => said.push(message.text()));
    page.on("pageerror", (error) => said.push(error.message));
    await page.goto(`${base}try.html${query}`);
    return page;
  }

  /** As the page solves it: the samples have figures of their own. */
  function solvedAnew({ rig }: SolvedRig, depthMm: number): SolvedRig {
    const solved = solveRig({ ...rig, depthsMm: [depthMm] });
    if (!solved.ok) throw new Error("the sample has no answer");
    return solved.value;
  }

  const asked = (id: string, depthMm: number) =>
    `?${new URLSearchParams([
      ["rig", id],
      ["depth", figures.shortDepth(depthMm)],
    ])}`;
  const waggler = first(solvedAnew(sampleWaggler, first(sampleWaggler.rig.depthsMm)).depths);
  const still = asked(sampleWaggler.rig.id, waggler.depthMm);

  test(
    "the tip goes with each shot as the sums of the rig have it, and back",
    async () => {
      const page = await open(still);
      const caption = page.locator("#try-settling .film-caption");
      await caption.waitFor();
      await expect
        .poll(() => caption.textContent())
        .toContain(`${figures.tip(waggler.tipShowingMm)} of tip shows: that`);
      for (const { size, oneMoreMm } of waggler.shotEffects) {
        await page.click(`#try-settling [aria-label="Add one ${size}"]`);
        const wanted =
          oneMoreMm === null
            ? "The float is under"
            : figures.tip(oneMoreMm) === figures.tip(waggler.tipShowingMm)
              ? "that is what the rig wants"
              : `${figures.tip(oneMoreMm)} of tip shows. The rig wants`;
        await expect.poll(() => caption.textContent(), { message: size }).toContain(wanted);
        await page.click(`#try-settling [aria-label="Take one ${size} off"]`);
      }
      await expect.poll(() => caption.textContent()).toContain("that is what the rig wants");
      for (const { size } of waggler.shotEffects)
        for (let i = 0; i < 12; i++) await page.click(`#try-settling [aria-label="Take one ${size} off"]`);
      await expect.poll(() => caption.textContent()).toMatch(/lies flat|of tip shows/);
      await page.click("#try-settling .try-shown > p > button");
      await expect.poll(() => caption.textContent()).toContain("that is what the rig wants");
      expect(said).toEqual([]);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "the depth is drawn through by slider and keyboard, and says at the guide's own lines what the guide says",
    async () => {
      const page = await open(still);
      const slider = page.locator("#try-depth input[type=range]");
      const caption = page.locator("#try-depth .film-caption");
      await slider.waitFor();
      await slider.focus();
      await page.keyboard.press("Home");
      // The guide begins 60 cm off the bed, and is drawn through centimetre by centimetre.
      const least = -60;
      const guide = first(solvedAnew(sampleWaggler, waggler.depthMm).depths).depthGuide;
      for (const step of guide.filter(({ overdepthMm }) => overdepthMm % 100 === 0)) {
        await slider.fill(String(step.overdepthMm / 10 - least));
        const where = figures.hookSet(step.overdepthMm, step.overdepthMm);
        await expect.poll(() => caption.textContent()).toContain(where);
        const told = (await caption.textContent())!;
        if (step.tipShowingMm !== null)
          expect(told).toContain(`${figures.tip(step.tipShowingMm)} of tip shows`);
        // What is said of the slider has a frame of its own.
        await expect.poll(() => slider.getAttribute("aria-valuetext")).toBe(spoken(told, drawingKit));
      }
      await page.keyboard.press("End");
      const end = await caption.textContent();
      await page.keyboard.press("ArrowLeft");
      expect(await slider.inputValue()).not.toBe(await slider.getAttribute("max"));
      expect(end).not.toBe("");
      // In still water nothing is held back.
      expect(await page.locator("#try-current:visible").count()).toBe(0);
      expect(said).toEqual([]);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "in running water the float is run free, held back and stopped; another depth keeps the slider where it was",
    async () => {
      const depth = last(sampleStick.depths);
      const page = await open(asked(sampleStick.rig.id, depth.depthMm));
      const caption = page.locator("#try-current .film-caption");
      await caption.waitFor();
      for (const [step, told] of [
        ["0", "Float run free"],
        ["10", "Float slowed by 50 %"],
        ["20", "Float stopped"],
      ] as const) {
        await page.click(`#try-current [data-step="${step}"]`);
        await expect.poll(() => caption.textContent()).toContain(told);
      }
      const solved = solvedAnew(sampleStick, depth.depthMm);
      const water = solveInWater(solved, first(solved.depths));
      const stopped = water.ok && water.value.flow.find(({ heldBackShare }) => heldBackShare === 1);
      if (!stopped) throw new Error("the sample hangs nowhere");
      expect(await caption.textContent()).toContain(figures.gap(Math.abs(stopped.leadMm)));
      const before = await page.locator("#try-current svg").first().innerHTML();
      await page.focus("#try-deep");
      await page.keyboard.press("ArrowLeft");
      await expect.poll(() => page.locator("#try-current svg").first().innerHTML()).not.toBe(before);
      expect(await caption.textContent()).toContain("Float stopped");
      expect(new URL(page.url()).searchParams.get("rig")).toBe(sampleStick.rig.id);
      expect(said).toEqual([]);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "two ways to sink are chosen, and it says which is down sooner as the sums have it; bites and cast are stepped through",
    async () => {
      const page = await open(still);
      const part = page.locator("#try-sinking");
      const caption = part.locator(".film-caption");
      await caption.waitFor();
      const solved = solvedAnew(sampleWaggler, waggler.depthMm);
      const depth = first(solved.depths);
      const choices = await part.locator("fieldset").first().locator("select[name=arrangement] option");
      const hung = sameShot(solved.rig, depth).map(({ arrangement }) => arrangement);
      expect(await choices.evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value))).toEqual(
        hung,
      );
      const ways = [
        { arrangement: hung[0]!, landing: "heap" },
        { arrangement: hung.at(-1)!, landing: "straight" },
      ] as const;
      for (const [i, way] of ways.entries())
        for (const name of ["arrangement", "landing"] as const)
          await part.locator("fieldset").nth(i).locator(`select[name=${name}]`).selectOption(way[name]);
      const ends = ways.map((way) => {
        const sunk = sinkInWay(solved, depth, way);
        if (!sunk.ok || !sunk.value) throw new Error("the sample does not sink so");
        return last(sunk.value.sink.line.moments).timeS;
      });
      const gainS = Math.abs(Math.round(ends[0]!) - Math.round(ends[1]!));
      const told = gainS === 0 ? "about the same time" : `there ${figures.time(gainS)} sooner`;
      const slider = part.locator("input[type=range]");
      await expect
        .poll(async () => {
          await slider.focus();
          await page.keyboard.press("End");
          return caption.textContent();
        })
        .toContain(told);
      for (const [name, end] of [
        ["bites", "Lift the rod."],
        ["cast", "Close the bail arm by hand."],
      ] as const) {
        await page.locator(`#try-${name} input[type=range]`).focus();
        await page.keyboard.press("End");
        await expect.poll(() => page.textContent(`#try-${name} .film-caption`)).toContain(end);
      }
      expect(said).toEqual([]);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "a cast begins anew for another rig, of the same float too",
    async () => {
      const page = await open(still);
      const slider = page.locator("#try-cast input[type=range]");
      await slider.focus();
      await page.keyboard.press("End");
      await expect.poll(() => slider.inputValue()).not.toBe("0");
      const [own, other] = [sampleWaggler.rig.id, sampleStick.rig.id];
      const data = join(folder, "site/data");
      const script = readFileSync(
        join(data, first(readdirSync(data).filter((name) => name.startsWith(own)))),
        "utf8",
      );
      await page.route(`**/data/${other}.*`, (route) =>
        route.fulfill({ contentType: "text/javascript", body: script.replaceAll(`"${own}"`, `"${other}"`) }),
      );
      await page.selectOption("#try-rig", other);
      await expect.poll(() => slider.inputValue()).toBe("0");
      expect(said).toEqual([]);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "paper gets the strips of its films, drawn when it is printed",
    async () => {
      const page = await open(still);
      await page.locator("#try-bites .film-caption").waitFor();
      expect(await page.locator(".film-strip figure").count()).toBe(0);
      await page.emulateMedia({ media: "print" });
      await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
      for (const name of ["depth", "bites", "cast"])
        expect(await page.locator(`#try-${name} .film-strip figure:visible`).count(), name).toBeGreaterThan(
          2,
        );
      expect(await page.locator(".film-player:visible").count()).toBe(0);
      expect(said).toEqual([]);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "a rig's page shows its films once they are asked for, for the depth that it is fitted to",
    async () => {
      const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
      const page = await context.newPage();
      page.on("pageerror", (error) => said.push(error.message));
      await page.goto(`${server.address}rigs/${sampleWaggler.rig.id}.html`);
      expect(await page.locator("#rig-films .film").count()).toBe(0);
      await page.click("#rig-films summary");
      const caption = page.locator("#rig-films #try-settling .film-caption");
      await caption.waitFor();
      await expect
        .poll(() => caption.textContent())
        .toContain(`${figures.tip(waggler.tipShowingMm)} of tip shows: that`);
      const title = () => page.getAttribute("#rig-films #try-depth .film-player", "aria-label");
      await expect.poll(title, { timeout: limitMs }).toContain(figures.shortDepth(waggler.depthMm));
      await page.fill("#fit-depth", "2.2 m");
      await expect.poll(title, { timeout: limitMs }).toContain("2.2 m");
      expect(said).toEqual([]);
      await context.close();
    },
    limitMs,
  );

  test(
    "a rig's page leads to it with the rig as it was fitted, and it leads back",
    async () => {
      const context = await browser.newContext();
      const page = await context.newPage();
      await page.goto(`${server.address}rigs/${sampleWaggler.rig.id}.html?depth=2.2+m&capacity=3+AAA`);
      await page.waitForSelector("#fitted");
      await page.click("#try-link");
      await page.locator("#try-settling .film-caption").waitFor();
      expect(await page.textContent("#try-deep-said")).toBe(figures.depth(2200));
      const back = new URL((await page.getAttribute("#try-own", "href"))!, page.url());
      expect(back.pathname).toContain(`/rigs/${sampleWaggler.rig.id}.html`);
      expect(Object.fromEntries(back.searchParams)).toMatchObject({ capacity: "3 AAA" });
      await context.close();
    },
    limitMs,
  );

  test(
    "what cannot be made is said, with nothing drawn of it",
    async () => {
      const page = await open(`?rig=${sampleWaggler.rig.id}&depth=deep`);
      await page.waitForFunction(() => document.getElementById("try-said")?.textContent !== "");
      expect(await page.locator(".try-shown svg:visible").count()).toBe(0);
      await page.context().close();
    },
    limitMs,
  );

  test(
    "opened from disk it does its own sums, and without a script it says what it needs",
    async () => {
      const disk = `${pathToFileURL(join(folder, "site")).href}/`;
      const page = await open(still, {}, disk);
      await page.locator("#try-depth .film-caption").waitFor();
      expect(said).toEqual([]);
      await page.context().close();
      const plain = await open(still, { javaScriptEnabled: false });
      expect(await plain.locator("noscript, main p:visible").allTextContents()).toEqual(
        expect.arrayContaining([expect.stringContaining("scripts switched on")]),
      );
      await plain.context().close();
    },
    limitMs,
  );

  test(
    "it breaks no rule of axe-core, needs no scrolling sideways, is large enough to press, and moves nothing by itself",
    async () => {
      for (const options of [{}, { reducedMotion: "reduce" }, { colorScheme: "dark" }] as const) {
        const page = await open(still, options);
        await page.locator("#try-depth .film-caption").waitFor();
        expect(await brokenRules(page)).toEqual([]);
        expect(await smallTargets(page)).toEqual([]);
        expect(await overWidthPx(page, "112.5%")).toBeLessThanOrEqual(0);
        const plays = await page.locator("#try-depth [data-does=play]:visible").count();
        expect(plays).toBe("reducedMotion" in options ? 0 : 1);
        await page.context().close();
      }
    },
    limitMs,
  );
});
