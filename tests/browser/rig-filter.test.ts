import { describe, expect, test } from "vitest";
import { fits } from "../../src/browser/rig-filter.ts";

const rig = {
  water: "still",
  depths: "1500 3000",
  method: "strung out",
  level: "first",
  catch: "roach|small perch",
};

describe("a rig in the list", () => {
  test("is shown when nothing is asked", () => {
    expect(fits(rig, {})).toBe(true);
    expect(fits(rig, { water: "", depth: "", catch: "" })).toBe(true);
  });

  test.each([
    [{ water: "still" }, true],
    [{ water: "flowing" }, false],
    [{ method: "strung out" }, true],
    [{ method: "bulk" }, false],
    [{ level: "first" }, true],
    [{ level: "next" }, false],
    [{ catch: "small perch" }, true],
    [{ catch: "perch" }, false],
    [{ water: "still", catch: "chub" }, false],
  ])("with the answers %o is shown: %s", (wishes, shown) => {
    expect(fits(rig, wishes as Record<string, string>)).toBe(shown);
  });

  test.each([
    ["1500", true],
    ["2200", true],
    ["1200", true],
    ["1199", false],
    ["3300", true],
    ["3301", false],
  ])("for a depth of %s mm, within 30 cm of what it is for, is shown: %s", (depth, shown) => {
    expect(fits(rig, { depth })).toBe(shown);
  });
});
