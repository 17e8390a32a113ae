import { describe, expect, it } from "vitest";
import { baitInNote } from "../../src/checks/bait-in-note.ts";
import { bedClaims } from "../../src/checks/bed-claims.ts";
import type { InWater } from "../../src/model/in-water.ts";
import { contentWith } from "../support/smallest-content.ts";
import { brief, checkedOf, toldBy } from "./checked.ts";

describe("what a sentence says of bait and bed", () => {
  it.each([
    ["The bait lies on the bed.", { kind: "on the bed", free: false }],
    ["So the last part of the line lies along the bottom.", { kind: "on the bed", free: false }],
    ["Keep a bait still on the bottom when the wind blows.", undefined],
    ["Keep a bait still on the bottom in wind.", { kind: "on the bed", free: false }],
    ["The bait sinks in a curve and runs along just off the bed.", { kind: "off the bed", free: false }],
    ["Let the float go at full pace and the rig drags on the bed.", { kind: "on the bed", free: true }],
    ["The hook hangs 2 cm off the bed.", { kind: "above the bed", mm: 20 }],
    ["It hangs the bait one third of the way down.", { kind: "way down", share: 1 / 3 }],
    ["It hangs the bait a third of the way down.", { kind: "way down", share: 1 / 3 }],
    ["It hangs the bait a quarter of the way down.", { kind: "way down", share: 0.25 }],
    ["It hangs the bait two thirds of the way down.", { kind: "way down", share: 2 / 3 }],
    ["It hangs the bait three quarters of the way down.", { kind: "way down", share: 0.75 }],
    ["In 2 m of water it hangs the bait half-way down.", { kind: "way down", share: 0.5, depthMm: 2000 }],
    ["If the bait lies on the bed, go shallower.", undefined],
    ["Some let the bait lie on the bed.", undefined],
    ["A bed of feed goes on the bottom.", undefined],
    ["Tiny fish grab the bait before it is half way down.", undefined],
    ["Most bites come half way down the run.", undefined],
  ])("%s", (sentence, claim) => {
    expect(bedClaims(sentence).map((one) => one.claim)).toEqual(claim ? [claim] : []);
  });
});

/** The plain rig, fished in 1 m and 1.5 m, or deeper where it is set up in the water, with its setting and some of its words changed. */
function rig({ set = "", title = "Plain rig", purpose = "A rig for tests.", note = "", notes = "Notes." }) {
  const text = contentWith()
    ["rigs/plain.md"]!.replace("title: Plain rig", `title: ${title}`)
    .replace("A rig for tests.", purpose)
    .replace("every: 45 s", `every: 45 s, note: "${note}"`)
    .replace("depths:", `${set}depths:`)
    .replace("Notes.", notes);
  return { "rigs/plain.md": set.includes("up in the water") ? deeper(text) : text };
}

const over = "setting: over depth\noverdepth: 5 cm\n";
const off = "setting: off bottom\noverdepth: -5 cm\n";
/** Half way down in 2 m, two thirds in 3 m. */
const upBy = (length: string) => `setting: up in the water\noverdepth: -${length}\n`;
const up = upBy("1 m");
const deeper = (text: string) => text.replace("depths: [1 m, 1.5 m]", "depths: [2 m, 3 m]");
const told = (changes: Parameters<typeof rig>[0]) => toldBy(baitInNote, rig(changes));

describe("what a note says of the bait in still water", () => {
  it.each([
    ["a bait on the bed", { set: over, notes: "The bait lies on the bed." }],
    ["its own share of the depth", { set: up, notes: "In 2 m of water the bait hangs half way down." }],
    [
      "its share to a tenth of the depth",
      { set: upBy("80 cm"), notes: "In 2 m of water the bait hangs half way down." },
    ],
  ])("may be %s", (_, changes) => {
    expect(told(changes)).toEqual([]);
  });

  it("warns where the rig hangs it elsewhere, and says how it is set", () => {
    expect(told({ set: off, notes: "First.\n\nThe bait lies on the bed." })).toEqual([
      {
        at: expect.stringMatching(/^content\/rigs\/plain\.md:\d+:5$/),
        code: "bait-in-note",
        said: "bait lies on the bed",
        is: "is set 5 cm (2 in) off the bed",
      },
    ]);
  });

  it.each([
    ["another share of the depth", { set: up, notes: "In 3 m of water the bait hangs half way down." }],
    ["a share that is so in one of its depths alone", { set: up, notes: "The bait hangs half way down." }],
    [
      "a share that is off by more",
      { set: upBy("75 cm"), notes: "In 2 m of water the bait hangs half way down." },
    ],
    ["another place, in the purpose", { set: off, purpose: "Keep a bait on the bed." }],
    ["another place, in the note on feed", { set: off, note: "The bait lies on the bottom." }],
  ])("warns of %s", (_, changes) => {
    expect(told(changes)).toMatchObject([{ code: "bait-in-note" }]);
  });
});

describe("a note in running water", () => {
  /** The rig in a stream, its hook so far off the bed running free and held back by half. */
  function inStream(notes: string, freeMm: number, heldMm: number) {
    const checked = checkedOf(rig({ set: over, notes }));
    const hang = (heldBackShare: number, offBedMm: number, depthMm: number) => ({
      heldBackShare,
      hookDepthMm: depthMm - offBedMm,
    });
    const rigs = checked.rigs.map((solved) => ({
      ...solved,
      rig: { ...solved.rig, water: "flowing" as const },
      depths: solved.depths.map((depth) => {
        const flow = [hang(0, freeMm, depth.depthMm), hang(0.5, heldMm, depth.depthMm)];
        return { ...depth, inWater: { flow } as unknown as InWater };
      }),
    }));
    return baitInNote({ ...checked, rigs }).map(brief);
  }

  it("goes by where the stream puts the bait, not by the setting", () => {
    expect(inStream("The bait runs just off the bed.", 30, 200)).toEqual([]);
    expect(inStream("The bait drags on the bed.", 30, 200)).toMatchObject([
      { is: "has its bait 3 cm to 20 cm off the bed" },
    ]);
    expect(inStream("The bait drags on the bed.", 0, 200)).toEqual([]);
    expect(inStream("The bait runs just off the bed.", 0, 0)).toMatchObject([
      { is: "has its bait 0 cm to 0 cm off the bed" },
    ]);
  });

  it("is not held against what nobody has reckoned", () => {
    const checked = checkedOf(rig({ set: over, notes: "The bait drags on the bed." }));
    const rigs = checked.rigs.map(({ rig: one, ...solved }) => ({
      ...solved,
      rig: { ...one, water: "flowing" as const },
      depths: solved.depths.map(({ inWater: _, ...depth }) => depth),
    }));
    expect(baitInNote({ ...checked, rigs })).toEqual([]);
  });

  it("goes by the heights at which it hangs where a height is named", () => {
    expect(inStream("The bait rides 10 cm off the bed.", 30, 200)).toEqual([]);
    expect(inStream("The bait rides 40 cm off the bed.", 30, 200)).toMatchObject([
      { said: "40 cm off the bed" },
    ]);
    expect(inStream("The bait rides 1 cm off the bed.", 30, 200)).toMatchObject([
      { said: "1 cm off the bed" },
    ]);
  });

  it("goes by the float that runs free where it speaks of that", () => {
    const notes = "Let the float go at full pace and the rig drags on the bed.";
    expect(inStream(notes, 0, 200)).toEqual([]);
    expect(inStream(notes, 200, 0)).toMatchObject([{ said: "rig drags on the bed" }]);
  });
});
