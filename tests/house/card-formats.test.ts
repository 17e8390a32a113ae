import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { cardSuffixes } from "../../src/model/addresses.ts";

const root = join(import.meta.dirname, "../..");

it("no code asks a card for the name of its format: what tells formats apart is their data", () => {
  const names = Object.keys(cardSuffixes).join("|");
  const asks = new RegExp(`[!=]==?\\s*"(${names})"|"(${names})"\\s*[!=]==?|case "(${names})"`);
  const asking = ["src", "templates"]
    .flatMap((folder) =>
      readdirSync(join(root, folder), { recursive: true, encoding: "utf8" }).map((path) =>
        join(folder, path),
      ),
    )
    .filter((path) => /\.tsx?$/.test(path))
    .filter((path) => asks.test(readFileSync(join(root, path), "utf8")));
  expect(asking).toEqual([]);
});
