import { neighbours } from "../lists.ts";
import type { Mm } from "../units.ts";
import type { Profile } from "./profile.ts";

/**
 * Drag coefficient of an upright float on its frontal area: 1.1 for a long cylinder at Reynolds numbers of some
 * hundreds, times 0.8 for a length of twenty to forty diameters. Source of both: Wieselsberger 1922 (NACA TN-84).
 */
const floatDragCoefficient = 0.9;

/** Area of a float seen from the side, from its lower eye up to a height [mm²]. */
function frontalAreaMm2(profile: Profile, heightMm: Mm): number {
  return neighbours(profile).reduce((area, [lower, upper]) => {
    const stretchMm = Math.min(heightMm, upper.atMm) - lower.atMm;
    if (stretchMm <= 0) return area;
    const slope = (upper.diameterMm - lower.diameterMm) / (upper.atMm - lower.atMm);
    return area + stretchMm * (lower.diameterMm + (slope * stretchMm) / 2);
  }, 0);
}

/** Drag coefficient × frontal area of what is under water [cm²], for a float standing with this draught [mm]. */
export function floatDragAreaCm2(profile: Profile, draughtMm: Mm): number {
  return (floatDragCoefficient * frontalAreaMm2(profile, draughtMm)) / 100;
}
