import { expect, it } from "vitest";
import { solveChecked } from "../../src/build/build.ts";
import { checkSources } from "../../src/build/check-sources.ts";
import { layoutProblems } from "../../src/build/layout-problems.ts";
import { inMemory, type Keep } from "../../src/model/kept.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

/** What each of these guides, looked at one after the other, has laid out and tried. */
async function laidOut(guides: readonly string[]): Promise<readonly (readonly string[])[]> {
  let made: string[] = [];
  const kept = inMemory(10_000);
  const keep: Keep = (kind, from, make) =>
    kept(kind, from, () => {
      made.push(kind);
      return make();
    });
  const all: (readonly string[])[] = [];
  for (const guide of guides) {
    made = [];
    const files = contentWith({ "guide.yaml": guide });
    const { value: solved } = await solveChecked(checkSources(sourcesOf(files), keep), keep);
    await layoutProblems(solved!, { date: "2026-11-28", siteAssets: new Map(), keep });
    all.push([...new Set(made.filter((kind) => ["cards", "handout", "tried page"].includes(kind)))].sort());
  }
  return all;
}

const guide = contentWith()["guide.yaml"]!;

it("a check of a guide in other colours lays nothing out again", async () => {
  const coloured = `${guide}look: { colours: { main: "#0a4d57", accent: "#a8330c" } }\n`;
  const located = `${guide}visit: { address: 1 Hollow Lane }\n`;
  // An address stands on cards and handouts.
  expect(await laidOut([guide, coloured, located])).toEqual([
    ["cards", "handout", "tried page"],
    [],
    ["cards", "handout"],
  ]);
});

it("a check of a guide with another title, or other makers, lays out its cards alone again", async () => {
  const titled = guide.replace(/^title: .*$/m, "title: Another guide");
  const published = guide.replace(/^publisher: .*$/m, "publisher: Other makers");
  expect([titled, published]).not.toContain(guide);
  expect(await laidOut([guide, titled, published])).toEqual([
    ["cards", "handout", "tried page"],
    ["cards"],
    ["cards"],
  ]);
});
