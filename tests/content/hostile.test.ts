import { describe, expect, it } from "vitest";
import { formatReport } from "../../src/checks/reporter.ts";
import { contentWith, edited, solveWith } from "../support/smallest-content.ts";

type Changes = Readonly<Record<string, string>>;

const lesson = (body: string): Changes => ({
  "lessons/first.md": `---\norder: 1\npart: Start\ntitle: First lesson\nsummary: A lesson for tests.\n---\n\n${body}\n`,
});
const repeated = (times: number, text: string) => text.repeat(times);
const words = (times: number) => repeated(times, "word ");

/** Errors said of the smallest content with these changes, the hints left out. */
async function told(changes: Changes): Promise<string[]> {
  const { value, messages } = await solveWith(changes);
  const errors = formatReport(messages)
    .split("\n")
    .filter((line) => line.includes("  error  "))
    .map((line) => line.trim().replace(/\s+/g, " "));
  expect(value === undefined).toBe(errors.length > 0);
  return errors;
}

describe("content beyond its limits is refused with its place", () => {
  const beyond: readonly (readonly [string, Changes, string])[] = [
    [
      "a paragraph of 10,000 words",
      lesson(words(10_000)),
      "8:1 error 50000 signs in a line; the most is 10000",
    ],
    [
      "a paragraph of 1,001 words",
      lesson(words(1001)),
      "8:1 error 1001 words in one paragraph, cell or value; the most is 1000",
    ],
    [
      "one word of 50,000 letters",
      lesson(repeated(50_000, "x")),
      "8:1 error 50000 signs in a line; the most is 10000",
    ],
    [
      "one word of 201 letters",
      lesson(repeated(201, "x")),
      "8:1 error 201 signs without a space; the most is 200",
    ],
    [
      "a thousand rows",
      lesson(`| a | b |\n|---|---|\n${repeated(1000, "| x | y |\n")}`),
      "8:1 error 1001 rows in a table; the most is 200",
    ],
    [
      "forty columns",
      lesson(`|${repeated(40, " a |")}\n|${repeated(40, "---|")}`),
      "8:1 error 40 columns in a table; the most is 12",
    ],
    [
      "two tables of more cells than one may have",
      lesson(
        repeated(
          2,
          `|${repeated(11, " a |")}\n|${repeated(11, "---|")}\n${repeated(149, `|${repeated(11, " x |")}\n`)}\n`,
        ),
      ),
      "229:1 error 2401 cells in the tables of one text; the most is 2400",
    ],
    [
      "more pictures than a text may have",
      lesson(repeated(51, "::scene{scene=swim}\n\n")),
      "108:1 error 51 drawings and pictures in one text; the most is 50",
    ],
    [
      "1,000 depths of a rig",
      edited("rigs/plain.md", "[1 m, 1.5 m]", `[${Array(1000).fill("1 m").join(", ")}]`),
      '11:9 error "depths" has 1000 entries; the most is 20',
    ],
    [
      "a tub of 41 sizes",
      edited(
        "tubs/box.yaml",
        "sizes:\n",
        `sizes:\n${repeated(36, "  - { size: BB, metal: tin, count: 1 }\n")}`,
      ),
      '4:3 error "sizes" has 41 entries; the most is 40',
    ],
    [
      "300 levels of lists",
      lesson(Array.from({ length: 300 }, (_, at) => `${repeated(at, "  ")}- x`).join("\n")),
      "49:1 error 82 columns before the first sign of a line; the most is 80",
    ],
    [
      "20 levels of lists",
      lesson(Array.from({ length: 20 }, (_, at) => `${repeated(at, "  ")}- x`).join("\n")),
      "15:1 error 17 levels within each other; the most is 16",
    ],
    [
      "a thousand quotes in quotes",
      lesson(`${repeated(1000, ">")} x`),
      "8:1 error 1000 marks of quotes and lists at the start of a line; the most is 10",
    ],
    [
      "3,000 lists in a line",
      lesson(`${repeated(3000, "- ")}x`),
      "8:1 error 3000 marks of quotes and lists at the start of a line; the most is 10",
    ],
    [
      "unpaired marks without end",
      lesson(repeated(3000, "*a_")),
      "8:1 error 6000 marks such as * and [ between two empty lines; the most is 1000",
    ],
    [
      "brackets without end",
      lesson(repeated(5000, "[")),
      "8:1 error 5000 marks such as * and [ between two empty lines; the most is 1000",
    ],
    [
      "10,000 paragraphs",
      lesson(repeated(10_000, "x\n\n")),
      "2006:1 error 1001 parts between empty lines; the most is 1000",
    ],
    [
      "a file of a megabyte",
      lesson(repeated(10_000, `${words(20)}\n`)),
      "error 1010080 bytes in the file; the most is 200000",
    ],
    [
      "a value of 1,001 words",
      edited("rigs/plain.md", "Plain rig", words(1001)),
      "2:8 error 1001 words in one paragraph, cell or value; the most is 1000",
    ],
    [
      "a title of 101 signs",
      edited("floats/waggler.yaml", "Test waggler", `${"A title ".repeat(12)}abcde`),
      "1:8 error 101 signs in a title; the most is 100",
    ],
    [
      "lists in lists of YAML",
      { "baits/other.yaml": `title: ${repeated(50, "[")}${repeated(50, "]")}` },
      "1:1 error 50 brackets within each other; the most is 20",
    ],
    [
      "20,000 keys",
      { "baits/other.yaml": Array.from({ length: 20_000 }, (_, at) => `k${at}: v`).join("\n") },
      "4001:1 error 8002 keys and entries in the file; the most is 8000",
    ],
    [
      "an alias within what it stands for",
      { "baits/other.yaml": "title: &a [*a]" },
      "1:11 error 17 levels within each other; the most is 16",
    ],
    [
      "an address of 3,000 signs",
      edited("guide.yaml", "title:", `site-address: https://example.org/${repeated(3000, "a")}\ntitle:`),
      "1:15 error 3020 signs without a space; the most is 200",
    ],
  ];

  it.each(beyond)("%s", async (_, changes, said) => {
    const [first, ...others] = await told(changes);
    expect(first).toContain(said);
    expect(others).toEqual([]);
  });

  it("aliases of aliases of aliases", async () => {
    const lists = ["b", "c", "d", "e", "f", "g"].map((name, at, all) => {
      const before = at === 0 ? "a" : all[at - 1];
      return `${name}: &${name} [${Array(9).fill(`*${before}`).join(", ")}]`;
    });
    const bomb = `a: &a [x, x, x, x, x, x, x, x, x]\n${lists.join("\n")}`;
    expect(await told({ "baits/other.yaml": bomb })).toEqual([expect.stringContaining("[yaml-syntax]")]);
  });

  it("but what stays within them is read", async () => {
    expect(await told(lesson(words(999)))).toEqual([]);
    expect(await told(lesson(repeated(200, "x")))).toEqual([]);
    expect(await told(lesson(`${repeated(8, ">")} x`))).toEqual([]);
    expect(await told(lesson("* * * * * * * * * * * * *"))).toEqual([]);
  });
});

