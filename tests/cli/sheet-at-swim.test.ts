import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { borrowedGuide, cli } from "../support/cli.ts";

let folder: string;

beforeAll(() => {
  folder = borrowedGuide(mkdtempSync(join(tmpdir(), "dotdown-")));
});
afterAll(() => rmSync(folder, { recursive: true }));

const sheet = (...words: string[]) => cli("sheet", ...words, "--content", folder);
const atLedge = ["--swim", "makebelieve-pool-willow", "--spot", "Foot of the ledge"];

it("makes a rig up for a place of a swim, with the hazards there before anything else", async () => {
  const { code, result } = await sheet("straight-waggler-bulk", ...atLedge);
  expect(code).toBe(0);
  expect(result).toMatch(/^Hazards here\n/);
  expect(result).toContain("Beyond the ledge, which a child cannot see from the bank");
  // Between the soundings of 1.9 m at 5.5 m and 2 m at 8 m.
  expect(result).toContain("Set it for 1.95 m (6 ft 5 in) of water");
  expect(result.indexOf("Hazards here")).toBeLessThan(result.indexOf("Set it for 1.95 m"));
});

it("moves its depth with the level of the water, and takes the pace of a river", async () => {
  const lower = await sheet("straight-waggler-bulk", ...atLedge, "--level", "-18 cm");
  expect(lower.result).toContain("Set it for 1.77 m");
  const river = ["--swim", "makebelieve-river-glide", "--spot", "Crease", "--json"];
  const { result } = await sheet("stick-shirt-button", ...river);
  expect(JSON.parse(result)).toMatchObject({ depths: [{ depthCm: 120 }] });
});

it.each([
  [["first-session", "--swim", "moon"], 'there is no swim "moon"; allowed: makebelieve-canal-wide'],
  [
    ["first-session", "--swim", "makebelieve-pool-willow"],
    "has several places; say which with --spot: On the shelf",
  ],
  [["first-session", "--spot", "On the shelf"], "--spot is of a swim; say which with --swim"],
  [["first-session", "--level", "5 cm"], "--level is of a swim; say which with --swim"],
  [
    ["stick-shirt-button", ...atLedge],
    "Stick float, shirt button is for running water, and Makebelieve Pool, the willow swim is still water",
  ],
  [["first-session", ...atLedge, "--level", "-3 m"], "--level leaves no water at Foot of the ledge"],
  [["first-session", ...atLedge, "--depth", "1 m"], "cannot be used with option '--depth"],
])("refuses %j with what to write instead", async (words, said) => {
  const { code, report } = await sheet(...words);
  expect(code).toBe(2);
  expect(report).toContain(said);
});

it("is for the middle depth, tells each tip to 5 mm, and offers no lead that the rule forbids", async () => {
  const { result } = await sheet("straight-waggler-bulk");
  // Its file names 2, 2.5 and 3 m.
  expect(result).toContain("Set it for 2.5 m");
  const [, tip] = /Tip showing +(\d+ mm)/.exec(result) ?? [];
  expect(result).toMatch(new RegExp(`Right +${tip}, give or take`));
  // Where the hook just touches it shows what it shows with the hook off the bed.
  expect(result).toContain(`${tip}, same  Start here.`);
  const tips = [...result.matchAll(/(\d+) mm(?:$|, same|, give or take \d+ mm for| {2})/gm)].map(([, mm]) =>
    Number(mm),
  );
  expect(tips.length).toBeGreaterThan(15);
  expect(tips.filter((mm) => mm % 5 !== 0)).toEqual([]);
  const [, table = ""] = /The same lock from other shot.*\n((?: {2}.*\n)+)/.exec(result) ?? [];
  const [, , ...rows] = table.trim().split("\n");
  const metals = rows.map((row) => row.trim().split(/ {2,}/)[0]);
  expect(metals.length).toBeGreaterThan(3);
  // No lead between 0.06 and 28.35 g in England and Wales: Control of Pollution (Anglers' Lead Weights) Regulations 1986.
  expect(metals).not.toContain("lead");
});
