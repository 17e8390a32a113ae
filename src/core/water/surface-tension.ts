import { type Float, lengthMm } from "../float/float.ts";
import { diameterAtMm } from "../float/profile.ts";
import { power } from "../power.ts";
import type { C } from "../units.ts";
import { gravityMs2 } from "../units.ts";
import { type Water, waterDensityKgM3 } from "./water.ts";

/**
 * Surface tension of water against air: `235.8·τ^1.256·(1 − 0.625·τ)` mN/m with `τ = 1 − T/647.096 K`.
 *
 * @param tempC temperature [°C], 0–100; salt raises it by about 1 % in the sea, which is left out
 * @returns surface tension [mN/m]
 * Source: IAPWS R1-76(2014), from memory.
 */
export function surfaceTensionMNm(tempC: C): number {
  const tau = 1 - (tempC + 273.15) / 647.096;
  return 235.8 * power(tau, 1.256) * (1 - 0.625 * tau);
}

/**
 * Band beside a tip figure: as far as surface tension can hold the tip above or below it,
 * `π·d·γ/(ρ·g·A) = 4γ/(ρ·g·d)`. A greasy or dry tip may use all of it, a clean wet one little.
 *
 * @param showingMm tip showing [mm], where the diameter is taken
 * @returns half width of the band [mm], never more than the float is long
 */
export function tipUncertaintyMm(float: Float, water: Water, showingMm = float.tipShowingMm): number {
  const diameterMm = diameterAtMm(float.profile, lengthMm(float) - showingMm);
  const bandMm =
    (4 * surfaceTensionMNm(water.tempC) * 1e3) / (waterDensityKgM3(water) * gravityMs2 * diameterMm);
  return Math.min(bandMm, lengthMm(float));
}
