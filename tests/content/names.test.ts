import { describe, expect, it } from "vitest";
import { formatReport } from "../../src/checks/reporter.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

const rig = contentWith()["rigs/plain.md"]!;
const lesson = contentWith()["lessons/first.md"]!.replace(/^order: \d+/m, "order: 2");
const float = contentWith()["floats/waggler.yaml"]!;
const page = "---\ntitle: A page\nsummary: A page for tests.\n---\n\nWords.\n";

/** What is said of the smallest content with one file more. */
function told(path: string, text: string): string[] {
  const { value, messages } = readLibrary(sourcesOf(contentWith({ [path]: text })));
  expect(value === undefined).toBe(messages.length > 0);
  return formatReport(messages)
    .split("\n")
    .filter((line) => line.includes("  error  "))
    .map((line) => line.trim().replace(/\s+/g, " "));
}

describe("the name of a file of the content", () => {
  it.each(["second", "zwei-und-3", "Über_das_Wasser", "2", "x".repeat(60)])("may be %s", (name) => {
    expect(told(`lessons/${name}.md`, lesson)).toEqual([]);
  });

  it("is the same whether its letters are composed or not", () => {
    const { value } = readLibrary(sourcesOf(contentWith({ "lessons/u\u0308ber.md": lesson })));
    expect(value!.lessons.map(({ id }) => id)).toContain("\u00fcber");
  });

  it.each([
    ["two words", "a space (U+0020)"],
    ["a#b", '"#" (U+0023)'],
    ["a?b", '"?" (U+003F)'],
    ["a%b", '"%" (U+0025)'],
    ["a\\b", '"\\" (U+005C)'],
    ["a:b", '":" (U+003A)'],
    ["a..b", '"." (U+002E)'],
    ["..", '"." (U+002E)'],
    [".hidden", '"." (U+002E)'],
    ["a\nb", "U+000A"],
    ["a\u0007b", "U+0007"],
    ["a\u202eb", "U+202E"],
    ["a\u200db", "U+200D"],
    ["a\u00a0b", "U+00A0"],
    ["a\u{1f41f}b", '"\u{1f41f}" (U+1F41F)'],
    ['"><img src=x>', '""" (U+0022)'],
    ["a\ud800b", "U+D800"],
  ])("may not be %j", (name, sign) => {
    expect(told(`lessons/${name}.md`, lesson)).toEqual([
      `1:1 error the file's name has ${sign} in it [file-name]`,
    ]);
    expect(told(`floats/${name}.yaml`, float)).toHaveLength(1);
  });

  it.each(["con", "CON", "aux", "nul", "com1", "LPT9", "com\u00b9"])(
    "may not be that of the device %s",
    (name) => {
      expect(told(`rigs/${name}.md`, rig)).toEqual([
        "1:1 error some systems keep this name for a device [file-name]",
      ]);
    },
  );

  it("may not start with a sign of options or be too long for a path", () => {
    expect(told("rigs/-x.md", rig)).toEqual([
      "1:1 error the file's name does not start with a letter or digit [file-name]",
    ]);
    expect(told(`rigs/${"x".repeat(61)}.md`, rig)).toEqual([
      "1:1 error 61 signs in the file's name; the most is 60 [too-much]",
    ]);
  });

  it("may not stand in a folder of its own, where a copy could change the sums", () => {
    expect(told("floats/backup/waggler.yaml", float)).toEqual([
      "1:1 error the file stands in a folder below floats/ [file-too-deep]",
    ]);
  });
});

describe("two files for one address are an error at the second", () => {
  it.each([
    ["floats/Waggler.yaml", float, "site/floats.html#waggler", "content/floats/Waggler.yaml"],
    ["lessons/FIRST.md", lesson, "site/lessons/first.html", "content/lessons/FIRST.md"],
    ["lessons/\uff46irst.md", lesson, "site/lessons/\uff46irst.html", "content/lessons/first.md"],
    ["rigs/sheet.md", rig, "cards/sheet.pdf", "the guide itself"],
    ["rigs/sheet-a7-fold.md", rig, "cards/sheet-a7-fold.pdf", "the guide itself"],
    ["rigs/plain-a6.md", rig, "cards/plain-a6.pdf", "content/rigs/plain-a6.md"],
    ["rigs/index.md", rig, "site/rigs/index.html", "the guide itself"],
    ["lessons/index.md", lesson, "site/lessons/index.html", "the guide itself"],
    ["pages/index.md", page, "site/index.html", "the guide itself"],
    ["pages/search.md", page, "site/search.html", "the guide itself"],
    ["pages/What-The-Float-Says.md", page, "site/What-The-Float-Says.html", "the guide itself"],
    ["floats/main.yaml", float, "site/floats.html#main", "the guide itself"],
    ["tubs/Box.yaml", contentWith()["tubs/box.yaml"]!, "site/shot.html#tub-box", "content/tubs/Box.yaml"],
  ])("%s", (path, text, address, by) => {
    expect(told(path, text)).toEqual([
      `1:1 error what is made of this file comes out at ${address}, which is taken by ${by} [address-taken]`,
    ]);
  });

  it("but the page on safety is the content's own", () => {
    expect(told("pages/safety.md", page)).toEqual([]);
  });
});

it("a report quotes no sign that a terminal would obey", () => {
  const { messages } = readLibrary(sourcesOf(contentWith({ "lessons/\u001b[2Ja\u202e.md": lesson })));
  const report = formatReport(messages);
  expect(report).toContain("content/lessons/\\u{1B}[2Ja\\u{202E}.md");
  expect(report.replaceAll("\n", "")).not.toMatch(/\p{C}/u);
});
