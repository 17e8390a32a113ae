import type { G, KgM3 } from "../units.ts";
import { type Water, waterDensityKgM3 } from "../water/water.ts";

/** What a shot is made of. */
export const metals = ["lead", "tin", "bismuth", "tungsten", "steel", "zinc", "brass"] as const;
export type Metal = (typeof metals)[number];

/**
 * Densities near room temperature [kg/m³].
 * Source: handbook values for the elements (tests hold lead, tin, bismuth, tungsten and zinc against a published
 * element table within 1 %); steel 7850 and brass 60/40 8520 are the usual handbook figures for the alloys.
 */
export const metalDensityKgM3: Readonly<Record<Metal, number>> = {
  lead: 11340,
  tin: 7287,
  bismuth: 9790,
  tungsten: 19300,
  steel: 7850,
  zinc: 7134,
  brass: 8520,
};

/** One size in a shot scale. The same name means another weight in another scale. */
export interface ShotSize {
  readonly name: string;
  readonly massG: G;
}

/** A named table of sizes, heaviest first. */
export interface ShotScale {
  readonly id: string;
  readonly title: string;
  readonly sizes: readonly ShotSize[];
}

/** A shot of one size and metal. */
export interface Shot {
  readonly size: string;
  readonly massG: G;
  readonly metal: Metal;
}

/** One compartment of the tub: a shot and how many are there (`Infinity` where nobody counted). */
export interface StockedShot extends Shot {
  readonly count: number;
}

/** Every shot that can be used for a rig, heaviest first. */
export type Tub = readonly StockedShot[];

/**
 * Weight in water per weight in air: `1 − ρwater/ρbody`. Below 0 for a body that floats.
 *
 * Source: Archimedes' principle.
 */
export function pullShare(densityKgM3: KgM3, water: Water): number {
  return 1 - waterDensityKgM3(water) / densityKgM3;
}

/** Pull of a mass of this metal on the float [g], in this water. */
export function pullG(massG: G, metal: Metal, water: Water): number {
  return massG * pullShare(metalDensityKgM3[metal], water);
}

/** Diameter of a solid ball [mm] from its mass [g] and metal: `(6m/πρ)^⅓`. */
export function ballDiameterMm(massG: G, metal: Metal): number {
  return Math.cbrt((6 * massG) / (Math.PI * metalDensityKgM3[metal] * 1e-6));
}
