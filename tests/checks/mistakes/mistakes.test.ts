import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { casesOf, solveCase, withMessages } from "./cases.ts";

const collections = readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith(".txt"))
  .map((name) => join(import.meta.dirname, name));

const cases = collections.flatMap((file) => casesOf(readFileSync(file, "utf8")));

describe("each mistake that somebody made has its message at the spot, and no other", () => {
  it.each(collections.map((file) => [basename(file), file]))("%s", async (_, file) => {
    const collection = readFileSync(file, "utf8");
    const intro = collection.slice(0, collection.indexOf("== "));
    const told: string[] = [];
    const unreasoned: string[] = [];
    for (const one of casesOf(collection)) {
      // `-u` writes what is said; whoever reads the difference judges it.
      const { messages } = await solveCase(one);
      told.push(withMessages(one, messages));
      if ((messages.length === 0) !== (one.silence !== undefined)) unreasoned.push(one.title);
    }
    expect(unreasoned, "said nothing without a reason, or with one and said something").toEqual([]);
    await expect(`${intro}${told.join("\n")}`).toMatchFileSnapshot(file);
  });

  it("there are more than the 222 that were tried first, each once", () => {
    expect(cases.length).toBeGreaterThan(222);
    expect(new Set(cases.map(({ title }) => title)).size).toBe(cases.length);
  });
});
