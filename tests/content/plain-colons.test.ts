import { toString as textOf } from "mdast-util-to-string";
import { describe, expect, it } from "vitest";
import { formatReport } from "../../src/checks/reporter.ts";
import { parseNotes, readMarkdown } from "../../src/content/markdown-source.ts";
import { solveWith } from "../support/smallest-content.ts";

const typed = "Best at 9:30 with a 1:4 mix, and note:this. See [10:15](first.md), *20:00*.";
const shown = "Best at 9:30 with a 1:4 mix, and note:this. See 10:15, 20:00.";

const front =
  "---\norder: 1\npart: Start\ntitle: First lesson\nsummary: A lesson for tests.\n---\n\n## Words\n\n";

describe("a colon in a text", () => {
  it("stays as it was typed, in lessons and in notes of YAML files alike", () => {
    expect(textOf(readMarkdown(`---\ntitle: x\n---\n\n${typed}\n`, "x.md").body)).toBe(shown);
    expect(textOf(parseNotes(typed, { file: "x.yaml", line: 4, column: 8 }))).toBe(shown);
  });

  it("leaves one piece of text, with the place of its start", () => {
    const [paragraph] = parseNotes("At 9:30 and 10:15.", { file: "x.yaml", line: 4, column: 8 }).children;
    expect(paragraph).toMatchObject({
      children: [{ type: "text", value: "At 9:30 and 10:15.", position: { start: { line: 4, column: 8 } } }],
    });
  });

  it("reaches the guide: nothing of a lesson, a bait's or a fish's notes is lost", async () => {
    const { value, messages } = await solveWith({
      "lessons/first.md": `${front}${typed} See the [rig](../rigs/plain.md).\n`,
      "species/roach.yaml": `title: Roach\nasks: A bait.\nnotes: "${typed.replace("first.md", "../lessons/first.md")} It weighs :weight[]{load='2 BB'}."\n`,
      "baits/grub.yaml": `title: grub\nmass: 0.05 g\ndensity: 1.02 g/cm3\nbasis: from memory\nnotes: "At 9:30."\n`,
    });
    expect(messages.filter(({ severity }) => severity === "error")).toEqual([]);
    const texts = [...value!.live.values()].map((body) => textOf(body));
    expect(texts).toContain(`Words${shown} See the rig.`);
    expect(texts).toContain(`${shown} It weighs 0.8 g.`);
    expect(texts).toContain("At 9:30.");
  });

  it.each([
    [":weigth[]{load='2 BB'}", 'no figure directive "weigth"'],
    [":figure", '":figure" does not say its "of"'],
    ["::unicorn{rig=plain}", 'no block directive "unicorn"'],
  ])("is an error in %s, which was meant to be live", async (text, said) => {
    const { messages } = await solveWith({ "lessons/first.md": `${front}${text}\n` });
    expect(formatReport(messages)).toContain(said);
  });
});
