import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { parse } from "yaml";
import type { Finding } from "../../src/core/finding.ts";
import type { SolvedShot } from "../../src/model/solved.ts";
import type { UnitChoice } from "../../src/model/unit-choice.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { reasonText } from "../../src/words/reason.ts";
import { makeWords } from "../../src/words/words.ts";
import { shotRows } from "../../templates/pages/shot-groups.ts";
import { startBrowser } from "../support/browser.ts";
import { cli } from "../support/cli.ts";
import { writeToNewFolder } from "../support/site-folder.ts";
import { realSiteFiles } from "./real-site.ts";

/** What a reader with other water and tackle than the rig's types, and how an author writes the same. */
interface Example {
  readonly rig: string;
  readonly units: UnitChoice;
  readonly depth: string;
  readonly temperature?: string;
  readonly rod?: string;
  readonly pace?: string;
  /** A load measured on the reader's own float. */
  readonly measured?: { readonly load: string; readonly metal: string; readonly tip: string };
  /** The shot in the box, heaviest first; each example is typed without it, too. */
  readonly box: string;
}

type Typed = Omit<Example, "box"> & Partial<Pick<Example, "box">>;

const smallBox = "6 AAA, 8 BB, 10 No 4, 10 No 6, 20 No 8, 12 No 10";
/** None of the sizes that the rigs name for their telltales. */
const oddBox = "AAA, BB, No 4, 9 No 6";

const examples: readonly Example[] = [
  { rig: "first-session", units: "metric", depth: "1.35 m", temperature: "17 C", box: "AAA, No 4, No 8" },
  {
    rig: "straight-waggler-strung-out",
    units: "imperial",
    depth: "5 ft 6 in",
    temperature: "48 F",
    box: oddBox,
  },
  { rig: "straight-waggler-bulk", units: "metric first", depth: "2.2 m", rod: "11 ft", box: smallBox },
  {
    rig: "insert-waggler-close-in",
    units: "imperial",
    depth: "4 ft",
    measured: { load: "4 BB + 2 No 8", metal: "tin", tip: "12 mm" },
    box: smallBox,
  },
  {
    rig: "waggler-spread-bulk",
    units: "metric",
    depth: "185 cm",
    measured: { load: "2 AAA + 1 BB", metal: "lead", tip: "15 mm" },
    box: smallBox,
  },
  {
    rig: "lift-method",
    units: "imperial",
    depth: "45 in",
    temperature: "60 F",
    box: "SSG, AAA, BB, No 1, No 4, No 6",
  },
  {
    rig: "loaded-waggler-at-range",
    units: "metric first",
    depth: "2.7 m",
    rod: "4 m",
    temperature: "5 C",
    box: "AAA, BB, No 4, No 8",
  },
  { rig: "sliding-float-deep", units: "imperial", depth: "15 ft", rod: "12 ft", box: "AAA, BB, No 6" },
  {
    rig: "stick-shirt-button",
    units: "metric",
    depth: "1.3 m",
    pace: "10 m in 30 s",
    temperature: "9 C",
    box: smallBox,
  },
  {
    rig: "avon-bulk",
    units: "imperial",
    depth: "6 ft 3 in",
    pace: "1.5 ft/s",
    temperature: "52 F",
    box: "BB, No 4, No 8",
  },
  {
    rig: "balsa-spread",
    units: "metric first",
    depth: "2.1 m",
    pace: "0.5 m/s",
    measured: { load: "5 BB", metal: "lead", tip: "12 mm" },
    box: "BB, No 4, No 6, No 8",
  },
];

const words = makeWords(parse(readFileSync("content/words/en.yaml", "utf8")));
const started = await startBrowser();
const reason = "reason" in started ? ` (skipped: ${started.reason})` : "";

describe.skipIf("reason" in started)(`a worked example typed into a rig's page${reason}`, () => {
  if ("reason" in started) return;
  const { browser } = started;
  const own = mkdtempSync(join(tmpdir(), "dotdown-own-"));
  let folder: string;
  let page: Page;

  beforeAll(async () => {
    folder = await writeToNewFolder(
      [...(await realSiteFiles())].map(([path, content]) => ({ path, content })),
    );
    page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  });

  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
    rmSync(own, { recursive: true, force: true });
  });

  // A box goes along from rig to rig; each example begins without one.
  afterEach(() => page.evaluate(() => sessionStorage.clear()));

  const typed: readonly Typed[] = examples.flatMap(({ box, ...example }) => [example, { ...example, box }]);

  test.each(typed)("gives the figures of the sheet for $rig in $depth, with a box: $box", async (example) => {
    const told = await sheetOf(example, own);
    await typeInto(page, pathToFileURL(join(folder, `site/rigs/${example.rig}.html`)).href, example);
    expect(await page.textContent("#fit-problems")).toBe("");
    expect(await shownOn(page)).toEqual(expected(told, example.units));
  });
});

