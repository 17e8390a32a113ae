import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { parse } from "yaml";

// What is of one place is never lent: swims, days there, a shop, and what guide.yaml says of whose guide it is.
const ofOnePlace = /^(?:(?:swims|notes|shelves|sessions)\/|guide\.yaml$)/;

it.each(["content", "content-de"])("what %s lends names no water of its own", (library) => {
  const { publisher } = parse(readFileSync(join(library, "guide.yaml"), "utf8")) as {
    readonly publisher: string;
  };
  const [invented = ""] = publisher.split(/[ -]/);
  const files = readdirSync(library, { recursive: true, encoding: "utf8" }).filter((path) =>
    /\.(?:md|yaml)$/.test(path),
  );
  const naming = files.filter((path) => readFileSync(join(library, path), "utf8").includes(invented));
  expect(naming).toContain("guide.yaml");
  expect(naming.filter((path) => !ofOnePlace.test(path))).toEqual([]);
});