describe("a sign that the fonts lack is an error where it stands", () => {
  it.each([
    [
      "a picture sign",
      "Fish \u{1f41f} here",
      '8:6 error the fonts of the guide have no sign for "\u{1f41f}" (U+1F41F) [no-sign]',
    ],
    [
      "a word joiner",
      "a\u2060b",
      '8:2 error the fonts of the guide have no sign for "\\u{2060}" (U+2060) [no-sign]',
    ],
    [
      "Arabic letters",
      "so \u0645\u0631",
      '8:4 error the fonts of the guide have no sign for "\u0645" (U+0645), nor for "\u0631" [no-sign]',
    ],
    [
      "a direction mark",
      "a\u202eb",
      '8:2 error the fonts of the guide have no sign for "\\u{202E}" (U+202E) [no-sign]',
    ],
    [
      "a sign by its number",
      "x &#x1F41F; y",
      '8:1 error the fonts of the guide have no sign for "\u{1f41f}" (U+1F41F) [no-sign]',
    ],
    [
      "a sign on a later line",
      "one\ntwo \u{1f41f}",
      '9:5 error the fonts of the guide have no sign for "\u{1f41f}" (U+1F41F) [no-sign]',
    ],
    ["code", "`\u4e2d`", '8:2 error the fonts of the guide have no sign for "\u4e2d" (U+4E2D) [no-sign]'],
  ])("%s", async (_, body, said) => {
    expect(await told(lesson(body))).toEqual([said]);
  });

  it("in a value too, escaped or not", async () => {
    expect(await told(edited("rigs/plain.md", "Plain rig", "Plain \u{1f41f}"))).toEqual([
      '2:14 error the fonts of the guide have no sign for "\u{1f41f}" (U+1F41F) [no-sign]',
    ]);
    expect(await told(edited("rigs/plain.md", "Plain rig", '"Plain \\u2060"'))).toEqual([
      '2:8 error the fonts of the guide have no sign for "\\u{2060}" (U+2060) [no-sign]',
    ]);
  });

  it("but letters in two parts, no-break spaces and hyphens are set", async () => {
    expect(
      await told(lesson("u\u0308ber 10\u00a0cm pre\u00adfix non\u2011break, \u0416, \u03a9, \u2153")),
    ).toEqual([]);
  });
});

