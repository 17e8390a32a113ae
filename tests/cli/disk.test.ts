import { linkSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { disk } from "../../src/cli/disk.ts";
import { cli, smallGuide, temporaryFolder, writeContent } from "../support/cli.ts";

const paths = async (folder: string) => (await disk.list(folder)).map(({ path }) => path);

describe("the files of a content folder", () => {
  it("are listed by path and size, however the folder is spelled", async () => {
    const folder = writeContent(temporaryFolder(), { "b/c.md": "four", "a.yaml": "ä", "b.md": "" });
    const files = [
      { path: "a.yaml", bytes: 2 },
      { path: "b.md", bytes: 0 },
      { path: "b/c.md", bytes: 4 },
    ];
    for (const spelled of [folder, `${folder}/`, `${folder}/b/..`, `${folder}/.`])
      expect(await disk.list(spelled)).toEqual(files);
    const before = process.cwd();
    process.chdir(folder);
    try {
      for (const spelled of [".", "./", "b/.."]) expect(await disk.list(spelled)).toEqual(files);
      expect(await disk.readText("./b/c.md")).toBe("four");
    } finally {
      process.chdir(before);
    }
  });

  it("leave out what is hidden, and the output of a build", async () => {
    const folder = writeContent(temporaryFolder(), {
      "a.md": "",
      ".a.md.swp": "",
      "._a.md": "",
      ".git/b.md": "",
      "out/dotdown-files.json": "",
      "out/c.md": "",
    });
    // An editor that has a file open keeps a link that leads nowhere beside it.
    symlinkSync("me@here.1", join(folder, ".#a.md"));
    expect(await paths(folder)).toEqual(["a.md"]);
  });

  it.each([
    ["a file", "true.md"],
    ["a folder", "true"],
    ["nothing", "nothing"],
  ])("are not reached by a link to %s", async (_, target) => {
    const folder = writeContent(temporaryFolder(), { "true.md": "", "true/a.md": "" });
    symlinkSync(target, join(folder, "link.md"));
    await expect(paths(folder)).rejects.toThrow(
      `${join(folder, "link.md")} is a link, and content is not read through links; nothing was written.`,
    );
  });

  it("are none of a folder that is not there", async () => {
    const folder = join(temporaryFolder(), "nowhere");
    await expect(paths(folder)).rejects.toThrow(folder);
  });

  it("may have several names", async () => {
    const folder = writeContent(temporaryFolder(), { "a.md": "text" });
    linkSync(join(folder, "a.md"), join(folder, "b.md"));
    expect(await paths(folder)).toEqual(["a.md", "b.md"]);
  });

  it("are undefined once they have vanished", async () => {
    const folder = writeContent(temporaryFolder(), { "a.md": "text" });
    rmSync(join(folder, "a.md"));
    expect(await disk.readText(join(folder, "a.md"))).toBeUndefined();
  });
});

describe("what cannot be read is said in one sentence, with exit code 66", () => {
  const content = () => smallGuide(join(temporaryFolder(), "content"));

  it("a file that is really a link", async () => {
    const folder = content();
    rmSync(join(folder, "hooks.yaml"));
    symlinkSync("elsewhere", join(folder, "hooks.yaml"));
    const { code, result, report } = await cli("check", "--content", folder);
    expect({ code, result }).toEqual({ code: 66, result: "" });
    expect(report).toMatch(/^dotdown: .*hooks\.yaml is a link, .*\n$/);
  });

  it("a folder in the place of a tub file", async () => {
    const folder = content();
    const { code, report } = await cli("sheet", "plain", "--content", folder, "--tub", folder);
    expect(code).toBe(66);
    expect(report).toBe(
      `dotdown: ${folder} cannot be read: it is a folder, not a file; nothing was written. To go on, name a file\n`,
    );
  });

  it("a content folder whose name is too long, or that links lead to in a circle", async () => {
    const folder = temporaryFolder();
    symlinkSync("circle", join(folder, "circle"));
    for (const [name, reason] of [
      ["x".repeat(300), "the name is too long"],
      ["circle", "links on the way lead round in a circle"],
    ]) {
      const { code, report } = await cli("check", "--content", join(folder, name!));
      expect(code).toBe(66);
      expect(report).toContain(`cannot be read: ${reason}; nothing was written. To go on, `);
    }
  });
});

describe("what cannot be written is said in one sentence, with exit code 73", () => {
  it.each([
    ["below a file", "file/out", "a part of the path is a file, not a folder"],
    ["with too long a name", "x".repeat(300), "the name is too long"],
    ["below links in a circle", "circle/out", "links on the way lead round in a circle"],
  ])("an output %s", async (_, name, reason) => {
    const folder = temporaryFolder();
    const content = smallGuide(join(folder, "content"));
    writeFileSync(join(folder, "file"), "mine");
    symlinkSync("circle", join(folder, "circle"));
    const out = join(folder, name);
    const { code, result, report } = await cli("build", "--content", content, "--out", out);
    expect({ code, result }).toEqual({ code: 73, result: "" });
    expect(report).toMatch(/^dotdown: .* cannot be written: .*; nothing was written\. To go on, .*\n$/);
    expect(report).toContain(reason);
  });

  it("an empty name is a wrong call", async () => {
    const { code, report } = await cli("build", "--out", "");
    const said = "dotdown: the folder to write has an empty name; name one with --out\n";
    expect({ code, report }).toEqual({ code: 2, report: said });
  });
});
