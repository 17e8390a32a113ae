import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { storeOnDisk } from "../../src/cli/kept-on-disk.ts";
import { keeping, makeAnew, type Store } from "../../src/model/kept.ts";
import { temporaryFolder } from "../support/cli.ts";
import { builtOf, editedGuides, guideToEdit, readingOn } from "../support/edited-guides.ts";
import { seeded } from "../support/seeded.ts";
import { contentWith } from "../support/smallest-content.ts";

const tool = Buffer.from("tool");

test("after each of 200 edits a guide is the same to the byte, built anew, with what was kept, or by one who goes on", async () => {
  const keep = keeping(storeOnDisk(temporaryFolder(), tool));
  const read = readingOn();
  let edit = 0;
  for await (const files of editedGuides(200, seeded(27))) {
    edit += 1;
    const anew = await builtOf(files);
    for (const sources of [undefined, read(files)]) {
      const kept = await builtOf(files, keep, undefined, sources);
      for (const [path, content] of anew)
        expect(kept.get(path) === content, `${path} after edit ${edit}`).toBe(true);
      expect([...kept.keys()]).toEqual([...anew.keys()]);
    }
  }
}, 3_600_000);

test("head and foot of every page follow what is added to the guide", async () => {
  /** Where only pages are asked of, nothing else is built but the cards that they offer. */
  const pages = ["web"] as const;
  const twoRigs = contentWith({ "rigs/river.md": guideToEdit["rigs/river.md"]! });
  const keep = keeping(storeOnDisk(temporaryFolder(), tool));
  await builtOf(twoRigs, keep, pages);
  const page = "---\ntitle: Of the club\nsummary: What it is.\n---\n\nWords.\n";
  for (const [path, text] of [
    ["pages/club.md", page],
    ["templates/foot.md", "Ask the club.\n"],
    ["templates/head.md", "The club's own guide.\n"],
  ] as const) {
    const files = { ...twoRigs, [path]: text };
    expect(await builtOf(files, keep, pages)).toEqual(await builtOf(files, makeAnew, pages));
  }
});

test("pages of tackle and words follow what they show of the guide", async () => {
  const pages = ["web"] as const;
  const keep = keeping(storeOnDisk(temporaryFolder(), tool));
  let files = contentWith({ "glossary.yaml": "- { term: waggler, meaning: A float. }\n" });
  await builtOf(files, keep, pages);
  for (const [path, from, to] of [
    ["floats/waggler.yaml", /title: [^\n]*/, "title: Another waggler"],
    ["baits/grub.yaml", /mass: [^\n]*/, "mass: 0.06 g"],
    ["tubs/box.yaml", /title: [^\n]*/, "title: Another box"],
    ["shot/plain.yaml", /title: [^\n]*/, "title: other figures"],
    ["knots/half-blood.yaml", /\[35, \d+\]/, "[35, 12]"],
    ["glossary.yaml", /A float/, "Something that floats"],
    ["rigs/plain.md", /title: [^\n]*/, "title: Another rig"],
  ] as const) {
    files = { ...files, [path]: files[path]!.replace(from, to) };
    expect(await builtOf(files, keep, pages), path).toEqual(await builtOf(files, makeAnew, pages));
  }
});

test("what is kept half or spoilt changes nothing but the time", async () => {
  const folder = temporaryFolder();
  await builtOf(guideToEdit, keeping(storeOnDisk(folder, tool)));
  const names = readdirSync(folder).toSorted();
  const gone: Store = storeOnDisk(folder, tool);
  let asked = 0;
  const half: Store = {
    put: gone.put,
    find: (kind, from) => (asked++ % 2 ? undefined : gone.find(kind, from)),
  };
  expect(await builtOf(guideToEdit, keeping(half))).toEqual(await builtOf(guideToEdit));
  expect(readdirSync(folder).toSorted()).toEqual(names);
});
