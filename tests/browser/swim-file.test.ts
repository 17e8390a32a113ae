import { describe, expect, it } from "vitest";
import { type SwimProblem, swimFile, type TypedSwim } from "../../src/browser/swim-file.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import { hazardKinds } from "../../src/model/swim.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

const typed: TypedSwim = {
  title: 'Our pond: the "corner" # 1',
  summary: "A pond, with a shelf.",
  water: "flowing",
  pace: "10 m in 40 s",
  sounded: "2026-11-20",
  levelMark: "The third board",
  road: "Pond Road, at the gate",
  way: "Along the hedge",
  gridReference: "ZZ 1 2",
  places: "3",
  fish: "roach , Roach",
  rules: "No dogs.\nShut the gate: always.\n",
  line: "Straight out",
  soundings: [
    { fromBank: "0 m", depth: "40 cm" },
    { fromBank: "6 ft", depth: "3 ft" },
    { fromBank: "4 m", depth: "1.1 m" },
    { fromBank: "", depth: "" },
  ],
  spots: [
    { title: "Close in", fromBank: "2 m" },
    { title: "", fromBank: "" },
  ],
  hazards: [{ what: "soft edge", where: "By the reeds", measure: "Keep off." }],
};

const species = { "species/roach.yaml": "title: Roach\nasks: A bait.\nnotes: Silver.\n" };

function readBack(text: string) {
  const { value, messages } = readLibrary(sourcesOf(contentWith({ ...species, "swims/mine.yaml": text })));
  expect(messages).toEqual([]);
  return value!.swims[0]!;
}

const textOf = (swim: TypedSwim) => {
  const made = swimFile(swim);
  if ("problems" in made) throw new Error(JSON.stringify(made.problems));
  return made.text;
};

describe("the form of a swim", () => {
  it("makes a file that the reader takes, with all that was typed in it", () => {
    expect(readBack(textOf(typed))).toMatchObject({
      id: "mine",
      title: typed.title,
      summary: typed.summary,
      water: "flowing",
      paceMs: 0.25,
      sounded: "2026-11-20",
      levelMark: "The third board",
      access: { road: "Pond Road, at the gate", way: "Along the hedge", gridReference: "ZZ 1 2" },
      places: 3,
      fish: ["roach", "Roach"],
      rules: ["No dogs.", "Shut the gate: always."],
      lines: [
        {
          title: "Straight out",
          soundings: [
            { fromBankMm: 0, depthMm: 400 },
            { fromBankMm: expect.closeTo(1828.8, 6), depthMm: expect.closeTo(914.4, 6) },
            { fromBankMm: 4000, depthMm: 1100 },
          ],
        },
      ],
      spots: [{ title: "Close in", fromBankMm: 2000 }],
      hazards: [{ kind: "soft edge", where: "By the reeds", measure: "Keep off." }],
    });
  });

  it("makes one of the least that is wanted, and of each kind of hazard", () => {
    const least = {
      levelMark: "",
      way: "",
      gridReference: "",
      rules: "",
      hazards: [],
      water: "still",
      pace: "",
    };
    const swim = readBack(textOf({ ...typed, ...least }));
    expect(swim).toMatchObject({ water: "still", hazards: [], rules: [], access: { road: typed.road } });
    expect(swim.paceMs).toBeUndefined();
    const hazards = hazardKinds.map((what) => ({ what, where: "Here", measure: "Mind." }));
    expect(readBack(textOf({ ...typed, hazards })).hazards.map(({ kind }) => kind)).toEqual(hazardKinds);
  });

  it.each<[string, Partial<TypedSwim>, SwimProblem]>([
    ["no name", { title: " " }, { problem: "missing", field: "title", typed: "" }],
    ["no fish", { fish: "" }, { problem: "missing", field: "fish", typed: "" }],
    ["no pace in running water", { pace: "fast" }, { problem: "unread", field: "pace", typed: "fast" }],
    ["half a person", { places: "2.5" }, { problem: "unread", field: "places", typed: "2.5" }],
    [
      "a depth without its unit",
      { soundings: [...typed.soundings, { fromBank: "3 m", depth: "1" }] },
      { problem: "unread", field: "depth", typed: "1" },
    ],
    [
      "two depths at one place in two units",
      { soundings: [...typed.soundings, { fromBank: "400 cm", depth: "1 m" }] },
      { problem: "twice", field: "from-bank", typed: "400 cm" },
    ],
    [
      "a place beyond the soundings",
      { spots: [{ title: "Far", fromBank: "5 m" }] },
      { problem: "beyond", field: "spot", typed: "Far" },
    ],
    ["no place to fish at", { spots: [] }, { problem: "missing", field: "spot", typed: "" }],
    [
      "a hazard of which nothing is done",
      { hazards: [{ what: "boats", where: "There", measure: "" }] },
      { problem: "missing", field: "hazard", typed: "There" },
    ],
  ])("says of %s what is wrong, and makes nothing", (_, change, problem) => {
    expect(swimFile({ ...typed, ...change })).toEqual({ problems: [problem] });
  });

  it("wants depths at two places", () => {
    const one = { soundings: [{ fromBank: "2 m", depth: "1 m" }] };
    expect(swimFile({ ...typed, ...one })).toEqual({
      problems: [{ problem: "few", field: "depth", typed: "" }],
    });
  });
});
