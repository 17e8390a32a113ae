import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { importsOf } from "../../tools/imports.mjs";

const root = join(import.meta.dirname, "../..");

const files = ["src", "templates", "tests", "tools"].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .map((path) => `${folder}/${path.replaceAll("\\", "/")}`)
    .filter((path) => /\.(?:tsx?|mjs)$/.test(path)),
);
const texts = new Map(files.map((path) => [path, readFileSync(join(root, path), "utf8")]));

/** What the sources do not use themselves, and why it stands among them. */
const forTests: Readonly<Record<string, string>> = {
  "src/core/tackle/box-notation.ts boxText": "the way back, to which tests hold the reading",
  "src/model/card-content.ts onEveryCard":
    "what is promised of every card, beside the type that it is a part of",
};

/** Names that one file takes from others, as `file name`. */
function takenBy(path: string, text: string): string[] {
  // Of a module that is taken whole is used what has its name somewhere in the file.
  const words = [...text.matchAll(/\w+/g)].map(([word]) => word);
  return importsOf(root, path).flatMap(({ to, names = words }) => names.map((name) => `${to} ${name}`));
}

describe("what a file exports", () => {
  const takenIn = (folders: RegExp) =>
    new Set([...texts].flatMap(([path, text]) => (folders.test(path) ? takenBy(path, text) : [])));
  const taken = takenIn(/./);
  const takenBySources = takenIn(/^(?:src|templates|tools)\//);
  const given = [...texts]
    .filter(([path]) => /^(?:src|templates)\//.test(path))
    .flatMap(([path, text]) =>
      [...text.matchAll(/^export (?:async )?(?:const|function\*?|class|interface|type) (\w+)/gm)].map(
        ([, name]) => `${path} ${name}`,
      ),
    );

  it("is imported by another file", () => {
    expect(given.length).toBeGreaterThan(500);
    expect(given.filter((one) => !taken.has(one))).toEqual([]);
  });

  it("is used by the sources: in another file, or in its own", () => {
    const timesInOwnFile = (path: string, name: string) =>
      texts
        .get(path)!
        .replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, "")
        .match(new RegExp(`\\b${name}\\b`, "g"))!.length;
    const unused = given.filter((one) => {
      const [path, name] = one.split(" ") as [string, string];
      return !takenBySources.has(one) && timesInOwnFile(path, name) < 2;
    });
    expect(unused.filter((one) => !(one in forTests))).toEqual([]);
  });
});
