import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** Rows of a table of numbers in `tests/data`, without its heading. */
export function numberTable(file: string): readonly (readonly [number, number])[] {
  const path = fileURLToPath(new URL(`../data/${file}`, import.meta.url));
  return readFileSync(path, "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((row) => {
      const [x, y] = row.split(",").map(Number);
      return [x!, y!] as const;
    });
}
