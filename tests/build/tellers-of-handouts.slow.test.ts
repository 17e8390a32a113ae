import { expect, test } from "vitest";
import { rigData } from "../../src/build/data.ts";
import { realSite } from "../site/real-site.ts";
import { printedHandouts } from "../support/tellers/printed-handouts.ts";
import { agrees } from "../support/tellers/statement.ts";

test("every handout of both sizes and the booklet, as it is and folded, tell of rigs what their data say", async () => {
  const site = await realSite();
  const data = new Map([...site.solved].map(([id, solved]) => [id, rigData(solved)]));
  const wrong: string[] = [];
  const kinds = new Map<string, number>();
  let files = 0;
  const toFold = new Set<string>();
  const folded: string[] = [];
  for await (const { path, told } of printedHandouts(site, () => true)) {
    files += 1;
    if (/-a5-to-fold\.pdf$/.test(path)) toFold.add(path);
    if (path.includes("booklet"))
      folded.push(JSON.stringify(told.map(([rig, { teller: _, ...one }]) => [rig, one])));
    for (const [rig, one] of told) {
      kinds.set(one.of, (kinds.get(one.of) ?? 0) + 1);
      if (!agrees(data.get(rig)!, one)) wrong.push(`${rig}: ${JSON.stringify(one)}`);
    }
  }
  expect(wrong).toEqual([]);
  const { lessons, pages } = site.library;
  // All but those that are a single half sheet.
  expect(toFold.size).toBeGreaterThan(30);
  expect(files).toBe(2 * (lessons.length + pages.length) + toFold.size + 2);
  // Folded and leafed through, the booklet tells the same one after the other.
  expect(folded).toHaveLength(2);
  expect(folded[1]).toBe(folded[0]);
  expect([...kinds.values()].reduce((sum, count) => sum + count, 0)).toBeGreaterThan(400);
  // What lessons tell of a rig, whichever way: the words for pictures, tables, plots and figures in sentences.
  const asked = [
    "setting",
    "lock",
    "line placed",
    "tip",
    "hook over bed",
    "guide",
    "hang",
    "whip",
    "session feed",
    "kept",
    "too deep",
    "one shot",
    "kit",
    "metals",
    "moved",
  ];
  for (const kind of asked) expect(kinds.get(kind) ?? 0, kind).toBeGreaterThan(2);
});
