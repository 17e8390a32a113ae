import {
  chownSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { solveRigs } from "../../src/build/solve-rigs.ts";
import { storeOnDisk } from "../../src/cli/kept-on-disk.ts";
import { type Keep, keeping } from "../../src/model/kept.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { makeWords } from "../../src/words/words.ts";
import { temporaryFolder } from "../support/cli.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

const keptOnDisk = (folder: string, tool: Buffer) => keeping(storeOnDisk(folder, tool));

const tool = Buffer.from("this edition");

function counting(keep: Keep) {
  let made = 0;
  const value = { deep: [1, Number.POSITIVE_INFINITY], none: undefined };
  const ask = (from: string) => keep("thing", from, () => ({ ...value, made: ++made }));
  return { ask, made: () => made };
}

describe("what is kept on disk", () => {
  it("gives the pieces of an entry in any order, each by itself, and none beyond its end", () => {
    const store = storeOnDisk(temporaryFolder(), tool);
    const bytes = Uint8Array.from({ length: 100_000 }, (_, i) => i % 251);
    store.put("thing", "a", undefined, bytes);
    const pieces = store.open("thing", "a");
    const held = pieces?.piece(10, 5);
    for (const [begin, length] of [
      [15, 100],
      [3, 8],
      [32_770, 10],
      [50_000, 50_000],
      [99_999, 1],
    ] as const)
      expect(pieces?.piece(begin, length)).toEqual(Buffer.from(bytes.subarray(begin, begin + length)));
    expect(pieces?.piece(99_999, 2)).toBeUndefined();
    expect(held).toEqual(Buffer.from(bytes.subarray(10, 15)));
    pieces?.close();
    expect(store.open("thing", "b")).toBeUndefined();
  });

  it("is made once, and comes back as it was, in another run too", () => {
    const folder = temporaryFolder();
    const first = counting(keptOnDisk(folder, tool));
    expect(first.ask("a")).toEqual({ deep: [1, Number.POSITIVE_INFINITY], none: undefined, made: 1 });
    first.ask("a");
    first.ask("b");
    expect(first.made()).toBe(2);
    const second = counting(keptOnDisk(folder, tool));
    expect(second.ask("a")).toMatchObject({ made: 1 });
    expect(second.made()).toBe(0);
  });

  it("is not taken from another edition of the tool", () => {
    const folder = temporaryFolder();
    counting(keptOnDisk(folder, tool)).ask("a");
    const other = counting(keptOnDisk(folder, Buffer.from("another")));
    other.ask("a");
    expect(other.made()).toBe(1);
  });

  it.runIf(process.getuid?.() === 0)("is not taken from a file of somebody else", () => {
    const folder = temporaryFolder();
    counting(keptOnDisk(folder, tool)).ask("a");
    for (const name of readdirSync(folder)) chownSync(join(folder, name), 65_534, 65_534);
    const other = counting(keptOnDisk(folder, tool));
    other.ask("a");
    expect(other.made()).toBe(1);
  });

  it("is not trusted where a byte of it is another, or some are gone", () => {
    const folder = temporaryFolder();
    for (const spoil of [
      (file: string) => {
        const bytes = readFileSync(file);
        bytes[bytes.length - 3]! ^= 1;
        writeFileSync(file, bytes);
      },
      (file: string) => truncateSync(file, 40),
      (file: string) => writeFileSync(file, ""),
    ]) {
      counting(keptOnDisk(folder, tool)).ask("a");
      const [name] = readdirSync(folder);
      spoil(join(folder, name!));
      const again = counting(keptOnDisk(folder, tool));
      again.ask("a");
      expect(again.made()).toBe(1);
    }
  });

  it("is not trusted under another name", () => {
    const folder = temporaryFolder();
    const kept = counting(keptOnDisk(folder, tool));
    kept.ask("a");
    const [name] = readdirSync(folder);
    kept.ask("b");
    const other = readdirSync(folder).find((one) => one !== name);
    writeFileSync(join(folder, other!), readFileSync(join(folder, name!)));
    expect(kept.ask("b")).toMatchObject({ made: 3 });
  });

  it("costs nothing but time where nothing can be written", () => {
    const file = join(temporaryFolder(), "a file");
    writeFileSync(file, "");
    const kept = counting(keptOnDisk(file, tool));
    kept.ask("a");
    kept.ask("a");
    expect(kept.made()).toBe(2);
  });

  it("has an end: what was used longest ago goes", () => {
    const folder = temporaryFolder();
    mkdirSync(folder, { recursive: true });
    for (const [name, day] of [
      ["old", 1],
      ["newer", 2],
    ] as const) {
      writeFileSync(join(folder, name), "");
      truncateSync(join(folder, name), 400_000_000);
      utimesSync(join(folder, name), new Date(2020, 0, day), new Date(2020, 0, day));
    }
    counting(keptOnDisk(folder, tool)).ask("a");
    expect(readdirSync(folder)).not.toContain("old");
    expect(readdirSync(folder)).toContain("newer");
    expect(readdirSync(folder).every((name) => statSync(join(folder, name)).size <= 512_000_000)).toBe(true);
  });

  it("leaves what a large guide has used today", () => {
    const folder = temporaryFolder();
    mkdirSync(folder, { recursive: true });
    for (let i = 0; i < 3; i++) {
      writeFileSync(join(folder, `of today ${i}`), "");
      truncateSync(join(folder, `of today ${i}`), 400_000_000);
    }
    writeFileSync(join(folder, "old"), "old");
    utimesSync(join(folder, "old"), new Date(2020, 0, 1), new Date(2020, 0, 1));
    counting(keptOnDisk(folder, tool)).ask("a");
    expect(readdirSync(folder).filter((name) => name.startsWith("of today"))).toHaveLength(3);
    expect(readdirSync(folder)).not.toContain("old");
  });

  it("gives rigs of the shipped guide back as the sums made them", async () => {
    const rigs = shippedGuide.library.rigs.filter(({ rig }) =>
      shippedGuide.rigs.some((one) => one.rig === rig),
    );
    const library = { ...shippedGuide.library, rigs: rigs.slice(0, 2) };
    const words = makeWords(library.words);
    const figures = makeFigures(library.guide.units, words, library.guide.language);
    const folder = temporaryFolder();
    await solveRigs(library, words, figures, keptOnDisk(folder, tool));
    const files = readdirSync(folder).length;
    const { value } = await solveRigs(library, words, figures, keptOnDisk(folder, tool));
    expect(structuredClone(value)).toEqual(structuredClone(shippedGuide.rigs.slice(0, 2)));
    expect(value[0]!.rig).toBe(library.rigs[0]!.rig);
    // None of them was reckoned anew.
    expect(readdirSync(folder)).toHaveLength(files);
  });
});
