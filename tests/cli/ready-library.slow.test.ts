import { cpSync } from "node:fs";
import { join } from "node:path";
import { deserialize } from "node:v8";
import { beforeAll, expect, test } from "vitest";
import { checkSources } from "../../src/build/check-sources.ts";
import { solveRigs } from "../../src/build/solve-rigs.ts";
import { allTexts } from "../../src/checks/texts.ts";
import { resultKey } from "../../src/cli/boards.ts";
import { checkAll } from "../../src/cli/check-anew.ts";
import { disk } from "../../src/cli/disk.ts";
import { readSources } from "../../src/content/world.ts";
import { digestOf } from "../../src/model/digest.ts";
import type { Keep } from "../../src/model/kept.ts";
import { readyLibrary } from "../../tools/ready-library.ts";
import { temporaryFolder, writeContent } from "../support/cli.ts";

let ready: ReadonlyMap<string, Uint8Array>;
beforeAll(async () => {
  ready = deserialize(await readyLibrary("content", ["en", "de"]));
});

/** What a guide that borrows the library finds ready, and what it makes itself, by kind. */
async function lookedUp(guide: string) {
  const content = writeContent(temporaryFolder(), {
    "guide.yaml": `title: Guide\npublisher: Club\nedition: 2026-01-01\n${guide}`,
  });
  const found = new Map<string, unknown[]>();
  const made = new Map<string, string[]>();
  const keep: Keep = (kind, from, make) => {
    const bytes = ready.get(resultKey(kind, from));
    const value = bytes ? deserialize(bytes) : make();
    if (bytes) found.set(kind, [...(found.get(kind) ?? []), value]);
    else made.set(kind, [...(made.get(kind) ?? []), from]);
    return value;
  };
  const { value } = checkSources(await readSources(disk, [content], "content"), keep);
  const { library, kit } = value!;
  for (const { body } of allTexts(library)) body.children;
  const { value: rigs } = await solveRigs(library, kit.words, kit.figures, keep);
  for (const { depths } of rigs) for (const { inWater } of depths) void inWater;
  return { rigs, found, made };
}

test("a guide of its own finds that the library's texts and drawings fit, wherever the library lies", async () => {
  const lent = join(temporaryFolder(), "lent");
  cpSync("content", lent, { recursive: true });
  const content = writeContent(temporaryFolder(), {
    "guide.yaml": "title: Other\npublisher: Others\nedition: 2026-11-29\n",
  });
  const counted = new Map<string, number>();
  const keep: Keep = (kind, from, make) => {
    const bytes = ready.get(resultKey(kind, from));
    const told = `${kind} ${bytes ? "found" : "made"}`;
    counted.set(told, (counted.get(told) ?? 0) + 1);
    return bytes ? deserialize(bytes) : make();
  };
  const { counts } = await checkAll(await readSources(disk, [content], lent), keep, undefined);
  // On half sheets and whole ones, and most once more for the booklet.
  expect(counted.get("handout found")).toBeGreaterThan(2 * counts!.lessons);
  expect(counted.get("tried page found")).toBeGreaterThan(counts!.lessons + counts!.rigs);
  expect(counted.get("handout made")).toBeUndefined();
  // Pages that list what there is know its files by their paths.
  expect(counted.get("tried page made")).toBeLessThan(10);
});

const sums = ["rig", "depths of rig", "water of rig"];

test.each(["units: metric", "units: imperial", "units: us\npaper: Letter", "language: de"])(
  "a guide of its own (%s) that borrows the library finds the sums of its rigs, and its texts, ready",
  async (guide) => {
    const { rigs, found, made } = await lookedUp(guide);
    expect(rigs.length).toBeGreaterThan(2);
    expect(sums.map((kind) => found.get(kind)?.length)).toEqual(sums.map(() => rigs.length));
    expect([...sums, "markdown"].filter((kind) => made.has(kind))).toEqual([]);
  },
);

test("sums in other water are done anew, and are not those that were ready", async () => {
  const { rigs, found, made } = await lookedUp("water-temperature: 4 C");
  expect(sums.map((kind) => found.has(kind))).toEqual([false, false, false]);
  expect(made.get("rig")).toEqual(rigs.map(({ rig }) => digestOf(rig)));
});
