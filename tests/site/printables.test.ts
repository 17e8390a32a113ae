import { expect, test } from "vitest";
import type { Printable } from "../../src/model/printable.ts";
import { printablesOf } from "../../src/site/printables.ts";

test("what there is to print of a rig stands in the order of all, and there is nothing of a rig that has none", () => {
  const file = (path: string, rigId?: string): Printable => ({
    path,
    title: path,
    kind: "card",
    sizeBytes: 1,
    hash: "",
    ...(rigId && { rigId }),
  });
  const all = [file("1", "stick"), file("2"), file("3", "lift"), file("4", "stick")];
  expect(printablesOf("stick", all).map(({ path }) => path)).toEqual(["1", "4"]);
  expect(printablesOf("margin", all)).toEqual([]);
  expect(printablesOf("stick", all.slice(0, 1)).map(({ path }) => path)).toEqual(["1"]);
});
