import { expect, it } from "vitest";
import { withKept } from "../../src/content/kept-sources.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import type { Source } from "../../src/content/world.ts";
import { contentWith, edited, sourcesOf } from "../support/smallest-content.ts";

const anew = (changes: Readonly<Record<string, string>> = {}): ReadonlyMap<string, Source> =>
  new Map([...sourcesOf(contentWith(changes))].map(([path, source]) => [path, { ...source }]));

it("a file that is as it was is the same, and one that is not is another", () => {
  const before = anew();
  const after = withKept(anew(edited("hooks.yaml", "0.03 g", "0.04 g")), before);
  const others = [...after].filter(([path, source]) => before.get(path) !== source).map(([path]) => path);
  expect(others).toEqual(["hooks.yaml"]);
  expect(after.get("hooks.yaml")?.text).toContain("0.04 g");
});

it("a file over another that has changed is another", () => {
  const [under, over] = [anew(), anew()];
  const layered = (below: ReadonlyMap<string, Source>) =>
    new Map([...over].map(([path, source]) => [path, { ...source, under: below.get(path)! }]));
  const before = layered(under);
  expect(withKept(layered(anew()), before).get("hooks.yaml")).toBe(before.get("hooks.yaml"));
  const after = withKept(layered(anew(edited("hooks.yaml", "0.03 g", "0.04 g"))), before).get("hooks.yaml");
  expect(after).not.toBe(before.get("hooks.yaml"));
  expect(after?.under?.text).toContain("0.04 g");
});

it.each([
  ["alone", "library: none\n"],
  ["over a library", ""],
])("what was read of a file that is as it was is known, of a guide that stands %s", (_, library) => {
  const changes = edited("guide.yaml", "library: none\n", library);
  const before = anew(changes);
  const first = readLibrary(before).value!;
  const second = readLibrary(withKept(anew(changes), before)).value!;
  expect(second.lessons.length).toBeGreaterThan(0);
  for (const [at, { body }] of second.lessons.entries()) expect(body).toBe(first.lessons[at]!.body);
});

it("a file over another is read once, too, while neither has changed", () => {
  const layered = () => {
    const under = new Map(
      [...anew()].map(([path, source]) => [path, { ...source, fromLibrary: true as const }]),
    );
    return new Map([...anew()].map(([path, source]) => [path, { ...source, under: under.get(path)! }]));
  };
  const before = layered();
  const first = readLibrary(before).value!;
  expect(readLibrary(withKept(layered(), before)).value!.words).toBe(first.words);
  const changed = new Map([...before, ["words/en.yaml", { ...before.get("words/en.yaml")! }]]);
  expect(readLibrary(changed).value!.words).not.toBe(first.words);
});
