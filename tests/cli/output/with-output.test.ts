import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { withOutput } from "../../../src/cli/output/with-output.ts";
import type { OutputFile } from "../../../src/markup/output.ts";
import { temporaryFolder } from "../../support/cli.ts";

async function* files(...entries: [string, string][]): AsyncIterable<OutputFile> {
  for (const [path, content] of entries) yield { path, content };
}

async function* failing(): AsyncIterable<OutputFile> {
  yield { path: "a.txt", content: "half" };
  throw new Error("no more");
}

const told: string[] = [];
const write = (out: string, content: AsyncIterable<OutputFile>) =>
  withOutput({ out, contentFolders: [], tell: (line) => told.push(line) }, ({ replace }) => replace(content));

describe("writing the output", () => {
  it("writes every file, and a list with their sizes and hashes", async () => {
    const out = join(temporaryFolder(), "out");
    expect(await write(out, files(["a.txt", "one"], ["b/c.txt", "two"]))).toBe(2);
    expect(readFileSync(join(out, "b/c.txt"), "utf8")).toBe("two");
    // SHA-256 of "one", computed with a general tool: printf one | sha256sum
    expect(JSON.parse(readFileSync(join(out, "dotdown-files.json"), "utf8"))).toMatchObject({
      tool: "dotdown",
      files: {
        "a.txt": { bytes: 3, sha256: "7692c3ad3540bb803c020b3aee66cd8887123234ea0c6e7143c0add73ff431ed" },
      },
    });
  });

  it("replaces an earlier output as a whole", async () => {
    const out = join(temporaryFolder(), "out");
    await write(out, files(["old/old.txt", "old"]));
    await write(out, files(["new.txt", "new"]));
    expect(readdirSync(out).sort()).toEqual(["dotdown-files.json", "new.txt"]);
    expect(readdirSync(dirname(out))).toEqual(["out"]);
  });

  it("replaces an empty folder, and an output of which a file was taken away", async () => {
    const out = join(temporaryFolder(), "out");
    mkdirSync(out);
    await write(out, files(["a.txt", "one"], ["b.txt", "two"]));
    rmSync(join(out, "a.txt"));
    await write(out, files(["a.txt", "three"]));
    expect(readFileSync(join(out, "a.txt"), "utf8")).toBe("three");
    expect(readdirSync(dirname(out))).toEqual(["out"]);
  });

  it("does not write what the earlier output has just so", async () => {
    const out = join(temporaryFolder(), "out");
    await write(out, files(["same.txt", "same"], ["a/b.txt", "one"]));
    const before = statSync(join(out, "same.txt"));
    await write(out, files(["same.txt", "same"], ["a/b.txt", "two"], ["a/same.txt", "same"]));
    const after = statSync(join(out, "same.txt"));
    expect([after.ino, after.mtimeMs, after.nlink]).toEqual([before.ino, before.mtimeMs, 1]);
    expect(readFileSync(join(out, "a/b.txt"), "utf8")).toBe("two");
    expect(readFileSync(join(out, "a/same.txt"), "utf8")).toBe("same");
    expect(readdirSync(dirname(out))).toEqual(["out"]);
  });

  it("refuses what somebody changed in the output after the next one had it, too, and leaves nothing beside it", async () => {
    const folder = temporaryFolder();
    const out = join(folder, "out");
    await write(out, files(["same.txt", "same"]));
    async function* meanwhile(): AsyncIterable<OutputFile> {
      yield* files(["same.txt", "same"], ["new.txt", "new"]);
      writeFileSync(join(out, "same.txt"), "mine");
    }
    await expect(write(out, meanwhile())).rejects.toThrow("same.txt (changed since)");
    expect(readFileSync(join(out, "same.txt"), "utf8")).toBe("mine");
    expect(readdirSync(out).sort()).toEqual(["dotdown-files.json", "same.txt"]);
    expect(readdirSync(folder)).toEqual(["out"]);
  });

  it("leaves an earlier output whole, and nothing else, when a file fails", async () => {
    const folder = temporaryFolder();
    const out = join(folder, "out");
    await write(out, files(["old.txt", "old"]));
    await expect(write(out, failing())).rejects.toThrow("no more");
    expect(readFileSync(join(out, "old.txt"), "utf8")).toBe("old");
    expect(readdirSync(folder)).toEqual(["out"]);
  });

  it("leaves no folder on the way to an output that cannot be written", async () => {
    const folder = temporaryFolder();
    const out = join(folder, "a/b", "x".repeat(300), "out");
    await expect(write(out, files(["a.txt", "one"]))).rejects.toThrow(
      "the name is too long; nothing was written",
    );
    await expect(write(join(folder, "a/b/out"), failing())).rejects.toThrow("no more");
    expect(readdirSync(folder)).toEqual([]);
  });

  it("does not write a file over another", async () => {
    const same = files(["a.txt", "one"], ["a.txt", "two"]);
    const out = join(temporaryFolder(), "out");
    await expect(write(out, same)).rejects.toThrow("something else put a file or folder there");
  });

  it("notices what somebody put into the output while it was built", async () => {
    const folder = temporaryFolder();
    const out = join(folder, "out");
    await write(out, files(["old.txt", "old"]));
    async function* meanwhile(): AsyncIterable<OutputFile> {
      yield { path: "new.txt", content: "new" };
      writeFileSync(join(out, "notes.txt"), "mine");
    }
    await expect(write(out, meanwhile())).rejects.toThrow("notes.txt (no build wrote it)");
    expect(readdirSync(out).sort()).toEqual(["dotdown-files.json", "notes.txt", "old.txt"]);
    expect(readdirSync(folder)).toEqual(["out"]);
  });

  it("notices that a file is not as it was written", async () => {
    const folder = temporaryFolder();
    const out = join(folder, "out");
    await write(out, files(["old.txt", "old"]));
    async function* spoilt(): AsyncIterable<OutputFile> {
      yield { path: "new.txt", content: "new" };
      const [work] = readdirSync(folder).filter((name) => name !== "out");
      writeFileSync(join(folder, work!, "next/new.txt"), "now");
    }
    const { ctimeNs } = statSync(out, { bigint: true });
    // As in sysexits.h of 4.3BSD: EX_TEMPFAIL.
    await expect(write(out, spoilt())).rejects.toMatchObject({
      message: expect.stringContaining("new.txt was changed by something else"),
      exitCode: 75,
    });
    expect(readFileSync(join(out, "old.txt"), "utf8")).toBe("old");
    // It was not even moved.
    expect(statSync(out, { bigint: true }).ctimeNs).toBe(ctimeNs);
    // What somebody wrote stays, wherever they wrote it.
    expect(told.pop()).toMatch(/^what no build wrote was found beside the output, and is kept in /);
    const kept = readdirSync(folder).find((name) => name.startsWith("dotdown-kept-"))!;
    expect(readFileSync(join(folder, kept, "next/new.txt"), "utf8")).toBe("now");
  });
});
