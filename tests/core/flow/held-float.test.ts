import fc from "fast-check";
import { expect, test } from "vitest";
import { type HeldFloat, holdBackShareMax } from "../../../src/core/flow/held-float.ts";
import { heldBack } from "../../support/held-back.ts";
import { valueIn } from "../sink/rigs.ts";

const water = { tempC: 12, salinity: 0 };
const float: HeldFloat = { dragAreaCm2: 6, loadG: 2, tipPullG: 0.15 };

test("the forces on a float held by its foot balance in a tank of our own sums", () => {
  // Drag of 6 cm² at 0.2 m/s: ½·1000·6e-4·0.04 N = 12 mN = 1.22 g.
  const { leanDeg, pushedDownG } = heldBack(float, "bottom", 0.2, water);
  const lean = (leanDeg * Math.PI) / 180;
  const across = ((0.5 * 999.5 * 6e-4 * 0.04 * 1000) / 9.80665) * Math.cos(lean) ** 2;
  expect((2 + across * Math.sin(lean)) * Math.sin(lean)).toBeCloseTo(across, 3);
  expect(pushedDownG).toBeCloseTo(across * Math.sin(lean), 3);
});

test("at the share found the float just goes under, and not before", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 20, noNaN: true }),
      fc.double({ min: 0.3, max: 10, noNaN: true }),
      fc.double({ min: 0.02, max: 0.5, noNaN: true }),
      fc.double({ min: 1.1, max: 1.5, noNaN: true }),
      (dragAreaCm2, loadG, tipPullG, freeMs) => {
        const held = { dragAreaCm2, loadG, tipPullG };
        const share = valueIn(holdBackShareMax(held, "bottom", 1.5, freeMs, water));
        const past = (heldShare: number) => 1.5 - (1 - heldShare) * freeMs;
        if (share > 0) expect(heldBack(held, "bottom", past(share) * 0.999, water).goesUnder).toBe(false);
        if (share < 1) expect(heldBack(held, "bottom", past(share) * 1.001, water).goesUnder).toBe(true);
      },
    ),
    { seed: 7 },
  );
});

test("fixed top and bottom the flow lifts it instead, and it may be stopped", () => {
  const byTop = heldBack(float, "top and bottom", 0.6, water);
  expect(byTop.pushedDownG).toBeLessThan(0);
  expect(byTop.goesUnder).toBe(false);
  expect(valueIn(holdBackShareMax(float, "top and bottom", 0.6, 0.55, water))).toBe(1);
  expect(valueIn(holdBackShareMax(float, "bottom", 0.6, 0.55, water))).toBeLessThan(1);
});

test("more load and more tip stand more holding back", () => {
  const share = (changes: Partial<HeldFloat>) =>
    valueIn(holdBackShareMax({ ...float, ...changes }, "bottom", 1, 0.9, water));
  expect(share({ loadG: 4 })).toBeGreaterThan(share({}));
  expect(share({ tipPullG: 0.3 })).toBeGreaterThan(share({}));
  expect(share({ dragAreaCm2: 3 })).toBeGreaterThan(share({}));
});

test("a float that the stream does not take along is held back by all or by nothing", () => {
  expect(valueIn(holdBackShareMax(float, "bottom", 0.05, 0, water))).toBe(1);
  expect(valueIn(holdBackShareMax(float, "bottom", 1, 0, water))).toBe(0);
  expect(holdBackShareMax(float, "bottom", 1, -0.1, water).ok).toBe(false);
  expect(holdBackShareMax(float, "bottom", 1, 1.1, water).ok).toBe(false);
});

test.each(["loadG", "tipPullG", "dragAreaCm2"] as const)("a float with no %s has no answer", (nothing) => {
  const found = holdBackShareMax({ ...float, [nothing]: 0 }, "bottom", 0.3, 0.27, water);
  expect(found.ok).toBe(false);
});
