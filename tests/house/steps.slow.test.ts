import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, describe, expect, it } from "vitest";

const root = join(import.meta.dirname, "../..");
const copy = mkdtempSync(join(tmpdir(), "steps-"));

for (const name of ["src", "templates", "tools", "content/words", "package.json"]) {
  cpSync(join(root, name), join(copy, name), { recursive: true });
}
symlinkSync(join(root, "node_modules"), join(copy, "node_modules"));
const config = JSON.parse(readFileSync(join(root, "tsconfig.json"), "utf8"));
writeFileSync(join(copy, "tsconfig.json"), JSON.stringify({ ...config, include: ["src", "templates"] }));

/** Files as they were before a step. */
const untouched = new Map<string, string>();

afterEach(() => {
  for (const [path, text] of untouched) writeFileSync(join(copy, path), text);
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

/** Paths that a step of DEVELOPERS.md names. */
function told(step: string): string[] {
  const text = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
  const item = text.split(/^- /m).find((one) => one.startsWith(`**${step}:**`))!;
  return [...item.matchAll(/`((?:src|templates|content)\/[\w./-]+)`/g)].map(([, path]) => path!);
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
      "src/core/patterns/table.ts",
      "src/solve/same-shot.ts",
    ]);
  });

  it("a scene: with its name the compiler asks for its line, and nothing else", () => {
    edit("src/model/pictures.ts", "export const scenes = [", 'export const scenes = [\n  "seat-box",');
    expectAsked("A scene of tackle and bank", ["src/drawing/scenes/draw-scene.ts"]);
  });

  it("a card format: with its name the compiler asks for its entry, and nothing else", () => {
    const names = "export const cardSuffixes = {";
    edit("src/model/addresses.ts", names, `${names} A8: "-a8",`);
    expectAsked("A card format", ["src/print/cards/card-formats.ts"]);
  });

  it("a message: with its values the compiler asks for its words, and nothing else of the sources", () => {
    const values = "export interface MessageValues {";
    edit("src/model/message-table.ts", values, `${values}\n  readonly "hook-in-hat": None;`);
    expectAsked("A message about content", ["src/checks/messages.ts", "src/model/message-table.ts"]);
  });
});
