import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Shelved } from "../../src/cli/boards.ts";
import { storeOnDisk } from "../../src/cli/kept-on-disk.ts";
import { keptOf, shelfIn } from "../../src/cli/kept-on-shelf.ts";
import { keeping } from "../../src/model/kept.ts";
import { temporaryFolder } from "../support/cli.ts";

const tool = Buffer.from("this edition");
const some = (number: number) => `${number} ${"x".repeat(20_000)}`;

describe("small results", () => {
  it("lie in one file together, beside a list of it, and come back as they were in the next run", () => {
    const folder = temporaryFolder();
    const first = shelfIn(storeOnDisk(folder, tool), "guide");
    const keep = keeping(first);
    for (let i = 0; i < 50; i++) keep("thing", String(i), () => ({ number: i, none: undefined }));
    expect(readdirSync(folder)).toEqual([]);
    first.end();
    expect(readdirSync(folder)).toHaveLength(2);
    const again = shelfIn(storeOnDisk(folder, tool), "guide");
    expect(again.find("thing", "7")).toEqual({ value: { number: 7, none: undefined } });
    expect(again.find("other", "7")).toBeUndefined();
    expect(shelfIn(storeOnDisk(folder, tool), "another guide").find("thing", "7")).toBeUndefined();
  });

  it("of a guide are found in the next run", () => {
    const store = storeOnDisk(temporaryFolder(), tool);
    const first = keptOf(["content"], store);
    first.put("thing", "small", "made");
    first.end();
    expect(keptOf(["content"], store).find("thing", "small")).toEqual({ value: "made" });
  });

  it("leave the large ones to lie by themselves", () => {
    const folder = temporaryFolder();
    const shelf = shelfIn(storeOnDisk(folder, tool), "guide");
    shelf.put("page", "long", "x".repeat(100_000));
    expect(readdirSync(folder)).toHaveLength(1);
    expect(shelf.find("page", "long")).toEqual({ value: "x".repeat(100_000) });
  });

  it("all stay, however many a build asks for, and lie in several files where they are many", () => {
    const folder = temporaryFolder();
    const first = shelfIn(storeOnDisk(folder, tool), "guide");
    for (let i = 0; i < 2500; i++) first.put("thing", String(i), some(i));
    first.end();
    expect(readdirSync(folder).length).toBeGreaterThan(10);
    const again = shelfIn(storeOnDisk(folder, tool), "guide");
    for (const i of [0, 1, 1250, 2499]) expect(again.find("thing", String(i))).toEqual({ value: some(i) });
  });

  it("stay while other builds ask for others, and give way, the longest unasked first, where nobody asks for them any more", () => {
    const folder = temporaryFolder();
    const shelf = () => shelfIn(storeOnDisk(folder, tool), "guide");
    const first = shelf();
    for (let i = 0; i < 2500; i++) first.put("thing", String(i), some(i));
    first.end();
    /** Builds of which each asks for a few of the 50 MB, and brings a megabyte that none after it asks for. */
    const builds = (name: string, count: number) => {
      for (let build = 0; build < count; build++) {
        const one = shelf();
        for (let i = 0; i < 5; i++) expect(one.find("thing", String(i))).toBeDefined();
        for (let i = 0; i < 50; i++) one.put(name, `${build} ${i}`, some(i));
        one.end();
      }
    };
    const found = (kind: string, names: readonly string[]) => {
      const last = shelf();
      return names.filter((name) => last.find(kind, name) !== undefined).length;
    };
    const things = Array.from({ length: 2500 }, (_, i) => String(i));
    const ofBuild = (build: number) => Array.from({ length: 50 }, (_, i) => `${build} ${i}`);
    builds("between", 3);
    expect(found("thing", things)).toBe(2500);
    builds("later", 60);
    const left = found("thing", things);
    expect(left).toBeGreaterThanOrEqual(5);
    expect(left).toBeLessThan(250);
    expect(found("later", ofBuild(59))).toBe(50);
    expect(found("between", ofBuild(0))).toBe(0);
    const last = storeOnDisk(folder, tool).find("shelf", "guide")?.value as Shelved;
    const lengths = last.boards.flatMap((board) => [...board.lengths.values()]);
    const bytes = lengths.reduce((sum, length) => sum + length, 0);
    expect(bytes).toBeLessThan(50_000_000);
  });

  it("of build after build lie in few files, though each brings some that are new", () => {
    const folder = temporaryFolder();
    for (let run = 0; run < 30; run++) {
      const shelf = shelfIn(storeOnDisk(folder, tool), "guide");
      for (let i = 0; i < run; i++) expect(shelf.find("thing", String(i))).toEqual({ value: some(i) });
      shelf.put("thing", String(run), some(run));
      shelf.end();
    }
    const last = storeOnDisk(folder, tool).find("shelf", "guide")?.value as Shelved;
    expect(last.boards).toHaveLength(1);
  });

  it("are not trusted one by one: where a byte of one is another, those beside it still are", () => {
    const folder = temporaryFolder();
    const first = shelfIn(storeOnDisk(folder, tool), "guide");
    for (const name of ["before", "spoilt", "after"]) first.put("thing", name, `made ${name}`);
    first.end();
    for (const name of readdirSync(folder)) {
      const bytes = readFileSync(join(folder, name));
      const at = bytes.indexOf("made spoilt");
      if (at >= 0) writeFileSync(join(folder, name), bytes.fill("M", at, at + 1));
    }
    const again = shelfIn(storeOnDisk(folder, tool), "guide");
    expect(again.find("thing", "before")).toEqual({ value: "made before" });
    expect(again.find("thing", "spoilt")).toBeUndefined();
    expect(again.find("thing", "after")).toEqual({ value: "made after" });
  });

  it("are read from few files at once, however many there are, and from none at the end", () => {
    const folder = temporaryFolder();
    const store = storeOnDisk(folder, tool);
    let open = 0;
    let most = 0;
    const counting = {
      ...store,
      open(kind: string, from: string) {
        const pieces = store.open?.(kind, from);
        most = Math.max(most, ++open);
        const close = () => {
          open--;
          pieces?.close();
        };
        return pieces && { ...pieces, close };
      },
    };
    const first = shelfIn(store, "guide");
    for (let i = 0; i < 6000; i++) first.put("thing", String(i), some(i));
    first.end();
    const again = shelfIn(counting, "guide");
    for (let i = 0; i < 6000; i += 150) expect(again.find("thing", String(i))).toBeDefined();
    again.end();
    expect(most).toBeLessThan(32);
    expect(open).toBe(0);
  });

  it("are made again where the file that they lie in is gone or spoilt", () => {
    const folder = temporaryFolder();
    const first = shelfIn(storeOnDisk(folder, tool), "guide");
    first.put("thing", "1", "made");
    first.end();
    for (const name of readdirSync(folder)) {
      const file = join(folder, name);
      if (readFileSync(file).includes("made")) writeFileSync(file, "spoilt");
    }
    const again = shelfIn(storeOnDisk(folder, tool), "guide");
    expect(again.find("thing", "1")).toBeUndefined();
    again.put("thing", "1", "made anew");
    again.end();
    expect(shelfIn(storeOnDisk(folder, tool), "guide").find("thing", "1")).toEqual({ value: "made anew" });
  });
});
