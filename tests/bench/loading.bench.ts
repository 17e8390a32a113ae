import { bench, describe } from "vitest";
import { chooseShot } from "../../src/core/loading/loading.ts";
import { randomInstance, seededRandom } from "../core/loading-instances.ts";
import { integerProgram } from "../support/highs-loading.ts";

const water = { tempC: 10, salinity: 0 };
const random = seededRandom(1);
const instances = Array.from({ length: 2000 }, () => randomInstance(random));
const largestPullG = await integerProgram();

/** Goes through the instances one a call, so that the mean is that of one choice; sums up so that all are made. */
function inTurn(choose: (index: number) => number): () => void {
  let index = 0;
  let sumG = 0;
  return () => {
    sumG += choose(index++ % instances.length);
    if (Number.isNaN(sumG)) throw new Error("a pull is not a number");
  };
}

describe("choosing the shot, one tub and float (aim: under 0.2 ms on average)", () => {
  bench(
    "exact choice with halves",
    inTurn((index) => {
      const choice = chooseShot({ ...instances[index]!, water, split: "halves" });
      return choice.ok ? choice.value.pullG : 0;
    }),
    { iterations: instances.length },
  );

  bench(
    "HiGHS, closest pull alone",
    inTurn((index) => largestPullG(instances[index]!.tub, instances[index]!.targetPullG, water)),
    { iterations: 100 },
  );
});
