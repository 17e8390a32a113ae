import { expect, it } from "vitest";
import { solveChecked } from "../../src/build/build.ts";
import { checkSources } from "../../src/build/check-sources.ts";
import { layoutProblems } from "../../src/build/layout-problems.ts";
import { inMemory, type Keep } from "../../src/model/kept.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

it("a check of a guide in other colours lays nothing out again", async () => {
  const made: string[] = [];
  const kept = inMemory(10_000);
  const keep: Keep = (kind, from, make) =>
    kept(kind, from, () => {
      made.push(kind);
      return make();
    });
  const looks = [
    "",
    'look: { colours: { main: "#0a4d57", accent: "#a8330c" } }\n',
    "visit: { address: 1 Hollow Lane }\n",
  ];
  const laidOut: number[] = [];
  for (const look of looks) {
    made.length = 0;
    const files = contentWith({ "guide.yaml": `${contentWith()["guide.yaml"]}${look}` });
    const { value: solved } = await solveChecked(checkSources(sourcesOf(files), keep), keep);
    await layoutProblems(solved!, { date: "2026-11-28", siteAssets: new Map(), keep });
    laidOut.push(made.filter((kind) => ["cards", "handout", "tried page"].includes(kind)).length);
  }
  expect(laidOut[0]).toBeGreaterThan(2);
  expect(laidOut[1]).toBe(0);
  // An address stands on cards and handouts.
  expect(laidOut[2]).toBeGreaterThan(2);
});