/** The figures of the sheet that are compared, of its one depth. */
interface Sheet {
  readonly depthCm: number;
  readonly floatToHookCm: number;
  readonly tipAsSetMm: number;
  readonly massG: number;
  readonly shot: readonly (Omit<SolvedShot, "fromHookMm"> & { readonly fromHookCm: number })[];
  readonly lock: Readonly<Record<"aboveEye" | "belowEye", readonly string[]>>;
  readonly shotEffects: readonly {
    readonly size: string;
    readonly oneMoreMm: number | null;
    readonly oneFewerMm: number | null;
  }[];
  readonly sink: readonly { readonly thirdsS: readonly number[] }[];
  readonly findings: readonly Finding[];
  readonly flow: readonly { readonly extraDepthCm: number | null }[];
}

/** Thirds in whole seconds that add up to the last of them, which is all of the fall. */
function wholeSeconds([upper, middle, lower]: readonly number[]): number[] {
  const [first, second, all] = [upper!, upper! + middle!, upper! + middle! + lower!].map(Math.round);
  return [first!, second! - first!, all! - second!, all!];
}

/** What the command line gives for the same example. What is no option of it is written as an author writes it. */
async function sheetOf(example: Typed, folder: string): Promise<Sheet> {
  const { rig, depth, temperature, rod, pace, measured, box } = example;
  const content = join(folder, rig);
  mkdirSync(content, { recursive: true });
  const rigText = readFileSync(`content/rigs/${rig}.md`, "utf8");
  if (pace) write(content, `rigs/${rig}.md`, rigText.replace(/^paces:.*$/m, `paces: [${pace}]`));
  if (measured) {
    const float = /^float: (\S+)$/m.exec(rigText)![1]!;
    const { load, metal, tip } = measured;
    const line = `measured: { load: ${load}, metal: ${metal}, tip-showing: ${tip} }`;
    write(
      content,
      `floats/${float}.yaml`,
      `${readFileSync(`content/floats/${float}.yaml`, "utf8").trimEnd()}\n${line}\n`,
    );
  }
  const { code, result, report } = await cli(
    ...["sheet", rig, "--json", "--content", "content", "--content", content, "--depth", depth],
    ...(temperature ? ["--temp", temperature] : []),
    ...(rod ? ["--rod", rod] : []),
    ...(box ? ["--box", box] : []),
  );
  if (code !== 0) throw new Error(report);
  const { depths } = JSON.parse(result) as { depths: Sheet[] };
  expect(depths).toHaveLength(1);
  return depths[0]!;
}

