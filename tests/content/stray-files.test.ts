import { describe, expect, it } from "vitest";
import { worded } from "../../src/checks/messages.ts";
import { strayFiles } from "../../src/content/stray-files.ts";
import { cli, temporaryFolder, writeContent } from "../support/cli.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

const said = (path: string) =>
  strayFiles(sourcesOf({ [path]: "" })).map((message) => {
    const { reason, hint } = worded(message);
    return `${message.severity} ${message.place.file}: ${reason}; ${hint}`;
  });

describe("a file that nothing reads", () => {
  it.each([
    ["baits/grub.yml", "call it grub.yaml"],
    ["rigs/pond.markdown", "call it pond.md"],
    ["rigs/pond.MD", "call it pond.md"],
    ["lessons/pond.md.txt", "call it pond.md"],
    ["rig/pond.md", "did you mean rigs/?"],
    ["Rigs/pond.md", "did you mean rigs/?"],
    ["word/en.yaml", "did you mean words/?"],
    ["recipes/soup.md", "its folders are rigs, lessons, plans, pages"],
    ["pond.md", "move a rig into rigs/"],
    ["logo.svg", "move a picture, a logo too, into images/"],
    ["signs.ttf", "move a font into fonts/"],
    ["guides.yaml", "did you mean guide.yaml?"],
    ["guide.yml", "did you mean guide.yaml?"],
    ["hooks.YAML", "did you mean hooks.yaml?"],
    ["floats/mine.md", "write it as keys and values, without --- lines"],
    ["rigs/mine.yaml", "write it as a text whose keys stand between --- lines"],
    ["pages/pond.jpg", "take it out of the content"],
  ])("is named with its likely fix: %s", (path, hint) => {
    const [only, ...others] = said(path);
    expect(only).toMatch(/^warning content\/.*: the file is not read: /);
    expect(only).toContain(hint);
    expect(others).toEqual([]);
  });

  it.each(["README.md", "LICENSE", "guide.yaml", "rigs/pond.md", "words/de.yaml"])("is not %s", (path) =>
    expect(said(path)).toEqual([]),
  );

  it("is named by a check of the whole, which goes on", async () => {
    const folder = writeContent(temporaryFolder(), contentWith({ "baits/worm.yml": "title: worm\n" }));
    const { code, report } = await cli("check", "--content", folder);
    expect(code).toBe(0);
    expect(report).toMatch(/baits\/worm\.yml {2}warning {2}the file is not read: .*\[file-not-read\]\n/);
  });
});
