import { expect, test } from "vitest";
import { rigData } from "../../src/build/data.ts";
import { realSite } from "../site/real-site.ts";
import { printedHandouts } from "../support/tellers/printed-handouts.ts";
import { agrees } from "../support/tellers/statement.ts";

test("every handout of both sizes and the booklet tell of rigs what their data say", async () => {
  const site = await realSite();
  const data = new Map([...site.solved].map(([id, solved]) => [id, rigData(solved)]));
  const wrong: string[] = [];
  const kinds = new Map<string, number>();
  let files = 0;
  for await (const { told } of printedHandouts(site, () => true)) {
    files += 1;
    for (const [rig, one] of told) {
      kinds.set(one.of, (kinds.get(one.of) ?? 0) + 1);
      if (!agrees(data.get(rig)!, one)) wrong.push(`${rig}: ${JSON.stringify(one)}`);
    }
  }
  expect(wrong).toEqual([]);
  const { lessons, pages } = site.library;
  expect(files).toBe(2 * (lessons.length + pages.length) + 1);
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
  ];
  for (const kind of asked) expect(kinds.get(kind) ?? 0, kind).toBeGreaterThan(2);
}, 600_000);
