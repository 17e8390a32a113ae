import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, describe, expect, it } from "vitest";
import { readContent } from "../../src/build/build.ts";
import { disk } from "../../src/cli/disk.ts";

const root = join(import.meta.dirname, "../..");
const copy = mkdtempSync(join(tmpdir(), "steps-"));

for (const name of ["src", "templates", "tools", "content", "package.json", "README.md"]) {
  cpSync(join(root, name), join(copy, name), { recursive: true });
}
symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
const config = JSON.parse(readFileSync(join(root, "tsconfig.json"), "utf8"));
writeFileSync(join(copy, "tsconfig.json"), JSON.stringify({ ...config, include: ["src", "templates"] }));

/** Files as they were before a step; nothing for those that it made. */
const untouched = new Map<string, string | undefined>();

afterEach(() => {
  for (const [path, text] of untouched) {
    if (text === undefined) rmSync(join(copy, path));
    else writeFileSync(join(copy, path), text);
  }
  untouched.clear();
});
afterAll(() => rmSync(copy, { recursive: true }));

/** Files that the compiler finds fault with. */
function faulty(): string[] {
  execFileSync("node", ["tools/word-keys.mjs"], { cwd: copy });
  try {
    execFileSync("node", ["node_modules/typescript/bin/tsc"], { cwd: copy, encoding: "utf8" });
    return [];
  } catch (error) {
    const { stdout } = error as { stdout: string };
    return [
      ...new Set([...stdout.matchAll(/^([\w./-]+)\(\d+,\d+\): error/gm)].map(([, path]) => path!)),
    ].sort();
  }
}

/** Paths of the sources, the content and the README that a step of DEVELOPERS.md names; a folder ends in `/`. */
function told(step: string): string[] {
  const text = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
  const item = text.split(/^- /m).find((one) => one.startsWith(`**${step}:**`))!;
  return [...item.matchAll(/`((?:src|templates|content)\/[\w./-]+|README\.md)`/g)].map(([, path]) => path!);
}

/** The compiler asks for just these files, and the step names each. */
function expectAsked(step: string, files: readonly string[]): void {
  expect(faulty()).toEqual(files);
  expect(files.filter((path) => !told(step).includes(path))).toEqual([]);
}

function edit(path: string, from: string, to: string): void {
  const text = readFileSync(join(copy, path), "utf8");
  expect(text, path).toContain(from);
  if (!untouched.has(path)) untouched.set(path, text);
  writeFileSync(join(copy, path), text.replace(from, to));
}

/** A new file, a part of it taken from one that there is. */
function make(path: string, text: string): void {
  untouched.set(path, undefined);
  writeFileSync(join(copy, path), text);
}

/** What was touched on the way is what the step names: each file, or a new one in the folder. */
function expectTold(step: string, besides: readonly string[] = []): void {
  const paths = told(step).filter((path) => !besides.includes(path));
  const names = (path: string) => (one: string) =>
    one === path || (one.endsWith("/") && untouched.get(path) === undefined && path.startsWith(one));
  const touched = [...untouched.keys()];
  expect(touched.filter((path) => !paths.some(names(path)))).toEqual([]);
  expect(paths.filter((one) => !touched.some((path) => names(path)(one)))).toEqual([]);
}

/** The content of the copy, as the tool reads it. */
const readCopy = () => readContent(disk, [join(copy, "content")]);

const readmeRow = "| `::kit{kit=…}` |";

