import { describe, expect, it } from "vitest";
import {
  freshWaterDensityKgM3,
  seaWaterDensityKgM3,
  waterDensityKgM3,
} from "../../../src/core/water/water.ts";

describe("density of fresh water", () => {
  // Handbook figures; the older ones (0 and 4 °C) rest on 999.972 kg/m³ at the maximum, 0.003 below the scale in use.
  // Source: the table in the tests of the chempy library's formula of Tanaka et al. 2001, with the tolerance it states.
  it.each([
    [0, 999.8395],
    [4, 999.972],
    [10, 999.7026],
    [15, 999.1026],
    [20, 998.2071],
    [25, 997.0479],
    [30, 995.6502],
  ])("at %i °C is %f kg/m³ to 0.005", (tempC, published) => {
    expect(Math.abs(freshWaterDensityKgM3(tempC) - published)).toBeLessThan(0.005);
  });

  it("is greatest at 3.98 °C, 999.975 kg/m³ (Tanaka et al. 2001)", () => {
    expect(freshWaterDensityKgM3(3.983035)).toBeCloseTo(999.97495, 9);
    expect(freshWaterDensityKgM3(3.88)).toBeLessThan(999.97495);
    expect(freshWaterDensityKgM3(4.08)).toBeLessThan(999.97495);
  });
});

describe("density of sea water", () => {
  // Source: UNESCO Technical Papers in Marine Science 44 (Fofonoff & Millard 1983), page 19, at the surface.
  it.each([
    [0, 5, 999.96675],
    [0, 25, 997.04796],
    [35, 5, 1027.67547],
    [35, 25, 1023.34306],
  ])("of salinity %i at %i °C is %f kg/m³", (salinity, tempC, published) => {
    expect(Math.abs(seaWaterDensityKgM3(tempC, salinity) - published)).toBeLessThan(1e-5);
  });

  it("joins the fresh-water formula within 0.01 kg/m³", () => {
    for (let tempC = 0; tempC <= 40; tempC++) {
      const fresh = waterDensityKgM3({ tempC, salinity: 0 });
      expect(fresh).toBe(freshWaterDensityKgM3(tempC));
      expect(Math.abs(waterDensityKgM3({ tempC, salinity: 1e-9 }) - fresh)).toBeLessThan(0.01);
    }
  });
});
