import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

/** Where countries are named, or what their law says is typed, and with it the file that alone may do so. */
const content = "content";
const lawFile = "guide.yaml";

/** Marks of one country's law: its name, the dates of a season, the ages of a licence, the masses of lead. */
const marks = [
  /\b(?:England|Wales|Scotland|Ireland|Britain|British|United\s+Kingdom|UK)\b/g,
  /\b\d{1,2}(?:st|nd|rd|th)?\s+(?:of\s+)?(?:January|February|March|April|May|June|July|August|September|October|November|December)\b/g,
  /\bfrom\s+the\s+age\s+of\s+\d+/g,
  /\blead\b[^.]*\b(?:0\.06|28\.\d+)\s*g\b/gi,
  /\b(?:one|an|1)\s+(?:ounce|oz)\b/g,
];

const lawIn = (text: string) => marks.flatMap((mark) => text.match(mark) ?? []);

const files = readdirSync(content, { recursive: true, encoding: "utf8" }).filter((name) =>
  /\.(?:md|yaml)$/.test(name),
);

test("the law of the place stands in the guide's own file, and in no text, table or fixed word besides", () => {
  expect(files.length).toBeGreaterThan(80);
  const found = files
    .filter((name) => name !== lawFile)
    .flatMap((name) => lawIn(readFileSync(join(content, name), "utf8")).map((law) => `${name}: ${law}`));
  expect(found).toEqual([]);
});

test("the search finds each kind of law where it does stand", () => {
  const law = readFileSync(join(content, lawFile), "utf8");
  expect(marks.map((mark) => law.match(mark) !== null).slice(0, 3)).toEqual([true, true, true]);
  expect(lawIn("Lead up to 0.06 g is allowed. Lead above 28.35 g, one ounce, too.")).toHaveLength(3);
  expect(lawIn("A No 10 weighs 0.06 g on one list.")).toEqual([]);
});
