import { expect, it } from "vitest";
import { storeInMemory } from "../../src/cli/crew/shared-store.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import type { Source } from "../../src/content/world.ts";
import { first } from "../../src/core/lists.ts";
import { type Keep, keeping, makeAnew } from "../../src/model/kept.ts";
import { contentWith, edited, sourcesOf } from "../support/smallest-content.ts";

const rig = "rigs/plain.md";

/** Content that is right, that is odd in two ways, and that is wrong. */
const guides = [
  {},
  {
    ...edited(rig, "diameter: 0.14 mm", "diameter: 0.71 mm"),
    "tubs/box.yaml": contentWith()["tubs/box.yaml"]!.replace("title: box", "title: box #1"),
  },
  edited(rig, "depths: [1 m, 1.5 m]", "depths: 1 kg"),
  edited(rig, "Notes.", "Other notes."),
].map((changes) => contentWith(changes));

/** As a process reads it that has read nothing yet. */
function read(files: Readonly<Record<string, string>>, keep: Keep) {
  const sources = new Map([...sourcesOf(files)].map(([path, source]) => [path, { ...source }]));
  const { value, messages } = readLibrary(sources, keep);
  const places = value && [["float"], ["depths", 1]].map((path) => first(value.rigs).placeOf(path));
  return { value: JSON.parse(JSON.stringify(value ?? null)), messages, places };
}

it("content of which something is kept is read, told and placed as content that is read anew", () => {
  const store = storeInMemory();
  for (const files of [...guides, ...guides]) {
    expect(read(files, keeping(store))).toEqual(read(files, makeAnew));
  }
  expect(read(guides[1]!, makeAnew).messages.length).toBeGreaterThan(1);
});

it("a file that was right is not held against its schema again", () => {
  const made: string[] = [];
  const store = storeInMemory();
  const keep = keeping(store);
  const counting: Keep = (kind, from, make) =>
    keep(kind, from, () => {
      made.push(kind);
      return make();
    });
  read(guides[0]!, counting);
  expect(made.filter((kind) => kind === "read").length).toBeGreaterThan(8);
  made.length = 0;
  read(guides[3]!, counting);
  expect(made.filter((kind) => kind === "read")).toEqual(["read"]);
});

it("what was read of a file of the library is found again in any guide, wherever the library lies", () => {
  const made: string[] = [];
  const keep = keeping(storeInMemory());
  const readAt = (folder: string) => {
    made.length = 0;
    const counting: Keep = (kind, from, make) =>
      keep(kind, from, () => {
        made.push(kind);
        return make();
      });
    const all = sourcesOf(contentWith(edited("guide.yaml", "library: none\n", "")));
    const lent = [...all].filter(([path]) => path !== "guide.yaml");
    const own = all.get("guide.yaml")!;
    const sources = new Map<string, Source>(
      lent.map(([path, source]) => [path, { ...source, file: `${folder}/${path}`, fromLibrary: true }]),
    ).set("guide.yaml", { ...own, file: `${folder} guide.yaml` });
    const { value, messages } = readLibrary(sources, counting);
    expect(messages).toEqual([]);
    return first(value!.rigs).placeOf(["depths", 1]);
  };
  const at = readAt("here");
  expect(made.filter((kind) => kind === "yaml").length).toBeGreaterThan(8);
  expect(readAt("there")).toEqual({ ...at, file: at.file.replace("here", "there") });
  expect(made.filter((kind) => kind === "yaml" || kind === "read")).toEqual(["read"]);
});
