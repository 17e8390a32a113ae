import { convert } from "convert";
import { describe, expect, it } from "vitest";
import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  gPerGrain,
  gPerOunce,
  gPerPound,
  gravityMs2,
  mlPerImperialPint,
  mlPerUsPint,
  mmPerFoot,
  mmPerInch,
  mmPerYard,
} from "../../src/core/units.ts";

describe("units, against the convert library", () => {
  it.each([
    ["inch", mmPerInch, convert(1, "in").to("mm")],
    ["foot", mmPerFoot, convert(1, "ft").to("mm")],
    ["yard", mmPerYard, convert(1, "yd").to("mm")],
    ["pound", gPerPound, convert(1, "lb").to("g")],
    ["ounce", gPerOunce, convert(1, "oz").to("g")],
    ["grain", gPerGrain, convert(1, "grain").to("g")],
    ["imperial pint", mlPerImperialPint, convert(1, "imperial pint").to("mL")],
    ["US pint", mlPerUsPint, convert(1, "US liquid pint").to("mL")],
  ])("give the %s exactly", (_, ours, theirs) => {
    expect(Math.abs(ours / theirs - 1)).toBeLessThan(1e-12);
  });

  it.each([-40, 0, 10, 37.5, 100])("turn %f °C to Fahrenheit and back", (tempC) => {
    expect(fahrenheitFromCelsius(tempC)).toBeCloseTo(convert(tempC, "C").to("F"), 9);
    expect(celsiusFromFahrenheit(fahrenheitFromCelsius(tempC))).toBeCloseTo(tempC, 9);
  });

  it("take standard gravity as the third general conference fixed it in 1901", () => {
    expect(gravityMs2).toBe(9.80665);
  });
});
