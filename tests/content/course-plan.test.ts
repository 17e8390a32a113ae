import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const plan = readFileSync("content/pages/coaches.md", "utf8");
const lessonsIn = (text: string) => [...text.matchAll(/lessons\/([\w-]+)\.html/g)].map(([, id]) => id!);
const evenings = plan
  .split("\n")
  .filter((line) => /^\| (?:one|two|three|four|five|six|seven|eight|nine) \|/.test(line));

test("the coaches' plan has every lesson of the course once", () => {
  const lessons = readdirSync("content/lessons").map((file) => file.replace(/\.md$/, ""));
  const upToRules = plan.slice(0, plan.indexOf("## What the adult does"));
  expect(lessonsIn(upToRules).sort()).toEqual(lessons.sort());
});

test("no evening of the plan has more lessons than the two hours have room for", () => {
  const [, count, minutes] = /(Four) lessons of (\d+) minutes/.exec(plan)!;
  expect([count, Number(minutes) * 4 + 20]).toEqual(["Four", 120]);
  expect(evenings).toHaveLength(9);
  for (const evening of evenings) expect(lessonsIn(evening).length, evening).toBeLessThanOrEqual(4);
});
