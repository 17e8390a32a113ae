import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const root = join(import.meta.dirname, "../..");
const read = (path: string) => readFileSync(join(root, path), "utf8");

const rows = [...read("docs/promises.md").matchAll(/^\| (.+?) \| `(tests\/.+?)` \| (.+?) \|$/gm)].map(
  ([, promise, file, title]) => ({ promise: promise!, file: file!, title: title! }),
);

test("every promise has a test of the name that stands beside it", () => {
  expect(rows.length).toBeGreaterThan(20);
  const missing = rows.filter(
    ({ file, title }) => !existsSync(join(root, file)) || !read(file).includes(`"${title}"`),
  );
  expect(missing).toEqual([]);
});
