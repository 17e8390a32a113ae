import {
  appendFileSync,
  cpSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { homedir } from "node:os";
import { join, parse, relative } from "node:path";
import { beforeEach, describe, expect, it } from "vitest";
import { UsageError } from "../../../src/cli/command.ts";
import { withOutput } from "../../../src/cli/output/with-output.ts";
import type { OutputFile } from "../../../src/markup/output.ts";
import type { Store } from "../../../src/model/kept.ts";
import { temporaryFolder, writeContent } from "../../support/cli.ts";
import { hashesBelow } from "../../support/files-below.ts";

let folder: string;
let content: string;
let out: string;
/** What a build has found in an output and the next one takes over. */
let kept: Map<string, unknown>;
const store: Store = {
  find: (kind, from) => (kept.has(kind + from) ? { value: kept.get(kind + from) } : undefined),
  put: (kind, from, value) => kept.set(kind + from, value),
};

beforeEach(() => {
  kept = new Map();
  folder = temporaryFolder();
  content = join(folder, "content");
  mkdirSync(content);
  out = join(folder, "out");
});

async function* files(title: string): AsyncIterable<OutputFile> {
  yield { path: "site/index.html", content: `<h1>${title}</h1>` };
  yield { path: "data/rigs/plain.json", content: "{}" };
}

const build = (to = out, title = "Test guide") =>
  withOutput({ out: to, contentFolders: [content], tell: expect.unreachable, store }, ({ replace }) =>
    replace(files(title)),
  );

/** A build that must be refused, with nothing written, deleted or left behind. */
async function expectRefused(to: string, ...reasons: (string | RegExp)[]): Promise<void> {
  const before = hashesBelow(folder);
  const work = { out: to, contentFolders: [content], tell: expect.unreachable, store };
  // Before anything else is done, so that nobody waits long to hear it.
  const refused = await withOutput(work, async () => expect.unreachable()).catch(
    (error: unknown) => error as Error,
  );
  expect(refused).toBeInstanceOf(UsageError);
  for (const reason of reasons) expect(refused.message).toMatch(reason);
  expect(hashesBelow(folder)).toEqual(before);
  expect(readdirSync(folder).filter((name) => name.startsWith("."))).toEqual([]);
}

describe("an output folder that is not a build's own is refused", () => {
  it.each([
    ["with the files of a person", { "holiday.jpg": "mine" }],
    ["with an empty manifest.json of another tool", { "manifest.json": "", "holiday.jpg": "mine" }],
    ["with an empty list", { "dotdown-files.json": "", "holiday.jpg": "mine" }],
    ["with a folder in the place of its list", { "dotdown-files.json/holiday.jpg": "mine" }],
    ["with a list that is no list", { "dotdown-files.json": "[null]", "holiday.jpg": "mine" }],
    ["that holds a list alone", { "dotdown-files.json": '{ "tool": "dotdown", "format": 1, "files": {} }' }],
  ])("%s", async (_, files) => {
    writeContent(out, files);
    await expectRefused(out, /out /, /name another folder with --out|move or delete it yourself/);
  });

  it("with the list of an older form, and the message says what to do", async () => {
    writeContent(out, { "manifest.json": '{ "a.txt": "0" }', "a.txt": "a" });
    await expectRefused(out, "an older dotdown", "move or delete it yourself, and build again");
  });

  it("where it is a file", async () => {
    writeFileSync(out, "mine");
    await expectRefused(out, "is a file; name a folder with --out");
  });

  it.each([
    ["to a build's own output", "earlier"],
    ["that leads nowhere", "nowhere"],
    ["to a file", "file.txt"],
    ["to itself", "out"],
  ])("where it is a link %s", async (_, target) => {
    writeFileSync(join(folder, "file.txt"), "mine");
    await build(join(folder, "earlier"));
    symlinkSync(target, out);
    await expectRefused(out, `is a link to ${target}; nothing is written through links`);
  });
});

describe("an output of an earlier build is refused", () => {
  beforeEach(async () => {
    await build();
  });

  it("with a file that somebody put there, in whichever folder", async () => {
    writeContent(out, { "notes.txt": "mine", "site/mine/photo.jpg": "mine" });
    await expectRefused(out, /\n {2}notes\.txt \(no build wrote it\)\n {2}site\/mine\/photo\.jpg \(no build/);
  });

  it("with a file that somebody changed, keeping its size", async () => {
    const page = join(out, "site/index.html");
    writeFileSync(page, "<h1>Best guide</h1>");
    await expectRefused(out, /\n {2}site\/index\.html \(changed since\)\nmove these elsewhere/);
  });

  it("with a file that somebody changed, keeping its size and its date, though what it held was known", async () => {
    const page = join(out, "site/index.html");
    const longAgo = new Date(2020, 0, 1);
    utimesSync(page, longAgo, longAgo);
    // What was changed in the same step of the disk's clock is read each time.
    const probe = join(folder, "probe");
    do writeFileSync(probe, "");
    while (statSync(probe, { bigint: true }).mtimeNs <= statSync(page, { bigint: true }).ctimeNs);
    await build();
    expect(statSync(page).mtime).toEqual(longAgo);
    expect((kept.get(`seen${out}`) as ReadonlyMap<string, unknown>).size).toBeGreaterThan(0);
    writeFileSync(page, "<h1>Best guide</h1>");
    utimesSync(page, longAgo, longAgo);
    await expectRefused(out, /\n {2}site\/index\.html \(changed since\)\nmove these elsewhere/);
  });

  it("with an empty folder, or a link, that somebody made", async () => {
    mkdirSync(join(out, "site/mine"));
    symlinkSync(content, join(out, "data/link"));
    await expectRefused(out, /\n {2}data\/link \(no build wrote it\)\n {2}site\/mine \(no build wrote it\)/);
  });

  it("where a link to the same content stands in the place of a file", async () => {
    const page = join(out, "site/index.html");
    cpSync(page, join(folder, "index.html"));
    rmSync(page);
    symlinkSync(join(folder, "index.html"), page);
    await expectRefused(out, "site/index.html (no build wrote it)");
  });

  it("with a list that was added to by hand", async () => {
    const list = join(out, "dotdown-files.json");
    const text = readFileSync(list, "utf8");
    writeContent(out, { "mine.txt": "" });
    // The right size and hash of an empty file (printf '' | sha256sum), but not the hash over the list.
    const empty = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
    writeFileSync(
      list,
      text.replace('"files": {', `"files": {\n    "mine.txt": { "bytes": 0, "sha256": "${empty}" },`),
    );
    await expectRefused(out, "holds files that no build wrote");
    writeFileSync(list, text);
    appendFileSync(list, "\n");
    await expectRefused(out, "holds files that no build wrote");
  });

  it("and the message names ten files and counts the rest", async () => {
    writeContent(out, Object.fromEntries(Array.from({ length: 13 }, (_, n) => [`mine-${n}`, "mine"])));
    await expectRefused(out, "\n  and 3 more\n");
  });

  it("but replaced where it is as it was built", async () => {
    expect(await build(out, "Second edition")).toBe(2);
    expect(readFileSync(join(out, "site/index.html"), "utf8")).toContain("Second edition");
    expect(readdirSync(folder).sort()).toEqual(["content", "out"]);
  });
});

describe("a place that no build may ever replace is refused", () => {
  it.each([
    ["the content", () => content, "is the content folder"],
    ["the content, spelled otherwise", () => `${content}/../content/.`, "is the content folder"],
    ["what the content is in", () => folder, "is a folder that the content folder"],
    ["the root", () => parse(folder).root, "is the root of a disk"],
    ["the home folder", () => homedir(), "is your home folder|is a folder that"],
    ["the working folder", () => ".", "is the working folder"],
    ["what the working folder is in", () => "..", "is a folder that the working folder is in"],
  ])("%s", async (_, place, reason) => expectRefused(place(), new RegExp(reason)));

  it("what the content is truly in, where that is named by a link", async () => {
    mkdirSync(join(folder, "real"));
    renameSync(content, join(folder, "real/content"));
    symlinkSync("real/content", content);
    await expectRefused(join(folder, "real"), "is a folder that the content folder");
  });

  it("even where it is empty and reached by a link", async () => {
    const home = join(folder, "home");
    mkdirSync(home);
    symlinkSync(folder, join(folder, "way"));
    const { HOME } = process.env;
    process.env.HOME = home;
    try {
      await expectRefused(join(folder, "way/home"), "is your home folder");
      await expectRefused(join(folder, "way/content"), "is the content folder");
    } finally {
      process.env.HOME = HOME;
    }
  });
});

describe("folders beside the output", () => {
  it("are never deleted, whatever they are called", async () => {
    const names = [".out-next", ".out-before", ".dotdown-next", ".dotdown-0123456789abcdef"];
    for (const name of names) writeContent(join(folder, name), { "mine.txt": name });
    await build();
    await build();
    expect(readdirSync(folder).sort()).toEqual([...names, "content", "out"].sort());
    for (const name of names) expect(readdirSync(join(folder, name))).toEqual(["mine.txt"]);
  });

  it("are made on the way to the output, and links on the way are followed", async () => {
    mkdirSync(join(folder, "true"));
    symlinkSync("true", join(folder, "way"));
    await build(join(relative(process.cwd(), folder), "way/a/b/out"));
    expect(readdirSync(join(realpathSync(folder), "true/a/b"))).toEqual(["out"]);
  });
});
