import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { borrowedGuide, cli } from "../support/cli.ts";

let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "dotdown-"));
  borrowedGuide(folder);
});
afterAll(() => rmSync(folder, { recursive: true }));

const choose = (...words: string[]) => cli("choose", ...words, "--content", folder);

it("tells the hazards first, then for each place the rigs with their reasons, and what rules out the others", async () => {
  const { code, result, report } = await choose("makebelieve-river-glide", "--spot", "crease");
  expect({ code, report }).toEqual({ code: 0, report: "" });
  expect(result.indexOf("Fast water: ")).toBeLessThan(result.indexOf("Crease, 3.5 m"));
  expect(result).toMatch(/\n {2}1\. .*: \d+ points\n/);
  expect(result).toMatch(/Ruled out\n[\s\S]*It is for still water\./);
  expect(result).not.toContain("Inside line");
});

it("takes wind, learner, fish, box, rod, pace and level from whoever asks", async () => {
  const asked = [
    "--learner",
    "first",
    "--wind",
    "breeze",
    "--fish",
    "roach, perch",
    "--box",
    "AAA, BB, No 6, No 8",
  ];
  const more = ["--rod", "11 ft", "--level", "-10cm", "--spot", "On the shelf"];
  const { code, result } = await choose("makebelieve-pool-willow", ...asked, ...more);
  expect(code).toBe(0);
  expect(result).toContain("For somebody on their first day, in a breeze, after roach, perch.");
  expect(result).toContain("On the shelf, 3 m (9 ft 10 in) out: 0.95 m (3 ft 1 in) deep");
  expect(result).toContain("1. Whip, to hand");
  const faster = await choose("makebelieve-river-glide", "--pace", "10 m in 8 s", "--spot", "Crease");
  expect(faster.result).toContain("The pace is too strong: 1.25 m/s");
});

it("gives the same as data", async () => {
  const { result } = await choose("makebelieve-pool-willow", "--json");
  const { swim, places } = JSON.parse(result);
  expect(swim).toBe("makebelieve-pool-willow");
  expect(places).toHaveLength(4);
  expect(places[0].offered[0]).toMatchObject({ rig: expect.any(String), points: expect.any(Number) });
});

it.each([
  [["nowhere"], 'there is no swim "nowhere"; allowed: makebelieve-canal-wide'],
  [["makebelieve-pool-willow", "--spot", "moon"], 'has no place "moon"; there are On the shelf'],
  [["makebelieve-pool-willow", "--fish", "shark"], "--fish: the guide knows no shark; it knows"],
  [["makebelieve-pool-willow", "--level", "much"], "--level much is not understood; write it like"],
  [["makebelieve-pool-willow", "--level", "-3m"], "--level leaves no water at On the shelf"],
  [["makebelieve-pool-willow", "--box", "stones"], "--box: “stones” is no shot"],
  [["makebelieve-pool-willow", "--wind", "storm"], "Allowed choices are calm, breeze, strong"],
])("refuses %j with what to write instead", async (words, said) => {
  const { code, report } = await choose(...words);
  expect(code).toBe(2);
  expect(report).toContain(said);
});
