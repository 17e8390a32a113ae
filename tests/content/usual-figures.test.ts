import { describe, expect, it } from "vitest";
import { unusualFigures } from "../../src/content/usual-figures.ts";
import { readYaml } from "../../src/content/yaml-source.ts";

const rig = `main-line: { strength: 4 lb, diameter: 0.18 mm }
hook-length: { strength: 3 lb, diameter: 0.14 mm, length: 30 cm }
depths: [1 m, 1.5 m]
paces: [10 m in 25 s]
feed: { what: grubs, portion: 10 ml, every: 45 s }
loading:
  gap: 25 cm
`;

const told = (path: string, text: string) => unusualFigures(readYaml(text, path), path);
const toldOf = (from: string, to: string) => told("rigs/plain.md", rig.replace(from, to));

// The ends of each range: common practice, no source.
describe("a figure of a rig", () => {
  it.each([
    ["diameter: 0.18 mm", "diameter: 0.5 mm"],
    ["strength: 4 lb", "strength: 1 lb"],
    ["1.5 m", "4 m"],
    ["gap: 25 cm", "gap: 1 m"],
    ["length: 30 cm", "length: 1 m"],
    ["10 m in 25 s", "10 m in 5 s"],
  ])("may be unusual: %s, %s", (from, to) => {
    expect(toldOf(from, to)).toEqual([]);
  });

  it.each([
    ["diameter: 0.18 mm", "diameter: 0.18 cm", "1:40", "diameter", "0.05 mm to 0.6 mm"],
    ["strength: 4 lb", "strength: 1000 lb", "1:24", "strength", "0.2 kg to 20 kg"],
    ["strength: 3 lb", "strength: 3 oz", "2:26", "strength", "0.2 kg to 20 kg"],
    ["length: 30 cm", "length: 30 m", "2:59", "length", "3 cm to 2 m"],
    ["1.5 m", "15 cm", "3:15", "depths", "20 cm to 15 m"],
    ["portion: 10 ml", "portion: 10 l", "5:31", "portion", "0.1 ml to 2 l"],
    ["every: 45 s", "every: 45 h", "5:45", "every", "5 s to 2 h"],
    ["gap: 25 cm", "gap: 5 m", "7:8", "gap", "2 cm to 2 m"],
    ["10 m in 25 s", "20 m/s", "4:9", "paces", "0.01 m/s to 3 m/s"],
  ])("is told as it was typed where it is a slip: %s, %s", (from, to, at, key, allowed) => {
    const [line, column] = at.split(":").map(Number);
    const values = { key, found: to.replace(/^[a-z]+: /, ""), allowed };
    expect(toldOf(from, to)).toMatchObject([
      { place: { line, column }, code: "unlikely-figure", severity: "warning", values },
    ]);
  });
});

it.each([
  ["baits/grub.yaml", "mass: 50 g", "mass"],
  ["hooks.yaml", "- { size: 16, mass: 3 g }", "mass"],
  ["shot/plain.yaml", "sizes:\n  - { name: BB, mass: 40 g }", "mass"],
  ["floats/waggler.yaml", "profile:\n  - { at: 0 mm, diameter: 45 cm }", "diameter"],
  ["guide.yaml", "rod-length: 36 m", "rod-length"],
  ["guide.yaml", "lead-rule: { allowed-up-to: 6 g }", "allowed-up-to"],
])("%s: %s is told", (path, text, key) => {
  expect(told(path, text)).toMatchObject([{ code: "unlikely-figure", values: { key } }]);
});

it("of a file without such figures nothing is told", () => {
  expect(told("words/en.yaml", "mass: 50 g")).toEqual([]);
  expect(told("guide.yaml", "title: 36 m")).toEqual([]);
});
