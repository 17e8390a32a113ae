import { expect, it } from "vitest";
import { readYaml } from "../../src/content/yaml-source.ts";
import { inMemory } from "../../src/model/kept.ts";

const text = `title: A guide
list:
  - one: 1
    two: [a, b]
  - three
empty:
"quoted key": { inner: "x" }
`;

const paths = [
  [],
  ["title"],
  ["list"],
  ["list", 0],
  ["list", 0, "two", 1],
  ["list", "1"],
  ["list", 7],
  ["list", 0, "nine", 2],
  ["empty"],
  ["empty", "deeper"],
  ["quoted key", "inner"],
  ["title", "deeper"],
  ["nowhere"],
];

it("places are the same of a text that was kept and of one that is parsed", () => {
  const keep = inMemory(10);
  readYaml(text, "a.yaml", 3, keep);
  const kept = readYaml(text, "a.yaml", 3, keep);
  const parsed = readYaml(text, "a.yaml", 3);
  expect(kept.data).toEqual(parsed.data);
  for (const path of paths) expect(kept.placeOf(path), path.join()).toEqual(parsed.placeOf(path));
  expect(kept.placeOfKey(["list", 0], "two")).toEqual(parsed.placeOfKey(["list", 0], "two"));
});

it("what has aliases or merged maps is parsed each time", () => {
  const merged = "base: &base { a: 1 }\nover:\n  <<: *base\n  b: *base\n";
  const keep = inMemory(10);
  readYaml(merged, "a.yaml", 0, keep);
  const kept = readYaml(merged, "a.yaml", 0, keep);
  expect(kept.placeOf(["over", "b", "a"])).toEqual({ file: "a.yaml", line: 1, column: 18 });
  expect(kept.data).toEqual(readYaml(merged, "a.yaml").data);
});