describe("the steps of DEVELOPERS.md in a copy", () => {
  it("compiles as it is", () => {
    expect(faulty()).toEqual([]);
  });

  it("a shotting pattern: whatever its spec makes the compiler ask for is told", () => {
    edit(
      "src/core/patterns/pattern.ts",
      "  | AllAtFloatSpec;",
      '  | AllAtFloatSpec\n  | { readonly kind: "zig zag" };',
    );
    const asked = faulty();
    const steps = told("A shotting pattern");
    // Pages that name a pattern want its name among the words; with it they are content.
    edit("content/words/en.yaml", "    all-at-the-float: ", "    zig-zag: Zig-zag\n    all-at-the-float: ");
    const withName = faulty();
    expect(
      asked.filter((path) => !withName.includes(path)).every((path) => path.startsWith("templates/")),
    ).toBe(true);
    expect(withName.filter((path) => !steps.includes(path))).toEqual([]);
    expect(withName).toEqual([
      "src/content/link/rig-link.ts",
      "src/core/feed/feed.ts",
      "src/core/patterns/sizes.ts",
      "src/core/patterns/table.ts",
      "src/solve/same-shot.ts",
    ]);
  });

  it("a scene: with its name the compiler asks for its line, and nothing else", () => {
    edit("src/model/pictures.ts", "export const scenes = [", 'export const scenes = [\n  "seat-box",');
    expectAsked("A scene of tackle and bank", ["src/drawing/scenes/draw-scene.ts"]);
  });

  it("a film: with its name the compiler asks which rigs have it and for its line, and nothing else", () => {
    edit("src/model/films.ts", "const filmNames = [", 'const filmNames = [\n  "sunset",');
    expectAsked("A film", ["src/drawing/film/films.ts", "src/model/films.ts"]);
  });

  it("a card format: with its name the compiler asks for its entry, and nothing else", () => {
    const names = "export const cardSuffixes = {";
    edit("src/model/addresses.ts", names, `${names} A8: "-a8",`);
    expectAsked("A card format", ["src/print/cards/card-formats.ts"]);
  });

  it("a kind of content file: with its field the compiler asks where it is read, and nothing else", () => {
    const library = "export interface Library {";
    edit("src/model/library.ts", library, `${library}\n  readonly boats: readonly string[];`);
    expectAsked("A kind of content file", ["src/content/read-library.ts"]);
  });

  it("a message: with its row the compiler asks for its words, and nothing else of the sources", () => {
    const rows = "export const messageTable = {";
    edit("src/model/message-table.ts", rows, `${rows}\n  "hook-in-hat": error(),`);
    expectAsked("A message about content", ["src/checks/messages.ts"]);
  });

  it("a knot: its file is all", async () => {
    make("content/knots/tried.yaml", readFileSync(join(root, "content/knots/overhand-loop.yaml"), "utf8"));
    const { value, messages } = await readCopy();
    expect(messages).toEqual([]);
    expect(value?.library.knots.map(({ id }) => id)).toContain("tried");
    // The types are only read.
    expectTold("A knot", ["src/model/knot-picture.ts"]);
  });

  it("a language: its words and the line in the guide are all, and the rest is English", async () => {
    make("content/words/fr.yaml", "state:\n  hangs: pend librement\n");
    edit("content/guide.yaml", "language: en", "language: fr");
    const { value, messages } = await readCopy();
    expect(messages.map(({ code }) => code)).toEqual(["words-in-english"]);
    expect(value?.kit.words("state.hangs")).toBe("pend librement");
    expect(value?.kit.words("state.drags-under")).toBe("dragged under");
    expect(value?.kit.figures.number(1.5, 1)).toBe("1,5");
    expectTold("A language");
  });

  it("a live figure and a table: a line each, and their rows in the README", () => {
    edit(
      "src/words/live/live-figures.ts",
      '"shot-count": (depth)',
      '"lock-count": ({ lockShot }) => String(lockShot.length),\n  "shot-count": (depth)',
    );
    edit(
      "src/words/live/live-tables.ts",
      '"hook-for-bait": (',
      '"no-rows": () => ({ head: [], rows: [] }),\n  "hook-for-bait": (',
    );
    edit("README.md", readmeRow, `| \`::no-rows{}\` | nothing |\n${readmeRow}`);
    expect(faulty()).toEqual([]);
    expectTold("A live figure or table for texts");
  });

  it("a picture: with its reference the compiler asks for the drawing and for its width on paper", () => {
    const reference = '| { readonly picture: "knot"; readonly knot: string }';
    edit("src/model/pictures.ts", reference, `${reference}\n  | { readonly picture: "blank" }`);
    edit(
      "src/words/live/live-figures.ts",
      "  knot: (at,",
      '  blank: () => ({ picture: "blank" }),\n  knot: (at,',
    );
    expect(faulty()).toEqual(["src/drawing/pictures.ts", "src/print/handout/text-handout.ts"]);
    edit(
      "src/drawing/pictures.ts",
      "  knot: ({ knot }",
      '  blank: () => ({ from: "", draw: () => [] }),\n  knot: ({ knot }',
    );
    edit("src/print/handout/text-handout.ts", "  knot: 0.48,", "  blank: 1,\n  knot: 0.48,");
    edit("README.md", readmeRow, `| \`::blank{}\` | nothing |\n${readmeRow}`);
    expect(faulty()).toEqual([]);
    expectTold("A picture for texts");
  });

  it("a check: its file, its line in the table, and its message", () => {
    make(
      "src/checks/wet-hats.ts",
      `import { message } from "../model/message.ts";
import type { ContentCheck } from "./check.ts";

export const wetHats: ContentCheck = ({ library }) =>
  library.rigs.map(({ placeOf }) => message("wet-hat", placeOf([]), {}));
`,
    );
    edit(
      "src/checks/table.ts",
      "export const contentChecks = {",
      'export const contentChecks = {\n  "wet hats": wetHats,',
    );
    edit(
      "src/checks/table.ts",
      "import type { Message",
      'import { wetHats } from "./wet-hats.ts";\nimport type { Message',
    );
    expect(faulty()).toEqual(["src/checks/wet-hats.ts"]);
    edit(
      "src/model/message-table.ts",
      "export const messageTable = {",
      'export const messageTable = {\n  "wet-hat": warning(),',
    );
    expect(faulty()).toEqual(["src/checks/messages.ts"]);
    edit(
      "src/checks/messages.ts",
      '  "duplicate-name": ',
      '  "wet-hat": () => ({ reason: "the hat is wet" }),\n  "duplicate-name": ',
    );
    expect(faulty()).toEqual([]);
    expectTold("A check of content");
  });

  it("a command: its file, its line in the table, and a word about it in the README", () => {
    make(
      "src/cli/weigh-command.ts",
      `import { type CliCommand, exitCodes } from "./command.ts";

export const weighCommand: CliCommand = {
  name: "weigh",
  describe: (command) => command.summary("weigh nothing"),
  run: async () => exitCodes.fine,
};
`,
    );
    edit(
      "src/cli/run.ts",
      "  build: async",
      '  weigh: async () => (await import("./weigh-command.ts")).weighCommand,\n  build: async',
    );
    edit("README.md", readmeRow, `| \`npx dotdown weigh\` | nothing |\n${readmeRow}`);
    expect(faulty()).toEqual([]);
    expectTold("A command");
  });
});
