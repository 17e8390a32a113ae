import { describe, expect, test } from "vitest";
import { readWritten } from "../../src/core/as-written.ts";
import { questions } from "../../src/model/questions.ts";
import { depthSpellings } from "../support/depth-spellings.ts";

const metric = questions["metric first"].depth;
const imperial = questions.imperial.depth;

describe("a depth as people write it", () => {
  test("is read as what it says, or not at all, in more than three hundred spellings", () => {
    expect(depthSpellings.length).toBeGreaterThan(300);
    expect(new Set(depthSpellings.map(({ text }) => text)).size).toBe(depthSpellings.length);
    const wrong = depthSpellings.flatMap(({ text, mm }) => {
      const read = readWritten(text, metric);
      const value = read.ok ? read.value : null;
      const same = value === null || mm === null ? value === mm : Math.abs(value - mm) < 1e-6;
      return same ? [] : [{ text, mm, read }];
    });
    expect(wrong).toEqual([]);
  });

  test.each([
    ["6", ["6 m", "6 ft"]],
    ["17", ["17 ft"]],
    ["1m7", ["1.7 m", "1 m 7 cm"]],
    ["about 1.7 m", ["1.7 m"]],
    ["1.5–2 m", ["1.5 m", "2 m"]],
    ["1 to 2 m", ["1 m", "2 m"]],
    ["-1.7 m", ["1.7 m"]],
    ["170 m", ["170 cm"]],
    ["1.7n", ["1.7 m"]],
    ["deep", []],
    ["1 fathom", []],
  ])("%s comes back with what was likely meant: %j", (text, meant) => {
    expect(readWritten(text, metric)).toMatchObject({ ok: false, meant });
  });

  test.each([
    ["6", 6 * 304.8],
    ["5.5", null],
    ["1.7", null],
    ["170", null],
  ])("%s is read in feet by somebody who thinks in feet, where it can be nothing else", (text, mm) => {
    const read = readWritten(text, imperial);
    expect(read.ok ? read.value : null).toEqual(mm === null ? null : expect.closeTo(mm, 6));
  });

  test("every likely reading can itself be read", () => {
    for (const question of [metric, imperial]) {
      for (const { text } of depthSpellings) {
        const read = readWritten(text, question);
        if (read.ok) continue;
        for (const meant of read.meant)
          expect(readWritten(meant, question).ok, `${text} → ${meant}`).toBe(true);
      }
    }
  });
});

describe("other figures as people write them", () => {
  test.each([
    ["temperature", "metric", "12", 12],
    ["temperature", "metric", "12 °C", 12],
    ["temperature", "metric", "54 degrees fahrenheit", (54 - 32) / 1.8],
    ["temperature", "imperial", "54", (54 - 32) / 1.8],
    ["temperature", "metric", "54", null],
    ["tip", "metric", "15", 15],
    ["rod", "metric", "3,6", 3600],
    ["rod", "imperial", "12", 12 * 304.8],
    ["rod", "metric", "12", null],
    ["pace", "metric", "10 m in 25 s", 0.4],
    ["pace", "metric", "10 metres in 25 sec", 0.4],
    ["pace", "metric", "0.4", null],
  ] as const)("%s, to a %s reader: %s", (field, units, text, value) => {
    const read = readWritten(text, questions[units][field]);
    expect(read.ok ? read.value : null).toEqual(value === null ? null : expect.closeTo(value, 6));
  });
});
