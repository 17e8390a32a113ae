import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { describe, expect, it } from "vitest";

const root = join(import.meta.dirname, "../..");

const files = ["src", "templates", "tests", "tools"].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .map((path) => `${folder}/${path.replaceAll("\\", "/")}`)
    .filter((path) => /\.(?:tsx?|mjs)$/.test(path)),
);
const texts = new Map(files.map((path) => [path, readFileSync(join(root, path), "utf8")]));

/** Names that one file takes from others, as `file name`. */
function takenBy(path: string, text: string): string[] {
  const named = [...text.matchAll(/(?:import|export)\s+(?:type\s+)?\{([^}]*)\}\s+from\s+"(\.[^"]+)"/g)];
  const asked = [...text.matchAll(/\bimport\("(\.[^"]+)"\)/g)];
  const from = (target: string) => normalize(join(dirname(path), target)).replaceAll("\\", "/");
  return [
    ...named.flatMap(([, names, target]) =>
      names!.split(",").map(
        (name) =>
          `${from(target!)} ${
            name
              .trim()
              .replace(/^type /, "")
              .split(" as ")[0]
          }`,
      ),
    ),
    // A module that is taken whole: what it gives is used wherever its name stands.
    ...asked.flatMap(([, target]) => [...text.matchAll(/\w+/g)].map(([word]) => `${from(target!)} ${word}`)),
  ];
}

describe("what a file exports", () => {
  const taken = new Set([...texts].flatMap(([path, text]) => takenBy(path, text)));
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
});
