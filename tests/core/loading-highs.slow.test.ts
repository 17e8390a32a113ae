import { beforeAll, describe, expect, it } from "vitest";
import { chooseShot } from "../../src/core/loading/loading.ts";
import { type IntegerProgram, integerProgram } from "../support/highs-loading.ts";
import { randomInstance, seededRandom } from "./loading-instances.ts";

const water = { tempC: 10, salinity: 0 };

describe("the closest pull, against HiGHS, a library for integer programs", () => {
  let largestPullG: IntegerProgram;
  beforeAll(async () => {
    largestPullG = await integerProgram();
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8])("is the same to a nanogram for 250 tubs (seed %i)", (seed) => {
    const random = seededRandom(seed);
    for (let n = 0; n < 250; n++) {
      const { tub, targetPullG } = randomInstance(random);
      const choice = chooseShot({ tub, targetPullG, water, split: "halves" });
      const ours = choice.ok ? choice.value.pullG : 0;
      expect(Math.abs(ours - largestPullG(tub, targetPullG, water))).toBeLessThanOrEqual(1e-9);
    }
  });
});
