import { power } from "../power.ts";
import type { Mm } from "../units.ts";

/**
 * How fast the water runs at each depth. Water slows towards the bed; the power law of the seventh root is the usual
 * form, and the pace at the surface, the one that can be timed, sets it.
 *
 * Source: power-law profile with exponent 1/7 (Prandtl's seventh-root law); it puts the mean over the depth at 7/8 of
 * the surface, and river gauging by floats uses 0.85–0.88 (from memory).
 */
export const profileExponent = 1 / 7;

/** Mean pace over the depth as a share of the surface's. */
export const meanPaceShare = 1 / (1 + profileExponent);

/** Pace [mm/s] at a depth below the surface, for a surface pace [mm/s]; 0 at the bed and below. */
export function paceAtMmS(depthMm: Mm, waterDepthMm: Mm, surfaceMmS: number): number {
  const height = 1 - depthMm / waterDepthMm;
  return height > 0 ? surfaceMmS * power(Math.min(1, height), profileExponent) : 0;
}
