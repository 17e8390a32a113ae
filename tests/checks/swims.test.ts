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
