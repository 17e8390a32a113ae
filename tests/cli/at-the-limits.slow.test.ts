import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { limits } from "../../src/model/limits.ts";
import { writeContent } from "../support/cli.ts";
import { compiledTool } from "../support/compiled-tool.ts";
import { run } from "../support/run-process.ts";
import { contentWith, edited } from "../support/smallest-content.ts";

const times = (count: number, text: (at: number) => string, between: string) =>
  Array.from({ length: count }, (_, at) => text(at)).join(between);
const words = (count: number) => times(count, (at) => `word${at % 10}`, " ");
const row = (columns: number, cell: string) => `|${` ${cell} |`.repeat(columns)}`;
const { tableRows, tableColumns, blocks, blockWords, wordSigns, marksAbreast, fileBytes } = limits;
const { pictures, brackets, lineSigns } = limits;

const table = [
  row(tableColumns.most, "a"),
  row(tableColumns.most, "-"),
  ...Array.from({ length: tableRows.most - 1 }, () => row(tableColumns.most, "ab")),
].join("\n");

const lesson = (text: string) => ({
  "lessons/first.md": `---\norder: 1\npart: Start\ntitle: First\nsummary: A lesson.\n---\n\n${text}\n`,
});

/** Lists, a table, paragraphs and pictures, each with its share of the blocks, to the most bytes of a file. */
const together = [
  table,
  times(blocks.most / 5, (at) => `- entry ${at} ${words(5)}`, "\n"),
  times(pictures.most, () => '::rig-drawing{rig=plain depth="1 m"}', "\n\n"),
  times(blocks.most / 3, () => words(Math.floor(fileBytes.most / blocks.most / 3)), "\n\n"),
].join("\n\n");

const withSizes = (path: string, line: (name: string, at: number) => string) => {
  const own = contentWith()[path]!;
  const more = times(limits.shotSizes.most - 5, (at) => line(`X${at}X`, at), "\n");
  return { [path]: `${own}${more}\n` };
};

/** Files, each at the most that is allowed of something. */
const cases: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "a table": lesson(table),
  "a list": lesson(times(blocks.most / 2 - 1, (at) => `- entry ${at}`, "\n")),
  "paragraphs, to the most bytes of a file": lesson(
    times(blocks.most - 10, () => words(Math.floor(fileBytes.most / blocks.most / 7)), "\n\n"),
  ),
  "the words of a paragraph": lesson(times(5, () => words(blockWords.most - 1), "\n\n")),
  "signs of a word": lesson(`${"x".repeat(wordSigns.most)} and on`),
  "quotes within quotes": lesson(times(90, (at) => `${"> ".repeat(marksAbreast.most)}deep ${at}`, "\n\n")),
  "table, list, pictures and paragraphs together": lesson(together),
  "depths of a rig": edited(
    "rigs/plain.md",
    "depths: [1 m, 1.5 m]",
    `depths: [${times(limits.depths.most, (at) => `${100 + at} cm`, ", ")}]`,
  ),
  "paces of a rig": edited(
    "rigs/plain.md",
    "water: still",
    `water: flowing\npaces: [${times(limits.depths.most, (at) => `0.${10 + at} m/s`, ", ")}]`,
  ),
  "sizes of a scale and a tub": {
    ...withSizes("shot/plain.yaml", (name, at) => `  - { name: ${name}, mass: ${(41 + at) / 100} g }`),
    ...withSizes("tubs/box.yaml", (name) => `  - { size: ${name}, metal: tin, count: plenty }`),
  },
  "points of a profile": edited(
    "floats/waggler.yaml",
    "  - { at: 200 mm, diameter: 4.5 mm }\n",
    `${times(limits.profilePoints.most - 1, (at) => `  - { at: ${at + 1} mm, diameter: 4.5 mm }`, "\n")}\n`,
  ),
  "a glossary, to the most bytes of a file": {
    "glossary.yaml": times(1500, (at) => `- { term: word${at}, meaning: ${words(15)} }`, "\n"),
  },
  "whom to ring": {
    ...edited(
      "guide.yaml",
      "edition:",
      `contacts:\n${times(limits.tableRows.most, (at) => `  - { when: Hook ${at} in skin, who: A nurse }`, "\n")}\nedition:`,
    ),
    ...lesson("::contacts{}"),
  },
  "one anchor as often as it may be repeated": {
    "species/roach.yaml": `title: Roach\nasks: &a ${words(blockWords.most - 1)}\nalso: [${times(limits.aliases.most, () => "*a", ", ")}]\n`,
  },
  "flow maps within each other": {
    "glossary.yaml": times(
      400,
      () => `- ${"{ a: ".repeat(brackets.most)}1${" }".repeat(brackets.most)}`,
      "\n",
    ),
  },
  "keys as long as a line": {
    "hooks.yaml": times(190, (at) => `- { ${`k${at}`.repeat(200)}: 1, size: 16 }`, "\n"),
  },
  "keys that there are not, to the most entries": {
    "baits/grub.yaml": times(limits.entries.most / 2 - 1, (at) => `key${at}: 1`, "\n"),
  },
  "numbers as long as a line": {
    "hooks.yaml": times(19, () => `- { size: ${"9".repeat(lineSigns.most - 40)}, mass: 1 g }`, "\n"),
  },
};

let command: string;
let folder: string;
/** What the guide takes without the text. */
let rest: Use;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "dotdown-"));
  command = await compiledTool(join(folder, "tool"));
  rest = await use({});
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Use {
  readonly code: number | null;
  readonly megabytes: number;
  readonly seconds: number;
}

/** What a check of the content takes, which lays out all its pages and papers. */
async function use(files: Readonly<Record<string, string>>): Promise<Use> {
  const content = writeContent(mkdtempSync(join(folder, "content-")), contentWith(files));
  const meter = join(import.meta.dirname, "../support/say-use.mjs");
  const args = ["--max-old-space-size=1024", "--import", meter, command, "check", "--content", content];
  const used = `${content}.json`;
  const { code } = await run(process.execPath, args, folder, { env: { ...process.env, SAY_USE: used } });
  return { code, ...JSON.parse(readFileSync(used, "utf8")) };
}

it.each(Object.entries(cases))(
  "%s at the limit takes less than 1 GB, and 20 s more than the rest",
  async (name, files) => {
    const { code, megabytes, seconds } = await use(files);
    process.stderr.write(
      `${name}: ${megabytes.toFixed()} MB, ${(seconds - rest.seconds).toFixed(1)} s more\n`,
    );
    // Either it is right, or it is refused with its place, where a word does not fit the paper.
    expect([0, 1]).toContain(code);
    expect(megabytes).toBeLessThan(1024);
    expect(seconds - rest.seconds).toBeLessThan(20);
  },
);
