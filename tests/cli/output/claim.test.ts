import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setImmediate as turn } from "node:timers/promises";
import { beforeEach, describe, expect, it } from "vitest";
import { outputKey, workName } from "../../../src/cli/output/owner.ts";
import { withOutput } from "../../../src/cli/output/with-output.ts";
import type { OutputFile } from "../../../src/markup/output.ts";
import { temporaryFolder } from "../../support/cli.ts";

let folder: string;
let out: string;
let told: string[];

beforeEach(() => {
  folder = temporaryFolder();
  out = join(folder, "out");
  told = [];
});

async function* edition(title: string): AsyncIterable<OutputFile> {
  for (const name of ["a.txt", "b.txt", "c.txt"]) {
    await turn();
    yield { path: name, content: title };
  }
}

const build = (title: string, to = out) =>
  withOutput({ out: to, contentFolders: [], tell: (line) => told.push(line) }, ({ replace }) =>
    replace(edition(title)),
  );

const editionsIn = (output: string) =>
  new Set(["a.txt", "b.txt", "c.txt"].map((name) => readFileSync(join(output, name), "utf8")));

/** The name of a work folder for `out` with some of its parts changed. */
function workNameWith(change: (parts: string[]) => void): string {
  const parts = workName(outputKey("out")).split("-");
  change(parts);
  return parts.join("-");
}

const [HOST, PID, BEGUN] = [2, 3, 4];

/** The number of a process that has ended. */
const endedPid = () => String(spawnSync(process.execPath, ["--version"]).pid);

describe("builds into one output", () => {
  it("take turns, whoever comes when, and none mixes with another", async () => {
    const titles = ["one", "two", "three", "four", "five"];
    await Promise.all(titles.map((title) => build(title)));
    expect(editionsIn(out).size).toBe(1);
    expect(readdirSync(folder)).toEqual(["out"]);
  });

  it("wait for each other with one line that says for whom", async () => {
    let end = () => {};
    const first = withOutput({ out, contentFolders: [], tell: expect.unreachable }, ({ replace }) =>
      new Promise<void>((ended) => {
        end = ended;
      }).then(() => replace(edition("first"))),
    );
    while (readdirSync(folder).length === 0) await turn();
    const second = build("second");
    while (told.length === 0) await turn();
    expect(existsSync(out)).toBe(false);
    expect(told).toEqual([
      `another build (process ${process.pid}) is writing ${out}; this one waits until it is done`,
    ]);
    end();
    await Promise.all([first, second]);
    expect(told.length).toBe(1);
    expect([...editionsIn(out)]).toEqual(["second"]);
  });

  it("do not wait for a build of another output beside it", async () => {
    await withOutput({ out, contentFolders: [], tell: expect.unreachable }, async () => {
      expect(await build("other", join(folder, "other"))).toBe(3);
    });
    expect(told).toEqual([]);
  });
});

describe("a lock", () => {
  it.each([
    [
      "whose process has ended, where its beginning could not be asked",
      (parts: string[]) => parts.splice(PID, 2, endedPid(), "0"),
    ],
    ["whose process has ended", (parts: string[]) => parts.splice(PID, 1, endedPid())],
    [
      "whose process number went to a process that began at another time",
      (parts: string[]) => parts.splice(BEGUN, 1, "1"),
    ],
  ])("%s does not hold", async (_, change) => {
    mkdirSync(join(folder, workNameWith(change)));
    expect(await build("new")).toBe(3);
    expect(told).toEqual([]);
    expect(readdirSync(folder)).toEqual(["out"]);
  });

  it("of another computer holds as long as it shows signs of life, and ten minutes more", async () => {
    const theirs = join(
      folder,
      workNameWith((parts) => parts.splice(HOST, 1, "00000000")),
    );
    mkdirSync(theirs);
    const minutesAgo = (minutes: number) => {
      const then = new Date(Date.now() - minutes * 60_000);
      utimesSync(theirs, then, then);
    };
    minutesAgo(9);
    const build2 = build("new");
    while (told.length === 0) await turn();
    expect(existsSync(out)).toBe(false);
    expect(told[0]).toMatch(/^a build on another computer .* is writing .*out; this one waits/);
    minutesAgo(11);
    expect(await build2).toBe(3);
    expect(readdirSync(folder)).toEqual(["out"]);
  });

  it("of a process whose beginning cannot be asked holds by its age too", async () => {
    const theirs = join(
      folder,
      workNameWith((parts) => parts.splice(BEGUN, 1, "0")),
    );
    mkdirSync(theirs);
    utimesSync(theirs, 0, 0);
    expect(await build("new")).toBe(3);
    expect(readdirSync(folder)).toEqual(["out"]);
  });
});

describe("a folder with the name of a lock", () => {
  it("keeps what somebody put into it, under a name that no build looks for", async () => {
    const theirs = workNameWith((parts) => parts.splice(PID, 1, endedPid()));
    mkdirSync(join(folder, theirs, "next"), { recursive: true });
    writeFileSync(join(folder, theirs, "next/mine.txt"), "mine");
    expect(await build("new")).toBe(3);
    const kept = readdirSync(folder).find((name) => name.startsWith("dotdown-kept-"))!;
    expect(readFileSync(join(folder, kept, "next/mine.txt"), "utf8")).toBe("mine");
    expect(told[0]).toBe(
      `what no build wrote was found beside the output, and is kept in ${join(folder, kept)}`,
    );
    told = [];
    expect(await build("newer")).toBe(3);
    expect(told).toEqual([]);
  });
});
