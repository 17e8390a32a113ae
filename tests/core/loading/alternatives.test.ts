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
        for (const { mix } of sameLoadFrom(shot, [{ tub }], water, "halves")) {
          expect(mix.sparePullG).toBeGreaterThan(-toleranceG);
          expect(mix.sparePullG).toBeLessThan(smallestPullG);
          expect(targetPullG - mix.shot.reduce((sum, one) => sum + pull(one), 0)).toBeCloseTo(
            mix.sparePullG,
            9,
          );
        }
      }),
      { numRuns: 300, seed: 5 },
    );
  });

  const anchor = tradeShot("SSG", "lead");

  // A lead rule leaves the dust sizes alone; an anchor of one SSG would take more than twenty of them.
  it("offers no string of small shot for one big one", () => {
    const dust = fullTub(tradeSizes, "lead").filter(({ massG }) => massG <= 0.06);
    expect(sameLoadFrom([anchor], [{ tub: dust }], water, "one group")).toEqual([]);
  });

  it("offers as many shot as a lock of small ones has", () => {
    const shot = Array.from({ length: 12 }, () => tradeShot("No 8", "lead"));
    const small = fullTub(tradeSizes, "tin").filter(({ massG }) => massG <= 0.1);
    const [other] = sameLoadFrom(shot, [{ tub: small }], water, "halves");
    expect(other!.mix.shot.length).toBeGreaterThan(6);
    expect(other!.mix.shot.length).toBeLessThanOrEqual(12);
  });

  it("offers what has fewest shot first, and never the load itself", () => {
    const scales = [gunScale, tradeSizes];
    const shops = metals.flatMap((metal) =>
      scales.map((scale) => ({ tub: fullTub(scale, metal), metal, scale })),
    );
    const others = sameLoadFrom([anchor], shops, water, "one group");
    const counts = others.map(({ mix }) => mix.shot.length);
    expect(counts).toEqual(counts.toSorted((a, b) => a - b));
    expect(counts.at(-1)).toBeLessThanOrEqual(3);
    expect(others.length).toBeGreaterThan(3);
    expect(others.some(({ metal, scale }) => metal === "lead" && scale === tradeSizes)).toBe(false);
  });
});
