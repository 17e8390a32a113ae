import { describe, expect, it } from "vitest";
import { entry, first, known, last, neighbours, paired, rising, sum, withId } from "../../src/core/lists.ts";

describe("what a list must hold", () => {
  it("is given where it is there", () => {
    expect([first("abc".split("")), last("abc".split("")), entry([4, 5, 6], 1)]).toEqual(["a", "c", 5]);
    expect(entry(Float64Array.of(0, 2), 0)).toBe(0);
    expect(withId([{ id: "a" }, { id: "b", at: 2 }], "b")).toEqual({ id: "b", at: 2 });
    expect(known(new Map([["a", 0]]), "a")).toBe(0);
  });

  it("throws and says what is missing where it is not", () => {
    expect(() => first([])).toThrow("no entry 0 in a list of 0");
    expect(() => last([])).toThrow(RangeError);
    expect(() => entry([1, 2], 2)).toThrow("no entry 2 in a list of 2");
    expect(() => withId([{ id: "a" }], "b")).toThrow("nothing has the id b");
    expect(() => known(new Map(), "pike")).toThrow("nothing stands under pike");
  });
});

describe("entries side by side", () => {
  it("are those of one list, each with the next", () => {
    expect(neighbours([1, 2, 3])).toEqual([
      [1, 2],
      [2, 3],
    ]);
    expect([...neighbours([1]), ...neighbours([])]).toEqual([]);
  });

  it("are those of two lists of one length, and of no others", () => {
    expect(paired([1, 2], ["a", "b"])).toEqual([
      [1, "a"],
      [2, "b"],
    ]);
    expect(() => paired([1, 2], ["a"])).toThrow("2 entries beside 1");
    expect(() => paired([1], ["a", "b"])).toThrow("1 entries beside 2");
  });
});

it("numbers rise, each once", () => {
  expect(rising([10, 9, 100, 9, -1])).toEqual([-1, 9, 10, 100]);
});

it("numbers add up, and none to nothing", () => {
  expect([sum([1, 2.5, -4]), sum(new Set([7])), sum([])]).toEqual([-0.5, 7, 0]);
});
