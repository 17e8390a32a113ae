// Which test files read a source, by the imports that lead there.
import { existsSync, readdirSync } from "node:fs";
import { join, normalize } from "node:path";
import { importsOf } from "../imports.mjs";

/** Test files of the quick set from which imports lead to any of these sources, in the order of their names. */
export function testsReaching(sources) {
  const wanted = new Set(sources.map(normalize));
  const known = new Map();
  const reaches = (path, trail = new Set()) => {
    if (wanted.has(path)) return true;
    if (known.has(path)) return known.get(path);
    if (trail.has(path)) return false;
    trail.add(path);
    const found = sourcesOf(path).some((next) => reaches(next, trail));
    known.set(path, found);
    return found;
  };
  return readdirSync("tests", { recursive: true, encoding: "utf8" })
    .filter((path) => /\.test\.tsx?$/.test(path) && !/\.slow\.test\./.test(path))
    .map((path) => join("tests", path))
    .filter((path) => reaches(path))
    .sort();
}

/** Files of the project that a file imports. */
const sourcesOf = (path) =>
  importsOf(".", path)
    .map(({ to }) => to)
    .filter((to) => /\.tsx?$/.test(to) && existsSync(to));
