import { spawnSync } from "node:child_process";
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { clearLeftovers } from "../../../src/cli/output/leftovers.ts";
import { forget, remember, rememberedFolders } from "../../../src/cli/output/notes.ts";
import { stage } from "../../../src/cli/output/stage.ts";
import { withOutput } from "../../../src/cli/output/with-output.ts";
import {
  beforeIn,
  makeWorkFolder,
  nextIn,
  note,
  type WorkFolder,
} from "../../../src/cli/output/work-folder.ts";
import type { OutputFile } from "../../../src/markup/output.ts";
import { cli, smallGuide, temporaryFolder, writeContent } from "../../support/cli.ts";
import { hashesBelow } from "../../support/files-below.ts";

let folder: string;
let out: string;
let content: string;
const { XDG_STATE_HOME } = process.env;

beforeEach(async () => {
  folder = temporaryFolder();
  // Notes that no command of another test reads.
  process.env.XDG_STATE_HOME = temporaryFolder();
  content = smallGuide(join(temporaryFolder(), "content"));
  out = join(folder, "out");
  await withOutput({ out, contentFolders: [], tell: expect.unreachable }, ({ replace }) =>
    replace(edition("old")),
  );
});
afterEach(() => {
  process.env.XDG_STATE_HOME = XDG_STATE_HOME;
});

async function* edition(title: string): AsyncIterable<OutputFile> {
  yield { path: "site/index.html", content: title };
  yield { path: "data/rigs/plain.json", content: title };
}

const title = () => readFileSync(join(out, "site/index.html"), "utf8");
/** A process that has ended. */
const { pid: endedPid } = spawnSync(process.execPath, ["--version"]);

/** A build stopped dead after something was done: its work folder is left, and its process is no more. */
async function stoppedAfter(act: (work: WorkFolder) => unknown): Promise<string> {
  const work = makeWorkFolder(folder, "out");
  await act(work);
  const parts = basename(work.path).split("-");
  const dead = join(dirname(work.path), parts.with(3, String(endedPid)).join("-"));
  renameSync(work.path, dead);
  forget(work.path);
  remember(dead);
  return dead;
}

const stagedNew = (work: WorkFolder) => stage(work, out, edition("new"));
async function betweenTheMoves(work: WorkFolder): Promise<void> {
  await stagedNew(work);
  renameSync(out, beforeIn(work));
}

/** Runs a command; gives its exit code, and the lines that are about what it found. */
async function next(...command: string[]) {
  const { code, report } = await cli(...command, "--content", content);
  return { code, told: report.split("\n").filter((line) => line.startsWith("dotdown: ")) };
}
/** What each command does first. */
function clear(): readonly string[] {
  const told: string[] = [];
  clearLeftovers(rememberedFolders(), (line) => told.push(line));
  return told;
}
const expectOnlyOutput = () => expect(readdirSync(folder)).toEqual(["out"]);

describe("after a build that was stopped dead between the two moves of its swap", () => {
  it.each([
    ["check", () => next("check")],
    ["sheet", () => next("sheet", "plain")],
    ["a build of another output", () => next("build", "--out", join(temporaryFolder(), "other"))],
  ])("%s finishes the swap", async (_, command) => {
    await stoppedAfter(betweenTheMoves);
    const told = [
      `dotdown: a build was stopped while it put its output in place; that is done now, in ${out}`,
    ];
    expect(await command()).toEqual({ code: 0, told });
    expect(title()).toBe("new");
    expectOnlyOutput();
  });

  it("the next command takes the old output back where the new one is not whole", async () => {
    await stoppedAfter(async (work) => {
      await betweenTheMoves(work);
      truncateSync(join(nextIn(work), "site/index.html"));
    });
    expect(clear()[0]).toMatch(/; the old one is back in .*out$/);
    expect(title()).toBe("old");
    expectOnlyOutput();
  });
});

