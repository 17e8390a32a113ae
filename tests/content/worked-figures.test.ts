import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { fixedFloatLimitMm } from "../../src/core/depth/rod-reach.ts";
import { whipLineMm } from "../../src/core/depth/whip.ts";
import { feelStepMm, raiseStepMm } from "../../src/core/flow/feel-for-bed.ts";
import { terminalFallMs } from "../../src/core/sink/body-fall.ts";
import { pullG } from "../../src/core/tackle/shot.ts";
import { waterDensityKgM3 } from "../../src/core/water/water.ts";
import { realSite } from "../site/real-site.ts";

const { library, solved } = await realSite();
const water = library.guide.conditions;
const depthsOf = (rig: string) => solved.get(rig)!.depths;

/** Words one space apart, without signs, links and marks. */
const plain = (path: string) =>
  readFileSync(join("content", path), "utf8")
    .replace(/:[\w-]+\[[^\]]*\]\{[^}]*\}/g, "")
    .replace(/\]\([^)]*\)|[*[\]]/g, "")
    .replace(/\s+/g, " ");

const no8G = library.scales
  .find(({ id }) => id === library.guide.scaleId)!
  .sizes.find(({ name }) => name === "No 8")!.massG;
const pullOfNo8G = pullG(no8G, "tin", water);
/** Lift of a centimetre of a tip, by Archimedes [g]. */
const liftG = (diameterMm: number) => (Math.PI / 4) * diameterMm ** 2 * 10 * waterDensityKgM3(water) * 1e-6;
const maggot = library.baits.find(({ bait }) => bait.id === "maggot")!.bait;
const fall = terminalFallMs(maggot, water);
const fallCmS = fall.ok ? fall.value * 100 : Number.NaN;
const { portionMl, everyS } = solved.get("first-session")!.rig.feed;
/** Moves of a search with the plummet, one of them for each length. */
const movesCm = new Set(
  depthsOf("canal-light")[2]!.plumbing.steps.map(({ moveMm }) => Math.abs(moveMm) / 10),
);
const [half, quarter, eighth] = [...movesCm].filter((cm) => cm > 0 && cm < 100);
const onBed = (rig: string) =>
  Math.min(
    ...depthsOf(rig)[0]!.depthGuide.flatMap((one) =>
      one.shotOnBed.length > 0 ? [one.overdepthMm / 10] : [],
    ),
  );

/** Figures that a text works with and has typed, beside what they are by the model and the content; how near they need be. */
const worked: readonly (readonly [path: string, sentence: RegExp, is: readonly number[], within: number])[] =
  [
    [
      "lessons/telltales-and-lift-bites.md",
      /A No 8 of tin pulls about ([\d.]+) g in water/,
      [pullOfNo8G],
      0.005,
    ],
    [
      "lessons/telltales-and-lift-bites.md",
      /A tip 2 mm across gives about ([\d.]+) g of lift for each centimetre/,
      [liftG(2)],
      0.005,
    ],
    [
      "lessons/telltales-and-lift-bites.md",
      /rises by a bit more than ([\d.]+) cm/,
      [pullOfNo8G / liftG(2)],
      0.2,
    ],
    [
      "lessons/telltales-and-lift-bites.md",
      /rises only by (\d+) mm or so/,
      [(10 * pullOfNo8G) / liftG(4)],
      0.5,
    ],
    ["lessons/feeding.md", /a maggot falling about (\d+) cm in each second/, [fallCmS], 0.5],
    [
      "lessons/feeding.md",
      /Three millilitres every (\d+) seconds is (\d+) ml each minute/,
      [everyS, (60 * portionMl) / everyS],
      0.1,
    ],
    [
      "lessons/find-the-depth.md",
      /each move is half of the last, (\d+) cm, then (\d+) cm, then (\d+) cm/,
      [quarter!, eighth!, eighth! / 2],
      0.6,
    ],
    ["lessons/depth-on-a-river.md", /Move the float up the line by (\d+) cm/, [feelStepMm / 10], 0],
    ["lessons/depth-on-a-river.md", /Raise the hook by (\d+) cm and run it again/, [raiseStepMm / 10], 0],
    [
      "lessons/floats-for-still-water.md",
      /about the rod's length less (\d+) cm/,
      [(4000 - fixedFloatLimitMm(4000)) / 10],
      0,
    ],
    [
      "lessons/the-whip.md",
      /the hook should end about (\d+) cm short of the butt/,
      [(4000 - whipLineMm(4000)) / 10],
      0,
    ],
    [
      "rigs/laid-on-in-wind.md",
      /(\d+) cm will do\. With less than that the telltale no longer/,
      [onBed("laid-on-in-wind")],
      5,
    ],
  ];

describe("a figure that a text works with is what the model and the content make of it", () => {
  it.each(worked)("%s, %s", (path, sentence, is, within) => {
    const told = sentence.exec(plain(path));
    expect(told, `${path} no longer says so`).not.toBeNull();
    is.forEach((figure, at) => {
      expect(Math.abs(Number(told![at + 1]) - figure), `${told![0]}: ${figure}`).toBeLessThanOrEqual(within);
    });
  });

  it("the first move of plumbing, half a metre, and most hook lengths in still water are told in words", () => {
    expect(plain("lessons/find-the-depth.md")).toContain("go back by half a metre");
    expect(half).toBe(50);
    const still = library.rigs.filter(({ rig }) => rig.water === "still");
    const told = Number(
      /Most of our still water rigs use (\d+) cm/.exec(plain("lessons/tie-the-hook-length.md"))![1],
    );
    const like = still.filter(({ rig }) => rig.hookLengthMm === 10 * told);
    expect(like.length).toBeGreaterThan(still.length / 2);
  });

  it("the bulk that is opened out stands as far apart as its note and the lesson say", () => {
    const line = depthsOf("waggler-spread-bulk")[0]!.lineShot.filter(({ role }) => role === "bulk");
    const gaps = line.slice(1).map((shot, at) => (shot.fromHookMm - line[at]!.fromHookMm) / 10);
    for (const path of [
      "rigs/waggler-spread-bulk.md",
      "lessons/shotting-patterns.md",
      "rigs/straight-waggler-bulk.md",
    ]) {
      const [, told] =
        /(?:slide|lie|shot)[^.]*?\b(\d+) cm(?: or so)? (?:apart|between)|apart, (\d+) cm or so/i
          .exec(plain(path))!
          .filter(Boolean);
      for (const gap of gaps) expect(gap, path).toBeCloseTo(Number(told), 0);
    }
  });

  it("every tub of the guide is of the metal that the texts name", () => {
    const metals = new Set(library.tubs.flatMap(({ tub }) => tub.map(({ metal }) => metal)));
    expect([...metals]).toEqual(["tin"]);
    for (const path of readdirSync("content/lessons").map((name) => `lessons/${name}`)) {
      const told = /\b(?:our tubs every shot is|Ours are all of non-toxic) (\w+)/.exec(plain(path))?.[1];
      if (told !== undefined) expect(told, path).toBe("tin");
    }
  });
});
