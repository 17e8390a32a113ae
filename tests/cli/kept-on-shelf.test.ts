import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { storeOnDisk } from "../../src/cli/kept-on-disk.ts";
import { shelfIn } from "../../src/cli/kept-on-shelf.ts";
import { keeping } from "../../src/model/kept.ts";
import { temporaryFolder } from "../support/cli.ts";

const tool = Buffer.from("this edition");

describe("small results", () => {
  it("lie in one file together, and come back as they were in the next run", () => {
    const folder = temporaryFolder();
    const first = shelfIn(storeOnDisk(folder, tool), "guide");
    const keep = keeping(first);
    for (let i = 0; i < 50; i++) keep("thing", String(i), () => ({ number: i, none: undefined }));
    expect(readdirSync(folder)).toEqual([]);
    first.end();
    expect(readdirSync(folder)).toHaveLength(1);
    const again = shelfIn(storeOnDisk(folder, tool), "guide");
    expect(again.find("thing", "7")).toEqual({ value: { number: 7, none: undefined } });
    expect(again.find("other", "7")).toBeUndefined();
    expect(shelfIn(storeOnDisk(folder, tool), "another guide").find("thing", "7")).toBeUndefined();
  });

  it("leave the large ones to lie by themselves", () => {
    const folder = temporaryFolder();
    const shelf = shelfIn(storeOnDisk(folder, tool), "guide");
    shelf.put("page", "long", "x".repeat(100_000));
    expect(readdirSync(folder)).toHaveLength(1);
    expect(shelf.find("page", "long")).toEqual({ value: "x".repeat(100_000) });
  });

  it("give way where there is too much of them: what was asked for last stays", () => {
    const folder = temporaryFolder();
    const shelf = shelfIn(storeOnDisk(folder, tool), "guide");
    const some = "x".repeat(20_000);
    for (let i = 0; i < 2500; i++) shelf.put("thing", String(i), some);
    expect(shelf.find("thing", "0")).toEqual({ value: some });
    shelf.end();
    const again = shelfIn(storeOnDisk(folder, tool), "guide");
    expect(again.find("thing", "1")).toBeUndefined();
    expect(again.find("thing", "0")).toEqual({ value: some });
    expect(again.find("thing", "2499")).toEqual({ value: some });
  });
});
