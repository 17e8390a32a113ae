import { power } from "../power.ts";
import type { C } from "../units.ts";
import { type Water, waterDensityKgM3 } from "./water.ts";

/**
 * Dynamic viscosity of fresh water at 0.1 MPa.
 *
 * @param tempC temperature [°C], −20–110
 * @returns viscosity [mPa·s]
 * Source: IAPWS SR6-08 (2011), equation 7, the simple form for liquid water at normal pressure.
 */
export function freshWaterViscosityMpas(tempC: C): number {
  const t = (tempC + 273.15) / 300;
  return (
    1e-3 *
    (280.68 * power(t, -1.9) + 511.45 * power(t, -7.7) + 61.131 * power(t, -19.6) + 0.45903 * power(t, -40))
  );
}

/**
 * Dynamic viscosity of water.
 *
 * @returns viscosity [mPa·s]
 * Source: fresh water as above; the share that salt adds is Sharqawy, Lienhard & Zubair 2010, Desalination and Water
 * Treatment 16:354, equation 22 (from memory), for 0–180 °C and a salinity of 0–150.
 */
export function waterViscosityMpas({ tempC, salinity }: Water): number {
  const salt = salinity / 1000;
  const a = 1.541 + tempC * (1.998e-2 - 9.52e-5 * tempC);
  const b = 7.974 + tempC * (-7.561e-2 + 4.724e-4 * tempC);
  return freshWaterViscosityMpas(tempC) * (1 + salt * (a + salt * b));
}

/** Kinematic viscosity of water [mm²/s]: dynamic viscosity ÷ density. */
export function kinematicViscosityMm2S(water: Water): number {
  return (waterViscosityMpas(water) / waterDensityKgM3(water)) * 1e3;
}