function write(folder: string, path: string, text: string): void {
  const file = join(folder, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}

/** Types the example by hand, field by field. */
async function typeInto(page: Page, address: string, example: Typed): Promise<void> {
  const { depth, temperature, rod, pace, measured, box, units } = example;
  await page.goto(address);
  await page.click("#fit > summary");
  await page.waitForSelector("#fitted");
  await page.selectOption("#fit-units", units);
  if (temperature) await page.fill("#fit-temperature", temperature);
  if (rod) await page.fill("#fit-rod", rod);
  if (pace) {
    const [way, time = ""] = pace.split(/ in | s$/);
    await page.fill("#fit-pace-way", way!);
    await page.fill("#fit-pace-time", time);
  }
  if (measured) {
    await page.fill("#fit-capacity", measured.load);
    await page.selectOption("#fit-capacity-basis", "measured");
    await page.selectOption("#fit-capacity-metal", measured.metal);
    await page.fill("#fit-tip", measured.tip);
  }
  if (box) {
    await page.click("#fit .box > summary");
    const terms = new Map(
      box.split(", ").map((term) => /^(\d*) ?(.+)$/.exec(term)!.slice(1).reverse()) as [string, string][],
    );
    for (const row of await page.locator("#fit [data-size]").all()) {
      const size = (await row.getAttribute("data-size"))!;
      await row.locator("[type=checkbox]").setChecked(terms.has(size));
      await page.waitForSelector("#fit-result:not([aria-busy])", { state: "attached" });
      const count = terms.get(size);
      // Where the rig takes none of a size it does not ask how many there are.
      if (count && (await row.locator(".count").isVisible())) await row.locator(".count").fill(count);
    }
  }
  await page.fill("#fit-depth", depth);
  await page.waitForSelector("#fit-result:not([aria-busy]) .in-water", { state: "attached" });
}

async function shownOn(page: Page) {
  const texts = (selector: string) => page.locator(`#fitted ${selector}`).allTextContents();
  const [shot, effects] = [".depth-columns table >> nth=0", ".depth-columns table >> nth=1"];
  const sink = ".in-water table >> nth=0";
  return {
    told: await texts(".findings li"),
    key: (await texts(".key-figures dd")).map((text) => text.replace(/give or take.*/, "")),
    loads: await texts(`${shot} >> tbody th`),
    places: await texts(`${shot} >> tbody td:nth-of-type(1)`),
    effects: await texts(`${effects} >> tbody tr`),
    sink: await texts(`${sink} >> tbody tr >> td`),
    deeper: await page
      .locator("#fitted .in-water table", { hasText: words("page.in-water.feed") })
      .locator("tbody tr td:nth-of-type(2)")
      .allTextContents(),
  };
}

/** The sheet's figures in the words of the page. */
function expected(sheet: Sheet, units: UnitChoice): Awaited<ReturnType<typeof shownOn>> {
  const figures = makeFigures(units, words, "en");
  const line = { depthMm: sheet.depthCm * 10, floatToHookMm: sheet.floatToHookCm * 10 };
  const shot = sheet.shot.map(({ fromHookCm, ...one }) => ({ ...one, fromHookMm: fromHookCm * 10 }));
  const [lockShot, lineShot] = [true, false].map((lock) =>
    shot.filter(({ role }) => (role === "lock") === lock),
  );
  const { lock } = sheet;
  const sized = (sizes: readonly string[]) =>
    sizes.map((size) => lockShot!.find((one) => one.size === size)!);
  const rows = shotRows({ lineShot: lineShot!, lockShot: lockShot! });
  const used = new Map(sheet.shot.map(({ size, massG }) => [size, massG]));
  const lightest = [...used].sort(([, a], [, b]) => a - b).slice(0, 3);
  const tip = (mm: number | null) => (mm === null ? words("page.rig.no-tip-under") : figures.tip(mm));
  return {
    told: sheet.findings.map((finding) => reasonText(finding, words, figures)),
    key: [figures.gap(figures.settingMm(line)), figures.tip(sheet.tipAsSetMm), figures.mass(sheet.massG)],
    loads: rows.map(({ shots }) => figures.shot(shots)),
    places: rows.map(({ role, fromHookMm, toHookMm, gapMm }) => {
      if (role === "lock") return figures.lock({ above: sized(lock.aboveEye), below: sized(lock.belowEye) });
      if (gapMm === 0) return figures.gap(fromHookMm);
      const [from, to] = [figures.shortGap(fromHookMm), figures.shortGap(toHookMm)];
      return words("page.rig.run", { from, to, gap: figures.gap(gapMm) });
    }),
    // Where the depth sets the tip, no shot is told to.
    effects: lightest.flatMap(([size]) => {
      const effect = sheet.shotEffects.find((one) => one.size === size);
      if (!effect) return [];
      const { oneFewerMm, oneMoreMm } = effect;
      return size.replaceAll(" ", "\u00a0") + tip(oneFewerMm) + tip(oneMoreMm);
    }),
    sink: sheet.sink.flatMap(({ thirdsS }) => wholeSeconds(thirdsS).map((time) => figures.time(time))),
    deeper: sheet.flow.map(({ extraDepthCm }) => {
      if (extraDepthCm === null) return words("page.in-water.not-kept");
      if (Math.abs(extraDepthCm) < 0.5) return words("page.in-water.as-set");
      const gap = figures.shortGap(Math.abs(extraDepthCm) * 10);
      return words(`told.plumbing.${extraDepthCm > 0 ? "deeper" : "shallower"}`, { gap });
    }),
  };
}
