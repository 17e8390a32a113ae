import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { limits } from "../../src/model/limits.ts";
import { writeContent } from "../support/cli.ts";
import { compiledTool } from "../support/compiled-tool.ts";
import { run } from "../support/run-process.ts";
import { contentWith } from "../support/smallest-content.ts";

const times = (count: number, text: (at: number) => string, between: string) =>
  Array.from({ length: count }, (_, at) => text(at)).join(between);
const words = (count: number) => times(count, (at) => `word${at % 10}`, " ");
const row = (columns: number, cell: string) => `|${` ${cell} |`.repeat(columns)}`;
const { tableRows, tableColumns, blocks, blockWords, wordSigns, marksAbreast, fileBytes } = limits;

const table = [
  row(tableColumns.most, "a"),
  row(tableColumns.most, "-"),
  ...Array.from({ length: tableRows.most - 1 }, () => row(tableColumns.most, "ab")),
].join("\n");

/** Texts of a lesson, each at the most that is allowed of something. */
const texts: Readonly<Record<string, string>> = {
  "a table": table,
  "a list": times(blocks.most / 2 - 1, (at) => `- entry ${at}`, "\n"),
  "paragraphs, to the most bytes of a file": times(
    blocks.most - 10,
    () => words(Math.floor(fileBytes.most / blocks.most / 7)),
    "\n\n",
  ),
  "the words of a paragraph": times(5, () => words(blockWords.most - 1), "\n\n"),
  "signs of a word": `${"x".repeat(wordSigns.most)} and on`,
  "quotes within quotes": times(90, (at) => `${"> ".repeat(marksAbreast.most)}deep ${at}`, "\n\n"),
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
  const { code, stderr } = await run(process.execPath, args, folder);
  const [, megabytes, seconds] = /^used (.*) MB, (.*) s$/m.exec(stderr)!;
  return { code, megabytes: Number(megabytes), seconds: Number(seconds) };
}

it.each(Object.entries(texts))(
  "%s at the limit takes less than 1 GB, and 20 s more than the rest",
  async (name, text) => {
    const lesson = `---\norder: 1\npart: Start\ntitle: First\nsummary: A lesson.\n---\n\n${text}\n`;
    const { code, megabytes, seconds } = await use({ "lessons/first.md": lesson });
    process.stderr.write(
      `${name}: ${megabytes.toFixed()} MB, ${(seconds - rest.seconds).toFixed(1)} s more\n`,
    );
    // Either it is right, or it is refused with its place, where a word does not fit the paper.
    expect([0, 1]).toContain(code);
    expect(megabytes).toBeLessThan(1024);
    expect(seconds - rest.seconds).toBeLessThan(20);
  },
);
