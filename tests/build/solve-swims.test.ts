import { expect, test } from "vitest";
import { kitOffPages } from "../../src/build/kit-of.ts";
import { solveSwims } from "../../src/build/solve-swims.ts";
import { inMemory } from "../../src/model/kept.ts";
import { shippedLibrary } from "../support/shipped-library.ts";

test("of all rigs that are tried at a spot the sums of the best alone are kept, and of the others what came of them", () => {
  const made: string[] = [];
  const keep = inMemory(10_000, (kind, _from, make) => {
    made.push(kind);
    return make();
  });
  const { spots } = solveSwims(shippedLibrary, kitOffPages(shippedLibrary), keep);
  const many = (kind: string) => made.filter((one) => one === kind).length;
  expect(many("rig at a spot")).toBe(spots.length);
  expect(many("verdict at a spot")).toBeGreaterThan(2 * spots.length);
});
