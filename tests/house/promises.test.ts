import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const root = join(import.meta.dirname, "../..");
const read = (path: string) => readFileSync(join(root, path), "utf8");

const rowsOf = (page: string) =>
  [...read(page).matchAll(/^\| (.+?) \| `(tests\/.+?)` \| (.+?) \|$/gm)].map(([, promise, file, title]) => ({
    promise: promise!,
    file: file!,
    title: title!,
  }));

test.each([
  ["promise", "docs/promises.md", 90],
  ["case that went wrong once", "docs/cases.md", 70],
])("every %s has a test of the name that stands beside it", (_, page, least) => {
  const rows = rowsOf(page);
  expect(rows.length).toBeGreaterThan(least);
  const missing = rows.filter(
    ({ file, title }) => !existsSync(join(root, file)) || !read(file).includes(`"${title}"`),
  );
  expect(missing).toEqual([]);
});
