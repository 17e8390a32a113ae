import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { instrumented } from "../../tools/mutate/mutants.mjs";
import { restOf, resultLine, table } from "../../tools/mutate/results.mjs";
import { isUnseen, unseen } from "../../tools/mutate/unseen.mjs";

const root = join(import.meta.dirname, "../..");
const read = (path: string) => readFileSync(join(root, path), "utf8");

test.each(unseen)("what 5 % change nothing of stands once in $path: $line", ({ path, line, why }) => {
  const lines = read(path)
    .split("\n")
    .map((one) => one.trim());
  expect(lines.filter((one) => one === line)).toHaveLength(1);
  expect(why).toMatch(/\w{3,} \w+/);
  const { mutants } = instrumented(path, read(path), 1);
  const listed = mutants.filter((mutant) => isUnseen({ ...mutant, path }, read));
  expect(listed.some((mutant) => lines[mutant.line - 1] === line)).toBe(true);
});

const mutant = (line: number, kind: "logic" | "constant", fate: "killed" | "lives" | "equivalent") => ({
  ...{ id: line, path: "src/core/any.ts", line, was: String(line), now: "0", kind, fate },
});

test("the table says what is killed of all, and of those that listed ones leave", () => {
  const all = [
    mutant(1, "constant", "killed"),
    mutant(2, "constant", "equivalent"),
    mutant(3, "constant", "lives"),
    mutant(4, "logic", "killed"),
  ];
  expect(table(all)).toContain(
    "| all | 1 of 1 (100 %) | 1 of 3 (33 %; 50 % of those that 1 listed ones leave) |",
  );
});

test("a run goes on with those of which an earlier one tells nothing", () => {
  const one = mutant(1, "logic", "killed");
  // The same change of another line.
  const other = { ...one, line: 2 };
  expect(restOf(`${resultLine(one)}\n`, [one, other])).toEqual([other]);
});
