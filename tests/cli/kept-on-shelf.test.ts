import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
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

  it("give way where nobody asks for them any more: of 50 MB half stays, and what was asked for", () => {
    const folder = temporaryFolder();
    const shelf = () => shelfIn(storeOnDisk(folder, tool), "guide");
    const first = shelf();
    for (let i = 0; i < 2500; i++) first.put("thing", String(i), some(i));
    first.end();
    const second = shelf();
    for (let i = 0; i < 2500; i += 500) expect(second.find("thing", String(i))).toBeDefined();
    second.put("thing", "new", "new");
    second.end();
    const third = shelf();
    const found = Array.from({ length: 2500 }, (_, i) => third.find("thing", String(i)) !== undefined);
    expect(found.filter((_, i) => i % 500 === 0)).toEqual([true, true, true, true, true]);
    expect(third.find("thing", "new")).toEqual({ value: "new" });
    const left = found.filter(Boolean).length;
    expect(left).toBeGreaterThan(900);
    expect(left).toBeLessThan(1400);
  });

  it("of build after build lie in few files, though each brings some that are new", () => {
    const folder = temporaryFolder();
    for (let run = 0; run < 30; run++) {
      const shelf = shelfIn(storeOnDisk(folder, tool), "guide");
      for (let i = 0; i < run; i++) expect(shelf.find("thing", String(i))).toEqual({ value: some(i) });
      shelf.put("thing", String(run), some(run));
      shelf.end();
    }
    const last = storeOnDisk(folder, tool).find("shelf", "guide")?.value as unknown[];
    expect(last).toHaveLength(1);
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
