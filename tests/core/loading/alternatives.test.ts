import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fullTub, sameLoadFrom } from "../../../src/core/loading/alternatives.ts";
import { metals, type ShotScale } from "../../../src/core/tackle/shot.ts";
import { tradeMassesG, tradeShot } from "../loading-instances.ts";
import { pull, toleranceG, water } from "./choices.ts";

describe("the same load from another tub", () => {
  const gunScale: ShotScale = {
    id: "gun",
    title: "English gun numbers",
    sizes: [
      { name: "AAA", massG: 0.81 },
      { name: "BB", massG: 0.404 },
      { name: "1", massG: 0.283 },
      { name: "4", massG: 0.167 },
      { name: "6", massG: 0.103 },
      { name: "8", massG: 0.064 },
    ],
  };
  const tradeSizes: ShotScale = {
    id: "trade",
    title: "trade figures",
    sizes: Object.entries(tradeMassesG).map(([name, massG]) => ({ name, massG })),
  };

  it("keeps the pull within the smallest shot in every metal and scale", () => {
    const load = fc.array(fc.constantFrom(...Object.keys(tradeMassesG)), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(load, fc.constantFrom(...metals), fc.boolean(), (sizes, metal, gun) => {
        const shot = sizes.map((size) => tradeShot(size, "lead"));
        const targetPullG = shot.reduce((sum, one) => sum + pull(one), 0);
        const tub = fullTub(gun ? gunScale : tradeSizes, metal);
        const smallestPullG = Math.min(...tub.map(pull));
        const { other } = sameLoadFrom(shot, { other: tub }, water, "halves");
        if (targetPullG < smallestPullG) return;
        expect(other.ok && other.value.sparePullG).toBeGreaterThan(-toleranceG);
        expect(other.ok && other.value.sparePullG).toBeLessThan(smallestPullG);
      }),
      { numRuns: 300, seed: 5 },
    );
  });
});
