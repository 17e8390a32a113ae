import { expect, it } from "vitest";
import { paceParts, paceText } from "../../src/browser/pace-fields.ts";

it.each([
  ["10 m", "25", "10 m in 25 s"],
  [" 10 yd ", " 25s ", "10 yd in 25 s"],
  ["10 m", "25 s", "10 m in 25 s"],
  ["0.4 m/s", "", "0.4 m/s"],
])("“%s” in “%s” seconds is the pace %s", (way, time, pace) => {
  expect(paceText(way, time)).toBe(pace);
});

it.each(["10 m in 25 s", "10 yd in 12.5 s", "0.4 m/s"])("a pace of %s comes back from its fields", (pace) => {
  expect(paceText(...paceParts(pace))).toBe(pace);
});
