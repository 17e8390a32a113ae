import { expect, it } from "vitest";
import { worded } from "../../src/checks/messages.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import { sampleSwim } from "../support/sample-swim.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

const notes = `swim: pond
date: 2026-05-09
level: -5 cm
pace: 10 m in 40 s
depths: [{ spot: Close in, depth: 85 cm }]
rigs:
  - { rig: plain, spot: Close in, worked: Maggot., catches: [{ fish: roach, count: 3 }] }
`;
const read = (from = "", to = "") => {
  expect(notes).toContain(from);
  const { value, messages } = readLibrary(
    sourcesOf(contentWith({ ...sampleSwim(), "notes/day.yaml": notes.replace(from, to) })),
  );
  return {
    value,
    said: messages.map((told) => `${told.place.line}:${told.place.column} ${worded(told).reason}`),
  };
};

it("reads what was found on a day, with its swim, places, rigs and fish", () => {
  expect(read().value!.notes).toMatchObject([
    {
      id: "day",
      swim: "pond",
      date: "2026-05-09",
      levelMm: -50,
      paceMs: 0.25,
      depths: [{ spot: "Close in", depthMm: 850 }],
      rigs: [
        {
          rig: { id: "plain", title: "Plain rig" },
          spot: "Close in",
          worked: "Maggot.",
          catches: [{ fish: "roach", count: 3 }],
        },
      ],
    },
  ]);
});

it.each([
  ["swim: pond", "swim: lake", '1:7 there is no swim "lake"'],
  ["[{ spot: Close in", "[{ spot: Far out", '5:18 there is no place of this swim "Far out"'],
  ["depth: 85 cm }]", "depth: 85 cm }, { spot: Close in, depth: 1 m }]", '5:52 "Close in" stands here twice'],
  ["rig: plain", "rig: none", '7:12 there is no rig "none"'],
  ["fish: roach", "fish: shark", '7:70 there is no fish "shark"'],
  ["2026-05-09", "2026-05-39", '2:7 "date": this is no day; write it like 2026-11-20'],
])("tells of %s that became %s at its place", (from, to, said) => {
  const { value, said: all } = read(from, to);
  expect(all).toEqual([said]);
  expect(value).toBeUndefined();
});
