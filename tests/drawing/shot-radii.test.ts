import { expect, test } from "vitest";
import { neighbours } from "../../src/core/lists.ts";
import { shotRadii } from "../../src/drawing/shot-radii.ts";

test("no two sizes of shot look alike in one picture, and a larger one is never drawn smaller", () => {
  // Diameters of No 12, 10, 9, 8, 6, 4, BB, SSG in lead, from memory [mm].
  const diametersMm = [1.1, 1.5, 1.6, 1.8, 2.1, 2.6, 3.5, 5.4];
  for (const scale of [0.05, 0.2, 0.6, 1]) {
    const radiusOf = shotRadii([...diametersMm, 1.8].reverse(), scale);
    for (const [smaller, larger] of neighbours(diametersMm.map(radiusOf)))
      expect(larger / smaller).toBeGreaterThan(1.2);
    // Half a millimetre of paper is seen.
    expect(radiusOf(1.1)).toBeGreaterThanOrEqual(0.5);
  }
});

test("where sizes are far apart, shot are drawn to the scale", () => {
  const radiusOf = shotRadii([2, 4, 8], 0.8);
  expect([2, 4, 8].map(radiusOf)).toEqual([0.8, 1.6, 3.2].map((mm) => expect.closeTo(mm, 9)));
});
