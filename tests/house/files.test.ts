import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const root = join(import.meta.dirname, "../..");

interface TextFile {
  readonly path: string;
  readonly text: string;
}

const below = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(root.length + 1)
        .replaceAll("\\", "/"),
    );

const isText = (path: string) => /\.(?:[cm]?[jt]sx?|css|md|ya?ml|json|svg|txt|csv)$/.test(path);

const files: readonly TextFile[] = [
  ...["src", "templates", "tools", "tests", "content", ".ci"].flatMap(below).filter(isText),
  ...readdirSync(root).filter((name) => isText(name) && name !== "package-lock.json"),
].map((path) => ({ path, text: readFileSync(join(root, path), "utf8") }));

/** Files that may be long, each with its reason. */
const mayBeLong: Readonly<Record<string, string>> = {
  "src/drawing/labels/font-widths.ts": "a table that tools/font-widths.mjs writes",
  "src/words/word-key.ts": "the type of the words' keys, which tools/word-keys.mjs writes",
  "src/words/word-gaps.ts": "the gaps of each sentence, which tools/word-keys.mjs writes",
};

const lengthLimit = 300;
const lines = (text: string) => text.split("\n").length - 1;

const matching = (pattern: RegExp) =>
  files.flatMap(({ path, text }) =>
    text.split("\n").flatMap((line, at) => (pattern.test(line) ? [`${path}:${at + 1}: ${line.trim()}`] : [])),
  );

describe("the files of the house", () => {
  test("are found", () => {
    expect(files.length).toBeGreaterThan(200);
  });

  test("have one topic each, so none of the sources is long", () => {
    const long = files.filter(
      ({ path, text }) => /^(?:src|templates|tools)\//.test(path) && lines(text) > lengthLimit,
    );
    expect(long.map(({ path }) => path).sort()).toEqual(Object.keys(mayBeLong).sort());
  });

  test("reckon and draw with powers that are the same on all versions of the engine", () => {
    const powers = matching(/\*\* *(?!2\b)[\w(.-]+|Math\.pow/).filter(
      (line) => !/^\S+ (?:\/\*\*|\*)/.test(line),
    );
    const exact = /^src\/(?:core|drawing|solve|model|words)\//;
    expect(powers.filter((line) => exact.test(line))).toEqual([]);
  });

  test("leave nothing to do later", () => {
    expect(matching(/\b(?:TO[D]O|FIX[M]E|XX[X])\b/)).toEqual([]);
  });

  test("know nothing of the machine they were written on", () => {
    const folders = /(?<![\w.)}])\/(?:home|Users|root|tmp|var|opt|work|mnt)\/[\w.-]|\b[A-Z]:\\\w/;
    const addresses = /\b(?:10|127|192\.168)(?:\.\d{1,3}){2,3}:\d+\b/;
    expect(matching(folders)).toEqual([]);
    expect(matching(addresses)).toEqual([]);
  });
});
