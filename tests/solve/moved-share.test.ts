import { describe, expect, it } from "vitest";
import { movedShare } from "../../src/solve/moved-share.ts";

const at = (fromHookMm: number, pullG = 1) => ({ fromHookMm, pullG });

describe("how unlike two ways of shotting are", () => {
  it("is nothing for the same places and shares, whatever they weigh", () => {
    expect(movedShare([at(100), at(500)], [at(100, 3), at(500, 3)], 1000)).toBe(0);
  });

  it("is the whole line from the hook to the float", () => {
    expect(movedShare([at(0)], [at(1000)], 1000)).toBe(1);
  });

  // By hand: half the pull moves by 400 mm of 1000, so 0.2 on average.
  it("is how far the pull moves, on average", () => {
    expect(movedShare([at(100), at(500)], [at(100), at(900)], 1000)).toBeCloseTo(0.2, 12);
    expect(movedShare([at(100), at(900)], [at(100), at(500)], 1000)).toBeCloseTo(0.2, 12);
    expect(movedShare([at(100, 2)], [at(100), at(300)], 1000)).toBeCloseTo(0.1, 12);
  });
});