describe("what content asks for that cannot be", () => {
  it.each([
    [
      "no rigs side by side",
      '::pattern-chart{rigs="," depth="1 m"}',
      '"rigs": name at least one [not-valid]',
    ],
    ["no floats side by side", '::float-chart{floats=","}', '"floats": name at least one [not-valid]'],
    [
      "too many floats",
      `::float-chart{floats="${repeated(13, "waggler ")}"}`,
      '"floats" is 13 long, which is more than 12 [out-of-range]',
    ],
    [
      "a depth below nothing",
      '::groundbait-fall{paces="0.1 m/s" depths="-1 m"}',
      '"depths" is -1 m, which is not above nothing [out-of-range]',
    ],
    [
      "no pace",
      '::groundbait-fall{paces="0 m/s" depths="1 m"}',
      '"paces" is 0 m/s, which is not above nothing [out-of-range]',
    ],
    [
      "water without end",
      `::groundbait-fall{paces="0.1 m/s" depths="${repeated(30, "9")} m"}`,
      `"${repeated(30, "9")} m" is a length beyond all measure [quantity]`,
    ],
  ])("%s is an error at its place", async (_, body, said) => {
    expect(await told(lesson(body))).toEqual([`8:1 error ${said}`]);
  });

  it.each([
    ["a question", "https://example.org/?x=1"],
    ["somebody's name", "https://somebody@example.org/"],
    ["more than 200 signs", `https://example.org/${repeated(60, "a ").replaceAll(" ", "/bb")}`],
  ])("an address of the site with %s is an error", async (_, address) => {
    expect(await told(edited("guide.yaml", "title:", `site-address: ${address}\ntitle:`))).toHaveLength(1);
  });

  it("a number of YAML that has no end is told in words", async () => {
    expect(await told(edited("guide.yaml", "edition: 2026-11-20", "edition: .inf"))).toEqual([
      '13:10 error "edition" should be a day, such as 2026-11-20, but is no number that has an end [wrong-type]',
    ]);
    const { messages } = await solveWith(edited("baits/grub.yaml", "basis:", "hooks: .inf\nbasis:"));
    expect(formatReport(messages)).toContain("4:8");
    expect(formatReport(messages)).not.toContain("Infinity");
  });

  it("a word of the glossary without a letter, or two for one anchor, is an error", async () => {
    const glossary = (...terms: string[]) => ({
      "glossary.yaml": terms.map((term) => `- { term: "${term}", meaning: Said. }\n`).join(""),
    });
    expect(await told(glossary(""))).toEqual(['1:11 error "term": nothing can be read in it [not-valid]']);
    expect(await told(glossary("!?"))).toEqual(['1:11 error "term": has no letter and no digit [not-valid]']);
    expect(await told(glossary("Tip", "tip!"))).toEqual([
      '2:3 error "tip!" stands here twice [duplicate-name]',
    ]);
  });

  it("news of a page that is not there is an error", async () => {
    const news = (page: string) => ({
      "changes.yaml": `- { date: 2026-01-01, title: New, summary: New., page: "${page}" }\n`,
    });
    expect(await told(news("lessons/first.html"))).toEqual([]);
    expect(await told(news("//example.html"))).toEqual([
      "1:56 error nothing is at //example.html [bad-link]",
    ]);
  });

  it.each(["No 10 (dust", "*", "(a+)+$", "[", "\\\\"])(
    "a size of shot called %s is no pattern to search by",
    async (name) => {
      const called = (path: string) => ({ [path]: contentWith()[path]!.replaceAll("BB", `"${name}"`) });
      const changes = {
        ...called("shot/plain.yaml"),
        ...called("tubs/box.yaml"),
        ...edited("floats/waggler.yaml", "4 BB", "8 No 4"),
        ...lesson(`It has 1 ${repeated(40, "a")}! and 2 No 4.`),
      };
      expect(await told(changes)).toEqual([]);
    },
  );

  it("tags and keys of YAML that mean something to a program mean nothing here", async () => {
    const bait = contentWith()["baits/grub.yaml"]!;
    expect(await told({ "baits/other.yaml": `${bait}__proto__: { fall: 1 m/s }\n` })).toEqual([
      expect.stringContaining('5:1 error unknown key "__proto__"'),
    ]);
    expect(await told({ "baits/other.yaml": `${bait}constructor: x\n` })).toEqual([
      expect.stringContaining('5:1 error unknown key "constructor"'),
    ]);
    expect(await told({ "baits/other.yaml": bait.replace("title: grub", "title: !!binary grub") })).toEqual([
      expect.stringContaining("[yaml-syntax]"),
    ]);
  });
});
