import { expect, it } from "vitest";
import { swimsAsFound } from "../../src/checks/swims.ts";
import { sampleSwim } from "../support/sample-swim.ts";
import { toldBy } from "./checked.ts";

const features = (list: string) => sampleSwim("spots:", `    features: [${list}]\nspots:`);

it("a ledge that is written down is looked for in the soundings, anything else at the bed is not", () => {
  expect(toldBy(swimsAsFound, features("{ what: weed, from-bank: 3 m }"))).toEqual([]);
  expect(toldBy(swimsAsFound, features("{ what: ledge, from-bank: 3 m }"))).toMatchObject([
    { code: "swim-ledge-not-found", line: "Straight out" },
  ]);
});

it("a ledge that the soundings show is found where it is, its ends counted in", () => {
  // From 2 m to 3 m out the bed falls by 60 cm.
  const steep = sampleSwim(
    "      - { from-bank: 4 m, depth: 1.1 m }\n",
    "      - { from-bank: 3 m, depth: 1.5 m }\n    features: [{ what: ledge, from-bank: 2 m }, { what: ledge, from-bank: 3 m }]\n",
  );
  expect(toldBy(swimsAsFound, steep).map(({ code }) => code)).toEqual(["swim-hazard-untold"]);
});

// Water to the chest of a child, and a current that takes a grown-up's feet from the bed: common practice, no source.
it.each([
  ["depth: 1.1 m", "depth: 1.19 m", []],
  ["depth: 1.1 m", "depth: 1.2 m", ["deep water"]],
  ["water: still", "water: flowing\npace: 0.49 m/s", []],
  ["water: still", "water: flowing\npace: 0.5 m/s", ["fast water"]],
])("a swim with %s as %j asks for a word on %j", (from, to, hazards) => {
  expect(toldBy(swimsAsFound, sampleSwim(from, to))).toMatchObject(hazards.map((hazard) => ({ hazard })));
});

// A sounding is taken to be right to 3 cm, and a depth to be the same to 15 cm: common practice, no source.
it.each([
  ["108 cm", []],
  ["108.5 cm", ["notes-depth-other"]],
  ["72 cm", []],
  ["71.5 cm", ["notes-depth-other"]],
])("%s found where 90 cm were plumbed brings %j", (depth, codes) => {
  const notes = `swim: pond\ndate: 2026-05-02\ndepths:\n  - { spot: Close in, depth: ${depth} }\nrigs: []\n`;
  expect(toldBy(swimsAsFound, { ...sampleSwim(), "notes/day.yaml": notes }).map(({ code }) => code)).toEqual(
    codes,
  );
});
