import { describe, expect, test } from "vitest";
import { fits, nearest } from "../../src/browser/rig-filter.ts";

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

describe("a list of rigs", () => {
  const river = { ...rig, water: "flowing", catch: "chub" };

  test("shows those that fit every answer", () => {
    expect(nearest([rig, river], { water: "flowing", catch: "chub" })).toEqual({
      shown: [false, true],
      left: [],
    });
  });

  test("lets the fish go before the depth, and the water last", () => {
    expect(nearest([rig, river], { water: "flowing", catch: "roach", depth: "2000" })).toEqual({
      shown: [false, true],
      left: ["catch"],
    });
    expect(nearest([rig, river], { water: "flowing", catch: "roach", depth: "9000" })).toEqual({
      shown: [false, true],
      left: ["catch", "depth"],
    });
    expect(nearest([rig], { water: "flowing", level: "", method: "strung out" })).toEqual({
      shown: [true],
      left: ["method", "water"],
    });
  });

  test("every set of answers leads to a rig", () => {
    for (const water of ["", "still", "flowing"]) {
      for (const depth of ["", "200", "1500", "12000"]) {
        for (const fish of ["", "roach", "chub", "pike"]) {
          expect(nearest([rig, river], { water, depth, catch: fish }).shown).toContain(true);
        }
      }
    }
  });
});
