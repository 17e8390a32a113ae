import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import { hashesBelow } from "../files-below.ts";

const listName = "dotdown-files.json";

/** Holds an output against the list in it: every file there is listed, is as it is listed, and none is missing. */
export function expectWhole(out: string): void {
  const { files } = JSON.parse(readFileSync(join(out, listName), "utf8"));
  const told = Object.entries(files as Record<string, { sha256: string }>);
  const { [listName]: _, ...found } = hashesBelow(out);
  expect(found).toEqual(Object.fromEntries(told.map(([path, { sha256 }]) => [path, sha256])));
}
