import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkCocking, cockingPullG, cocks } from "../../../src/core/float/cocking.ts";
import { floatPullG } from "../../../src/core/float/float.ts";
import { valuesOf } from "../../support/findings.ts";
import { pool, stick, straightQuill, tippedFloat } from "../floats.ts";

fc.configureGlobal({ seed: 20, numRuns: 200 });

describe("whether a float stands", () => {
  // A textbook rod of relative density s, hinged at its foot, stands in water deeper than L · √s (statics of floating
  // bodies; from memory). Here 2.17244 g on 3.92582 g of water: s = 0.553374, 200 mm · √s = 148.778 mm.
  // The same by moments: the straight quill weighs 2.17244 g with its centre at 100 mm: 217.244 g·mm about the eye. Standing h deep it
  // displaces 0.0196292 g a millimetre, centre at h/2: 0.0098146 · h² g·mm. Equal at h = √22134.7 = 148.777 mm, which
  // displaces 2.92038 g: from a load of 2.92038 − 2.17244 = 0.74794 g on it stands.
  it("follows from the centres of mass and buoyancy of a straight quill", () => {
    expect(cockingPullG(straightQuill, pool)).toBeCloseTo(0.74794, 3);
    expect(cocks(straightQuill, 0.74, pool)).toBe(false);
    expect(cocks(straightQuill, 0.756, pool)).toBe(true);
  });

  it("needs less shot where load is built into the foot", () => {
    const loaded = { ...straightQuill, selfLoadG: 0.8 };
    expect(cockingPullG(loaded, pool)!).toBeLessThan(cockingPullG(straightQuill, pool)!);
  });

  // With all of its weight in its foot nothing turns it over.
  it("needs none where the whole weight is in the foot", () => {
    expect(cockingPullG({ ...straightQuill, selfLoadG: 2.17 }, pool)).toBe(0);
  });

  it("is asked of the lock alone", () => {
    expect(checkCocking(straightQuill, 0.8, pool)).toEqual([]);
    const [finding] = checkCocking(straightQuill, 0.5, pool);
    expect(finding).toMatchObject({
      code: "lock-does-not-cock",
      severity: "warning",
      values: { lockPullG: 0.5 },
    });
    expect(valuesOf([finding!], "lock-does-not-cock").neededG).toBeCloseTo(0.74794, 3);
  });

  it("stays true as load is added", () => {
    const floats = fc.constantFrom(straightQuill, stick, tippedFloat(2), tippedFloat(4));
    const load = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(floats, load, load, (float, a, b) => {
        if (cocks(float, Math.min(a, b), pool)) expect(cocks(float, Math.max(a, b), pool)).toBe(true);
      }),
    );
  });

  it("holds for every float of these tests at its mark", () => {
    for (const float of [straightQuill, stick, tippedFloat(2)]) {
      expect(cocks(float, floatPullG(float, pool), pool)).toBe(true);
    }
  });

  // The straight quill can push no more than 3.926 g of water aside.
  it("is never for a float heavier than all the water it can push aside", () => {
    expect(cockingPullG({ ...straightQuill, weighedMassG: 4 }, pool)).toBeNull();
  });
});
