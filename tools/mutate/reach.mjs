// Which test files read a source, by the imports that lead there.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";

/** Test files of the quick set from which imports lead to any of these sources, in the order of their names. */
export function testsReaching(sources) {
  const wanted = new Set(sources.map(normalize));
  const known = new Map();
  const reaches = (path, trail = new Set()) => {
    if (wanted.has(path)) return true;
    if (known.has(path)) return known.get(path);
    if (trail.has(path)) return false;
    trail.add(path);
    const found = importsOf(path).some((next) => reaches(next, trail));
    known.set(path, found);
    return found;
  };
  return readdirSync("tests", { recursive: true, encoding: "utf8" })
    .filter((path) => /\.test\.tsx?$/.test(path) && !/\.slow\.test\./.test(path))
    .map((path) => join("tests", path))
    .filter((path) => reaches(path))
    .sort();
}

function importsOf(path) {
  if (!existsSync(path)) return [];
  return [...readFileSync(path, "utf8").matchAll(/(?:from|import\()\s*"(\.[^"]+)"/g)]
    .map(([, target]) => normalize(join(dirname(path), target)))
    .filter((target) => /\.tsx?$/.test(target));
}
