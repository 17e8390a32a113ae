import periodicTable from "periodic-table";
import { describe, expect, it } from "vitest";
import { parseLoad } from "../../../src/core/tackle/load-notation.ts";
import {
  ballDiameterMm,
  type Metal,
  metalDensityKgM3,
  metals,
  pullG,
  pullShare,
} from "../../../src/core/tackle/shot.ts";
import { gPerGrain, gPerOunce, mmPerInch } from "../../../src/core/units.ts";
import { tradeScale } from "../trade-scale.ts";

const at10C = { tempC: 10, salinity: 0 };

/**
 * English shot-gun sizes of pure lead: diameter [in] and [mm], weight [grains] and [g], pellets to the ounce.
 * Source: J. Spencer 2001, Table 1.
 */
type EnglishShot = readonly [
  name: string,
  inches: number,
  mm: number,
  grains: number,
  grams: number,
  perOunce?: number,
];
const englishShot: readonly EnglishShot[] = [
  ["LG", 0.36, 9.14, 69.7, 4.54, 6.3],
  ["SG", 0.332, 8.43, 54.67, 3.56, 8.0],
  ["Special SG", 0.298, 7.57, 39.53, 2.58, 11.1],
  ["SSG", 0.269, 6.83, 29.08, 1.9, 15.0],
  ["SSSG", 0.245, 6.22, 21.97, 1.43, 19.9],
  ["SSSSG", 0.227, 5.77, 17.47, 1.14, 25.0],
  ["AAA", 0.203, 5.16, 12.5, 0.81, 35.0],
  ["AA", 0.194, 4.92, 10.91, 0.71, 40.1],
  ["A", 0.18, 4.57, 8.71, 0.57, 50.2],
  ["BBB", 0.17, 4.32, 7.34, 0.48, 59.6],
  ["BB", 0.161, 4.09, 6.23, 0.41, 70.2],
  ["B", 0.154, 3.91, 5.46, 0.36, 80.2],
  ["1", 0.143, 3.63, 4.37, 0.28, 100.1],
  ["2", 0.135, 3.43, 3.68, 0.24, 119.0],
  ["3", 0.128, 3.25, 3.13, 0.2, 139.6],
  ["4", 0.12, 3.05, 2.58, 0.17, 169.5],
  ["5", 0.11, 2.79, 1.99, 0.13, 220.0],
  ["6", 0.102, 2.59, 1.59, 0.1, 276.0],
  ["7", 0.095, 2.41, 1.28, 0.08, 341.6],
  // Its pellets to the ounce are cut off in the copy that was read.
  ["8", 0.087, 2.21, 0.98, 0.06],
];

describe("a ball of lead", () => {
  it.each(englishShot.map((row) => ({ name: row[0], row })))(
    "of English size $name weighs what the gun trade's table says",
    ({ row: [, inches, mm, grains, grams, perOunce] }) => {
      const across = (massG: number) => ballDiameterMm(massG, "lead");
      // A third of a part of the weight, as the weight goes with the third power.
      expect(Math.abs(across(grains * gPerGrain) / (inches * mmPerInch) - 1)).toBeLessThan(0.01 / 3);
      expect(across(grams - 0.011)).toBeLessThan(mm);
      expect(across(grams + 0.011)).toBeGreaterThan(mm);
      if (perOunce !== undefined) {
        expect(Math.abs(across(gPerOunce / perOunce) / (inches * mmPerInch) - 1)).toBeLessThan(0.011 / 3);
      }
    },
  );

  it("has the diameter of its mass", () => {
    for (const metal of metals) {
      for (const massG of [0.01, 0.06, 0.4, 1.6]) {
        const volumeMm3 = (Math.PI / 6) * ballDiameterMm(massG, metal) ** 3;
        expect(volumeMm3 * 1e-6 * metalDensityKgM3[metal]).toBeCloseTo(massG, 12);
      }
    }
  });
});

describe("densities", () => {
  it.each<[Metal, string]>([
    ["lead", "Pb"],
    ["tin", "Sn"],
    ["bismuth", "Bi"],
    ["tungsten", "W"],
    ["zinc", "Zn"],
  ])("of %s are within 1 % of the periodic-table package", (metal, symbol) => {
    const published = periodicTable.symbols[symbol]!.density * 1000;
    expect(Math.abs(metalDensityKgM3[metal] / published - 1)).toBeLessThan(0.01);
  });
});

describe("pull in water", () => {
  it("of tin is 5.4 % less than that of as much lead at 10 °C", () => {
    // Lead 1 − 999.7026/11340 = 0.911843, tin 1 − 999.7026/7287 = 0.862810; 1 − 0.862810/0.911843 = 0.05377.
    expect(pullShare(metalDensityKgM3.lead, at10C)).toBeCloseTo(0.911843, 5);
    expect(pullShare(metalDensityKgM3.tin, at10C)).toBeCloseTo(0.86281, 5);
    const less = 1 - pullG(1, "tin", at10C) / pullG(1, "lead", at10C);
    expect(less).toBeCloseTo(0.0538, 4);
  });

  it("of a body as dense as water is nothing, of a lighter one below nothing", () => {
    expect(pullShare(999.7026, at10C)).toBeCloseTo(0, 6);
    expect(pullShare(500, at10C)).toBeLessThan(0);
  });
});

describe("the trade's round figures (common practice, no source)", () => {
  it.each([
    ["1 SSG", "2 AAA"],
    ["1 AAA", "2 BB"],
    ["1 BB", "2 No 4"],
    ["1 No 1", "3 No 6"],
    ["1 No 4", "2 No 6"],
    ["1 No 8", "2 No 11"],
    ["1 No 10", "2 No 12"],
    ["1 No 12", "2 No 13"],
    ["1.2 g", "19 No 8 + 3 No 12"],
  ])("make %s as heavy as %s", (one, other) => {
    const [a, b] = [parseLoad(one, tradeScale), parseLoad(other, tradeScale)];
    expect(a.ok && b.ok && Math.abs(a.value.massG - b.value.massG)).toBeLessThan(1e-12);
  });
});
