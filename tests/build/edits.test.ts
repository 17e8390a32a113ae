import { expect, test } from "vitest";
import { solveChecked } from "../../src/build/build.ts";
import { checkSources } from "../../src/build/check-sources.ts";
import { allTexts } from "../../src/checks/texts.ts";
import { storeOnDisk } from "../../src/cli/kept-on-disk.ts";
import { readSources } from "../../src/content/world.ts";
import { inMemory, keeping, makeAnew, type Store } from "../../src/model/kept.ts";
import { temporaryFolder } from "../support/cli.ts";
import { builtOf, checkedOf, guideToEdit, lesson, readingOn } from "../support/edited-guides.ts";
import { longWords } from "../support/long-words.ts";
import { contentWith, worldOf } from "../support/smallest-content.ts";

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
  const title = guideToEdit["lessons/second.md"]!.replace("title: Second", "title: Then");
  const titled = await missedIn({ ...guideToEdit, "lessons/second.md": title });
  // Its own page, and those of the lessons before and after it.
  expect(titled.filter((kind) => kind === "html as page")).toHaveLength(3);
  const skip = guideToEdit["words/en.yaml"]!.replace(/^( +skip: ).*$/m, "$1To the page");
  const ofPages = new Set(await missedIn({ ...guideToEdit, "words/en.yaml": skip }));
  expect([...ofPages].filter((kind) => /card|handout|sheet|booklet|side|on a page/.test(kind))).toEqual([]);
  expect([...ofPages]).toContain("html as page");
}, 120_000);

// After 200 edits of every kind: in a slow test.
test("a guide is the same to the byte after an edit, the list in which each rig's data are named among it", async () => {
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

test("a check draws no page again for another word of pages, and all of them for one of drawings", async () => {
  const store = counting(storeOnDisk(temporaryFolder(), tool));
  const triedAfter = async (from: RegExp, to: string) => {
    store.missed.length = 0;
    const words = guideToEdit["words/en.yaml"]!.replace(from, to);
    await checkedOf({ ...guideToEdit, "words/en.yaml": words }, keeping(store));
    return store.missed.filter((kind) => /^tried page$|on a page$/.test(kind)).length;
  };
  const all = await triedAfter(/^$/, "");
  expect(all).toBeGreaterThan(8);
  expect(await triedAfter(/^( +skip: ).*$/m, "$1To the page")).toBe(0);
  expect(await triedAfter(/^(drawing:(?:\n.*)*?\n +\w+: )\w+/m, "$1Other")).toBe(all);
}, 120_000);

test("a text keeps its live figures while what it asks for stands, whatever else was saved", async () => {
  const read = readingOn();
  const files: typeof guideToEdit = {
    ...guideToEdit,
    "lessons/fourth.md": lesson(4, "Fourth", "::shot-table{rig=plain}"),
  };
  const liveAfter = async (changes: typeof guideToEdit) => {
    const { value } = await solveChecked(checkSources(await read({ ...files, ...changes })));
    return value!.live.get(value!.library.lessons.find(({ id }) => id === "fourth")!.body);
  };
  const saved = (path: string, from: RegExp, to: string) => ({ [path]: files[path]!.replace(from, to) });
  const before = await liveAfter({});
  for (const other of [
    saved("rigs/river.md", /gap: .*/, "gap: 21 cm"),
    saved("words/en.yaml", /Hazards here/, "Beware"),
    saved("lessons/first.md", /Some words/, "Few words"),
  ])
    expect(await liveAfter(other)).toBe(before);
  expect(await liveAfter(saved("rigs/plain.md", /depths: .*/, "depths: [1.25 m]"))).not.toBe(before);
}, 120_000);

test("texts and swims of a guide that is read on are as read anew, whatever was saved", async () => {
  const read = readingOn();
  const told = async (sources: ReturnType<typeof read>, keep = makeAnew) => {
    const { value, messages } = await solveChecked(checkSources(await sources, keep), keep);
    if (!value) throw new Error(JSON.stringify(messages));
    const swims = value.swims.map(({ onPage, onSheet }) => [onPage, onSheet]);
    const rigs = value.source.spots?.map(({ rig }) => rig);
    return { live: allTexts(value.library).map(({ body }) => value.live.get(body)), swims, rigs, messages };
  };
  const table = lesson(4, "Fourth", "::shot-table{rig=plain}");
  let files: typeof guideToEdit = { ...guideToEdit, "lessons/fourth.md": table };
  const keep = inMemory(1000);
  let before = await told(read(files), keep);
  const saves: readonly (readonly [path: string, from: RegExp, to: string])[] = [
    ["floats/waggler.yaml", /marking: .*/, "marking: 5 BB"],
    ["rigs/plain.md", /depths: .*/, "depths: [1.25 m, 1.95 m]"],
    ["lessons/first.md", /title: .*/, "title: Another"],
    ["words/en.yaml", /Hazards here/, "Beware"],
    ["words/en.yaml", /( tip: )Tip\n/, "$1Above the water\n"],
    ["swims/pond.yaml", /depth: 90 cm/, "depth: 99 cm"],
  ];
  for (const [path, from, to] of saves) {
    files = { ...files, [path]: files[path]!.replace(from, to) };
    const anew = await told(readSources(worldOf(files), ["content"]));
    expect(await told(read(files), keep), path).toEqual(anew);
    expect(anew, path).not.toEqual(before);
    before = anew;
  }
}, 120_000);
