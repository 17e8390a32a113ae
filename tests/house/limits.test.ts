import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { limits } from "../../src/model/limits.ts";

const text = readFileSync(join(import.meta.dirname, "../../docs/limits.md"), "utf8");

test("docs/limits.md has every limit with its reason, and no other", () => {
  const rows = [...text.matchAll(/^\| (\d+) \| (.+) \| (.+) \|$/gm)].map(([, most, of, reason]) => [
    Number(most),
    of,
    reason,
  ]);
  expect(rows).toEqual(Object.values(limits).map(({ most, of, reason }) => [most, of, reason]));
});
