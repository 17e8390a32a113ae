import fc from "fast-check";
import { expect, test } from "vitest";
import { spanInParts, spreadOver } from "../../../src/core/session/places.ts";

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

test("eight learners on three swims are three, three and two", () => {
  expect(spreadOver(8, 3)).toEqual([3, 3, 2]);
});

test("nobody is lost between the places, and no place has two more than another", () => {
  fc.assert(
    fc.property(fc.nat(60), fc.integer({ min: 1, max: 12 }), (people, places) => {
      const spread = spreadOver(people, places);
      expect(sum(spread)).toBe(people);
      expect(Math.max(...spread) - Math.min(...spread)).toBeLessThanOrEqual(1);
    }),
    { seed: 20 },
  );
});

test("a span is shared out in whole minutes without a gap", () => {
  expect(spanInParts({ fromMin: 600, toMin: 701 }, 2)).toEqual([
    { fromMin: 600, toMin: 651 },
    { fromMin: 651, toMin: 701 },
  ]);
  expect(spanInParts({ fromMin: 600, toMin: 601 }, 3)).toEqual([{ fromMin: 600, toMin: 601 }]);
});
