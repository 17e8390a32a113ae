import { describe, expect, it } from "vitest";
import { feelForBed } from "../../../src/core/flow/feel-for-bed.ts";
import { valueIn } from "../sink/rigs.ts";

describe("running water without a plummet", () => {
  // Steps of 15 cm down and 5 cm up: common practice, no source. 1.2 m deep, the bait on the bed from 1.28 m on.
  it("goes deeper until the float dips, then shallower until it runs clean", () => {
    const { runs, foundMm, cleanMm } = valueIn(feelForBed(1280, 1000));
    expect(runs.map(({ settingMm, dips }) => [settingMm, dips])).toEqual([
      [1000, false],
      [1150, false],
      [1300, true],
      [1250, false],
    ]);
    expect([foundMm, cleanMm]).toEqual([1300, 1250]);
  });

  it("comes shallower where the first guess dips", () => {
    expect(valueIn(feelForBed(860, 1000)).runs.map(({ settingMm }) => settingMm)).toEqual([
      1000, 950, 900, 850,
    ]);
  });

  it("does not search for a depth that cannot be", () => {
    expect(feelForBed(0, 100).findings[0]!.code).toBe("plumbing-guess");
    expect(feelForBed(1000, 0).findings[0]!.code).toBe("plumbing-guess");
    expect(feelForBed(1e7, 100).findings[0]!.code).toBe("plumbing-guess");
  });
});
