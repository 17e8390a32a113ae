import { expect, test } from "vitest";
import { storeOnDisk } from "../../src/cli/kept-on-disk.ts";
import { keeping, type Store } from "../../src/model/kept.ts";
import { temporaryFolder } from "../support/cli.ts";
import { builtOf, checkedOf, guideToEdit } from "../support/edited-guides.ts";
import { longWords } from "../support/long-words.ts";
import { contentWith } from "../support/smallest-content.ts";

const tool = Buffer.from("tool");
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
  const skip = guideToEdit["words/en.yaml"]!.replace(/^( +skip: ).*$/m, "$1To the page");
  const ofPages = new Set(await missedIn({ ...guideToEdit, "words/en.yaml": skip }));
  expect([...ofPages].filter((kind) => /card|handout|sheet|booklet|side/.test(kind))).toEqual([]);
}, 120_000);

// After 200 edits of every kind: in a slow test.
test("a guide is the same to the byte after an edit, pages of rigs that name another one's data among it", async () => {
  const keep = keeping(storeOnDisk(temporaryFolder(), tool));
  await builtOf(twoRigs, keep);
  const plain = twoRigs["rigs/plain.md"]!.replace(/^depths: .*$/m, "depths: [1.2 m]");
  const files = { ...twoRigs, "rigs/plain.md": plain };
  expect(await builtOf(files, keep)).toEqual(await builtOf(files));
}, 120_000);

test("a check tells what it told, of a guide that is right again, too", async () => {
  const keep = keeping(storeOnDisk(temporaryFolder(), tool));
  const fine = await checkedOf(contentWith(), keep);
  const wrong = { ...contentWith(), ...longWords() };
  const told = await checkedOf(wrong, keep);
  expect(told.map(({ code }) => code)).toContain("no-room");
  expect(await checkedOf(wrong, keep)).toEqual(told);
  expect(await checkedOf(contentWith(), keep)).toEqual(fine);
}, 120_000);
