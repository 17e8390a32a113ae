import { expect, test } from "vitest";
import {
  freshWaterViscosityMpas,
  kinematicViscosityMm2S,
  waterViscosityMpas,
} from "../../../src/core/water/viscosity.ts";

test("fresh water has the viscosity of the IAPWS check value", () => {
  // IAPWS SR6-08: 889.996774 µPa·s at 298.15 K.
  expect(freshWaterViscosityMpas(25)).toBeCloseTo(0.889996774, 9);
});

test.each([
  [0, 1.79176],
  [4, 1.56729],
  [10, 1.3059],
  [15, 1.13757],
  [20, 1.0016],
  [30, 0.79722],
])("at %d °C it is within 0.1 %% of the IAPWS 2008 formulation", (tempC, mpas) => {
  // IAPWS R12-08, evaluated with the iapws library.
  expect(Math.abs(freshWaterViscosityMpas(tempC) / mpas - 1)).toBeLessThan(1e-3);
});

test.each([
  [280, 1.4337],
  [290, 1.084],
  [300, 0.85384],
])("at %d K it is within 0.1 %% of Perry's table", (tempK, mpas) => {
  // Perry's Chemical Engineers' Handbook, 9th edition, table 2-135.
  expect(Math.abs(freshWaterViscosityMpas(tempK - 273.15) / mpas - 1)).toBeLessThan(1e-3);
});

test.each([
  [10, 1.30629],
  [20, 1.00337],
  [25, 0.89263],
])("at %d °C the kinematic viscosity follows from viscosity and density", (tempC, mm2S) => {
  // IAPWS R12-08 over IAPWS-95, evaluated with the iapws library.
  expect(Math.abs(kinematicViscosityMm2S({ tempC, salinity: 0 }) / mm2S - 1)).toBeLessThan(1e-3);
});

test("sea water is some 7 to 8 % more viscous than fresh", () => {
  // 1.077 mPa·s at 20 °C and 35 (handbook value, from memory).
  expect(Math.abs(waterViscosityMpas({ tempC: 20, salinity: 35 }) / 1.077 - 1)).toBeLessThan(0.005);
});

test("salt adds by both terms of equation 22, reckoned by hand at 20 °C and a salinity of 150", () => {
  // A = 1.541 + 0.3996 − 0.03808 = 1.90252, B = 7.974 − 1.5122 + 0.18896 = 6.65076; 1 + 0.15 A + 0.0225 B = 1.435020.
  const factor = waterViscosityMpas({ tempC: 20, salinity: 150 }) / freshWaterViscosityMpas(20);
  expect(factor).toBeCloseTo(1.43502, 5);
});
