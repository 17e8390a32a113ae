import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

/** A name of a water or a club: a word with a capital before what it is. */
const name =
  /\b([A-Z][a-z]+)\s+(?:Junior\s+)?(?:Pool|Cut|Lake|Mere|Waters?|Canal|Brook|River|Pond|Anglers|Club|Juniors)\b/g;

test("every water and club in the content has a name that can be no real one", () => {
  const files = readdirSync("content", { recursive: true, encoding: "utf8" }).filter((path) =>
    /\.(?:md|yaml)$/.test(path),
  );
  const names = files.flatMap((path) =>
    [...readFileSync(join("content", path), "utf8").matchAll(name)].map(([whole, first]) => ({
      path,
      whole,
      first,
    })),
  );
  expect(names.length).toBeGreaterThanOrEqual(3);
  expect(names.filter(({ first }) => first !== "Makebelieve")).toEqual([]);
});
