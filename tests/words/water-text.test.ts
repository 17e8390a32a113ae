import { describe, expect, it } from "vitest";
import { readLibrary } from "../../src/content/read-library.ts";
import type { Rig } from "../../src/model/rig.ts";
import { feedTable } from "../../src/solve/feed-in-water.ts";
import { withWater } from "../../src/solve/in-water.ts";
import { bulkGains } from "../../src/solve/sister-verdict.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { feedPlaceTable } from "../../src/words/water-tables.ts";
import { feedText, waterText } from "../../src/words/water-text.ts";
import { makeWords } from "../../src/words/words.ts";
import { bulked, rigWith, shotAt, sinks, strungOut, valueIn } from "../core/sink/rigs.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

const library = readLibrary(sourcesOf(contentWith())).value!;
const words = makeWords(library.words);
const kit = { words, figures: makeFigures("metric", words, "en") };

function text(changes: Partial<Rig> = {}) {
  const solved = valueIn(withWater(valueIn(solveRig({ ...library.rigs[0]!.rig, ...changes }))));
  return { ...waterText(solved, solved.depths[0]!, kit)!, feed: feedText(solved, kit) };
}
const flowing: Partial<Rig> = { water: "flowing", pacesMs: [0.2, 0.5] };

describe("what the page and the sheet say of a rig in the water", () => {
  it("in still water: the sister, the verdict, the feed, a ball and what was assumed, but no current", () => {
    const { sink, flow, feed } = text({ depthsMm: [2000] });
    const notes = sink.notes.join("\n");
    expect(notes).toMatch(
      /^The same shot in one bulk take the bait down in \d+ s laid out straight, \d+ s in a heap\./,
    );
    expect(notes).toMatch(/\nGathered/);
    expect(notes).toMatch(/In still water the bait goes down (through|with|behind) the feed/);
    expect(notes).toMatch(/A firm ball of groundbait 65 mm across is on the bed in \d s\./);
    expect(notes).toMatch(/drag area/);
    expect([flow, feed]).toEqual([[], []]);
  });

  it("in running water: holding back for either way of fixing the float, and from which pace it is too light", () => {
    const { flow, feed } = text(flowing);
    expect(flow).toHaveLength(2);
    for (const { notes } of flow) expect(notes[0]).toMatch(/foot alone.*top and bottom/);
    // Once, below the first of them.
    const why = flow.map(({ notes }) =>
      notes.filter((note) => /slow water.*quicker than the float/.test(note)),
    );
    expect(why.map(({ length }) => length)).toEqual([1, 0]);
    expect(flow.at(-1)!.notes.at(-1)).toMatch(/lifts this bait by more than 20 cm/);
    expect(feed).toHaveLength(1);
  });

  it("gives lift and pull a column for each way, with the rig's own marked", () => {
    const { head, rows } = text({ depthsMm: [2000] }).lift!.table;
    expect(head).toEqual(["Risen by", "Strung out, as here", "Spread bulk", "Bulk"]);
    // The telltale stands above the loop of a hook length of 30 cm, so it comes on after 60 cm.
    expect(rows[0]![0]).toBe("60 cm");
    expect(rows.at(-1)![0]).toBe("Greatest jump");
  });
});

describe("whether a bulk gains anything", () => {
  const both = (
    rig: (shot: typeof bulked) => ReturnType<typeof rigWith>,
    strung = strungOut,
    bulk = bulked,
  ) => [strung, bulk].map((shot) => [sinks(rig(shot), "straight"), sinks(rig(shot), "heap")]);

  it("it does in two metres, whichever of the two the rig is", () => {
    const [strung, bulk] = both(rigWith);
    expect(bulkGains(strung!, { arrangement: "bulk", shot: [], sink: bulk! })).toBe("both");
    expect(bulkGains(bulk!, { arrangement: "strung out", shot: [], sink: strung! })).toBe("both");
  });

  it("half-way up in shallow water it gains nothing", () => {
    const bulk = shotAt([
      [0.06, 150],
      [1, 400],
    ]);
    const strung = shotAt([[0.06, 150], ...[1, 2, 3, 4, 5].map((i) => [0.2, 150 + 108 * i] as const)]);
    const shallow = (shot: typeof bulk) =>
      rigWith(shot, { floatToHookMm: 800, depthMm: 800, hookLengthMm: 200 });
    const [a, b] = both(shallow, strung, bulk);
    expect(bulkGains(a!, { arrangement: "bulk", shot: [], sink: b! })).toBe("nothing");
  });
});

it("feed places are told upstream of the place where the fish are", () => {
  // 7/8 · 0.2 m/s · 1.5 m ÷ 0.05 m/s = 5.25 m.
  // Told to the half metre to which it can be thrown.
  const feed = valueIn(feedTable(0.05, [0.2, 0.1], [1500]));
  expect(feedPlaceTable(feed, kit).rows).toEqual([
    ["10 m in 50 s", "5.5 m"],
    ["10 m in 100 s", "2.5 m"],
  ]);
});
