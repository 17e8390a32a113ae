import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { UsageError } from "../../src/cli/command.ts";
import { writeOutput } from "../../src/cli/staging.ts";
import type { OutputFile } from "../../src/markup/output.ts";
import { temporaryFolder } from "../support/cli.ts";

async function* files(...entries: [string, string][]): AsyncIterable<OutputFile> {
  for (const [path, content] of entries) yield { path, content };
}

async function* failing(): AsyncIterable<OutputFile> {
  yield { path: "a.txt", content: "half" };
  throw new Error("no more");
}

describe("writing the output", () => {
  it("writes every file and a manifest of hashes", async () => {
    const out = join(temporaryFolder(), "out");
    expect(await writeOutput(out, files(["a.txt", "one"], ["b/c.txt", "two"]))).toBe(2);
    expect(readFileSync(join(out, "b/c.txt"), "utf8")).toBe("two");
    // SHA-256 of "one", computed with a general tool: printf one | sha256sum
    expect(JSON.parse(readFileSync(join(out, "manifest.json"), "utf8"))["a.txt"]).toBe(
      "7692c3ad3540bb803c020b3aee66cd8887123234ea0c6e7143c0add73ff431ed",
    );
  });

  it("replaces an earlier output as a whole", async () => {
    const out = join(temporaryFolder(), "out");
    await writeOutput(out, files(["old.txt", "old"]));
    await writeOutput(out, files(["new.txt", "new"]));
    expect(readdirSync(out).sort()).toEqual(["manifest.json", "new.txt"]);
  });

  it("leaves an earlier output whole, and nothing else, when a file fails", async () => {
    const folder = temporaryFolder();
    const out = join(folder, "out");
    await writeOutput(out, files(["old.txt", "old"]));
    await expect(writeOutput(out, failing())).rejects.toThrow("no more");
    expect(readFileSync(join(out, "old.txt"), "utf8")).toBe("old");
    expect(readdirSync(folder)).toEqual(["out"]);
  });

  it("does not touch a folder that holds something else", async () => {
    const out = temporaryFolder();
    writeFileSync(join(out, "holiday.jpg"), "not ours");
    await expect(writeOutput(out, files(["a.txt", "one"]))).rejects.toThrow(UsageError);
    expect(readdirSync(out)).toEqual(["holiday.jpg"]);
  });

  it("does not take a file for a folder", async () => {
    const out = join(temporaryFolder(), "out");
    writeFileSync(out, "a file");
    await expect(writeOutput(out, files(["a.txt", "one"]))).rejects.toThrow(UsageError);
    expect(readFileSync(out, "utf8")).toBe("a file");
  });

  it("brings back the output of before when a kill fell between the two renames", async () => {
    const folder = temporaryFolder();
    const out = join(folder, "out");
    await writeOutput(out, files(["old.txt", "old"]));
    renameSync(out, join(folder, ".out-before"));
    mkdirSync(join(folder, ".out-next"));
    await expect(writeOutput(out, failing())).rejects.toThrow("no more");
    expect(existsSync(join(out, "old.txt"))).toBe(true);
    expect(readdirSync(folder)).toEqual(["out"]);
  });
});
