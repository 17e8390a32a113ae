import { power } from "../power.ts";
import type { C } from "../units.ts";
/** The water the rig hangs in. */
export interface Water {
  readonly tempC: C;
  /** Practical salinity; 0 is fresh water. */
  readonly salinity: number;
}

/** Kinds of water, by whether it runs. */
export const waterKinds = ["still", "flowing"] as const;
export type WaterKind = (typeof waterKinds)[number];

/**
 * Density of air-free fresh water at normal pressure.
 *
 * @param tempC temperature [°C], 0–40
 * @returns density [kg/m³]
 * Source: Tanaka et al. 2001, Metrologia 38:301 (the CIPM formula).
 */
export function freshWaterDensityKgM3(tempC: C): number {
  const a1 = -3.983035;
  const a2 = 301.797;
  const a3 = 522528.9;
  const a4 = 69.34881;
  const a5 = 999.97495;
  return a5 * (1 - ((tempC + a1) ** 2 * (tempC + a2)) / (a3 * (tempC + a4)));
}

/**
 * Density of sea water at the surface.
 *
 * @param tempC temperature [°C], −2–40
 * @param salinity practical salinity, 0–42
 * @returns density [kg/m³]
 * Source: UNESCO Technical Papers in Marine Science 44 (Fofonoff & Millard 1983), equations 13–14 (EOS-80).
 */
export function seaWaterDensityKgM3(tempC: C, salinity: number): number {
  const t = tempC;
  const s = salinity;
  const pure =
    999.842594 +
    t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
  const a = 8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
  const b = -5.72466e-3 + t * (1.0227e-4 + t * -1.6546e-6);
  return pure + a * s + b * power(s, 1.5) + 4.8314e-4 * s * s;
}

/** Density of the water [kg/m³]: the fresh-water formula at salinity 0, the sea-water one above. */
export function waterDensityKgM3({ tempC, salinity }: Water): number {
  return salinity > 0 ? seaWaterDensityKgM3(tempC, salinity) : freshWaterDensityKgM3(tempC);
}
