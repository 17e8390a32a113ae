import { describe, expect, it } from "vitest";
import { surfaceTensionMNm, tipUncertaintyMm } from "../../../src/core/water/surface-tension.ts";
import { pool, tippedFloat } from "../floats.ts";

describe("surface tension of water", () => {
  // IAPWS R1-76(2014), table of values: 74.22 mN/m at 10 °C, 72.74 at 20 °C, 71.19 at 30 °C (from memory).
  it.each([
    [10, 74.22],
    [20, 72.74],
    [30, 71.19],
  ])("at %d °C is %d mN/m", (tempC, published) => {
    expect(surfaceTensionMNm(tempC)).toBeCloseTo(published, 1);
  });
});

describe("the band beside a tip figure", () => {
  // π · 2 mm · 74.22 mN/m / 9.80665 m/s² = 0.04755 g; over 3.1416 mm² of water: 15.14 mm.
  it("is 15 mm on a 2 mm tip", () => {
    expect(tipUncertaintyMm(tippedFloat(2), pool)).toBeCloseTo(15.14, 1);
  });

  it("is a quarter of that on an 8 mm tip", () => {
    expect(tipUncertaintyMm(tippedFloat(8), pool)).toBeCloseTo(15.14 / 4, 1);
  });

  it("is that of what stands in the water: the body, 12 mm across, where that much of it shows", () => {
    expect(tipUncertaintyMm(tippedFloat(2), pool, 200)).toBeCloseTo((15.14 * 2) / 12, 1);
  });
});