describe("the next command", () => {
  it.each<[string, (work: WorkFolder) => unknown, string]>([
    ["that had only begun", () => {}, "old"],
    ["before it wrote its first file", (work) => mkdirSync(nextIn(work)), "old"],
    [
      "in the middle of a file",
      async (work) => {
        await stagedNew(work);
        truncateSync(join(nextIn(work), "dotdown-files.json"), 20);
      },
      "old",
    ],
    [
      "in the middle of a line of its journal",
      (work) => appendFileSync(join(work.path, "journal"), '["fi'),
      "old",
    ],
    ["before its swap", stagedNew, "old"],
    [
      "after its swap",
      async (work) => {
        await betweenTheMoves(work);
        renameSync(nextIn(work), out);
        note(work, ["in place"]);
      },
      "new",
    ],
    [
      "while it deleted the old output",
      async (work) => {
        await betweenTheMoves(work);
        renameSync(nextIn(work), out);
        note(work, ["in place"]);
        rmSync(join(beforeIn(work), "site"), { recursive: true });
      },
      "new",
    ],
  ])("clears up in silence after a build that was stopped dead %s", async (_, act, left) => {
    await stoppedAfter(act);
    expect(clear()).toEqual([]);
    expect(title()).toBe(left);
    expectOnlyOutput();
    expect(readdirSync(process.env.XDG_STATE_HOME!)).toEqual([]);
  });
});

describe("clearing up after a build that was stopped dead", () => {
  it("keeps what somebody put or changed there", async () => {
    await stoppedAfter(async (work) => {
      await betweenTheMoves(work);
      renameSync(nextIn(work), out);
      note(work, ["in place"]);
      writeContent(beforeIn(work), { "site/mine.txt": "mine", "data/rigs/plain.json": "min" });
      writeContent(work.path, { "notes.txt": "mine" });
    });
    const told = clear();
    const kept = /is kept in (.*)$/.exec(told[0]!)![1]!;
    expect(Object.keys(hashesBelow(kept)).sort()).toEqual([
      "before/data/rigs/plain.json",
      "before/site/mine.txt",
      "journal",
      "notes.txt",
    ]);
    expect(title()).toBe("new");
  });

  it("does not bring back an old output after its new one was in place and then taken away", async () => {
    await stoppedAfter(async (work) => {
      await betweenTheMoves(work);
      note(work, ["in place"]);
      rmSync(nextIn(work), { recursive: true });
    });
    clear();
    expect(readdirSync(folder)).toEqual([]);
  });

  it("has none of a work folder that cannot be made, and says what stood in the way", () => {
    expect(() => makeWorkFolder(join(folder, "nowhere"), "out")).toThrow(/ENOENT.*mkdir/);
    expect(readdirSync(folder)).toEqual(["out"]);
  });

  it("leaves alone a build that is at work", async () => {
    const work = makeWorkFolder(folder, "out");
    await betweenTheMoves(work);
    expect(clear()).toEqual([]);
    expect(existsSync(nextIn(work))).toBe(true);
    forget(work.path);
  });

  it("keeps a work folder in which something else stands for the journal", async () => {
    const dead = await stoppedAfter(stagedNew);
    rmSync(join(dead, "journal"));
    mkdirSync(join(dead, "journal"));
    expect(clear()[0]).toMatch(/^what no build wrote was found beside the output/);
  });

  it("does without notes where none can be written", async () => {
    const file = join(temporaryFolder(), "file");
    writeFileSync(file, "");
    process.env.XDG_STATE_HOME = file;
    expect(clear()).toEqual([]);
    await stoppedAfter(betweenTheMoves);
    // Beside the output it is found all the same.
    await withOutput({ out, contentFolders: [], tell: () => {} }, ({ replace }) => replace(edition("newer")));
    expect(title()).toBe("newer");
    expect(readdirSync(folder)).toEqual(["out"]);
  });
});
