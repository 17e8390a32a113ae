import { describe, expect, it } from "vitest";
import { unlikelyFigures } from "../../src/checks/unlikely-figures.ts";
import { edited } from "../support/smallest-content.ts";
import { toldBy } from "./checked.ts";

const told = (from: string, to: string) => toldBy(unlikelyFigures, edited("rigs/plain.md", from, to));

// The ends of each range: common practice, no source.
describe("a figure of a rig", () => {
  it.each([
    ["diameter: 0.18 mm", "diameter: 0.5 mm"],
    ["strength: 4 lb", "strength: 1 lb"],
    ["depths: [1 m, 1.5 m]", "depths: [0.5 m, 4 m]"],
    ["gap: 25 cm", "gap: 1 m"],
    ["length: 30 cm", "length: 1 m"],
  ])("may be unusual: %s, %s", (from, to) => {
    expect(told(from, to)).toEqual([]);
  });

  it.each([
    ["diameter: 0.18 mm", "diameter: 0.18 cm", "6:40", "diameter", "0.05 mm to 0.6 mm"],
    ["strength: 4 lb", "strength: 1000 lb", "6:24", "strength", "lb"],
    ["strength: 3 lb", "strength: 3 oz", "7:26", "strength", "lb"],
    ["length: 30 cm", "length: 30 m", "7:59", "length", "3 cm"],
    ["depths: [1 m, 1.5 m]", "depths: [1 m, 15 cm]", "11:15", "depths", "0.2 m"],
    ["portion: 10 ml", "portion: 10 l", "10:31", "portion", "2 l"],
    ["every: 45 s", "every: 45 h", "10:45", "every", "5 s to 2 h"],
    ["gap: 25 cm", "gap: 5 m", "21:8", "gap", "2 cm"],
  ])("is told where it is a slip: %s, %s", (from, to, at, key, allowed) => {
    const [only, ...others] = told(from, to);
    expect(only).toMatchObject({ at: `content/rigs/plain.md:${at}`, code: "unlikely-figure", key });
    expect((only as { allowed?: string }).allowed).toContain(allowed);
    expect(others).toEqual([]);
  });
});
