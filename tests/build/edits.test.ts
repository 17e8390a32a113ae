import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { storeOnDisk } from "../../src/cli/kept-on-disk.ts";
import { keeping, makeAnew, type Store } from "../../src/model/kept.ts";
import { temporaryFolder } from "../support/cli.ts";
import { builtOf, guideToEdit } from "../support/edited-guides.ts";
import { contentWith } from "../support/smallest-content.ts";

const tool = Buffer.from("tool");
/** Where only pages are asked of, nothing else is built but the cards that they offer. */
const pages = ["web"] as const;
const twoRigs = contentWith({ "rigs/river.md": guideToEdit["rigs/river.md"]! });

/** A store that counts what it did not have, by kind. */
function counting(store: Store): Store & { readonly missed: string[] } {
  const missed: string[] = [];
  const find: Store["find"] = (kind, from) => {
    const found = store.find(kind, from);
    if (!found) missed.push(kind);
    return found;
  };
  return { missed, find, put: store.put };
}

test("nothing is solved, laid out or painted that was before, and of an edit only what it touches", async () => {
  const store = counting(storeOnDisk(temporaryFolder(), tool));
  const missedIn = async (files: typeof guideToEdit) => {
    store.missed.length = 0;
    await builtOf(files, keeping(store));
    return store.missed.toSorted();
  };
  expect(new Set(await missedIn(guideToEdit)).size).toBeGreaterThan(8);
  expect(await missedIn(guideToEdit)).toEqual([]);
  const word = { "lessons/first.md": guideToEdit["lessons/first.md"]!.replace("Some words", "Few words") };
  const missed = await missedIn({ ...guideToEdit, ...word });
  expect(missed).not.toContain("rig");
  expect(missed).not.toContain("cards");
  expect(missed).not.toContain("sheets");
  // The text on half sheets, which the booklet has as they are where both lead to the same, and on whole ones.
  expect(missed.filter((kind) => kind === "handout")).toHaveLength(2);
}, 120_000);

test("head and foot of every page follow what is added to the guide", async () => {
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
}, 120_000);

// After 200 edits of every kind: in a slow test.
test("a guide is the same to the byte after an edit, pages of rigs that name another one's data among it", async () => {
  const keep = keeping(storeOnDisk(temporaryFolder(), tool));
  await builtOf(twoRigs, keep);
  const plain = twoRigs["rigs/plain.md"]!.replace(/^depths: .*$/m, "depths: [1.2 m]");
  const files = { ...twoRigs, "rigs/plain.md": plain };
  expect(await builtOf(files, keep)).toEqual(await builtOf(files));
}, 120_000);

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
}, 120_000);
