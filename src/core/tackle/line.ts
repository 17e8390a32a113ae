import type { G, Mm } from "../units.ts";
import type { Water } from "../water/water.ts";
import { pullShare } from "./shot.ts";

/** A line as its spool label has it. */
export interface Line {
  /** Breaking strain as a mass hung on it [g]. */
  readonly strengthG: G;
  readonly diameterMm: Mm;
}

/** Dry nylon 6 and 6,6 [kg/m³]: middle of the handbook figures. */
const nylonDensityKgM3 = 1140;

/**
 * Pull of nylon line hanging in the water: `ρ · π/4 · d² · L`, less what it displaces. A metre of 0.15 mm pulls
 * 0.0025 g, which is less than a tenth of the smallest shot in use, so rigs leave it out.
 *
 * @returns pull [g]
 */
export function linePullG({ diameterMm }: Line, lengthMm: Mm, water: Water): number {
  const massG = (Math.PI / 4) * diameterMm ** 2 * lengthMm * nylonDensityKgM3 * 1e-6;
  return massG * pullShare(nylonDensityKgM3, water);
}

/** A class of line for records: it must break, wet, below its kilograms; pounds are what it is called. */
interface LineClass {
  readonly kg: number;
  readonly lb: number;
}

/** Line classes of the International Game Fish Association, finest first. */
export const lineClasses: readonly LineClass[] = [
  { kg: 1, lb: 2 },
  { kg: 2, lb: 4 },
  { kg: 3, lb: 6 },
  { kg: 4, lb: 8 },
  { kg: 6, lb: 12 },
  { kg: 8, lb: 16 },
  { kg: 10, lb: 20 },
  { kg: 15, lb: 30 },
  { kg: 24, lb: 50 },
  { kg: 37, lb: 80 },
  { kg: 60, lb: 130 },
];

/**
 * The finest class that a line of this strength keeps: the first under whose kilograms it breaks.
 *
 * @param strengthG breaking strain, measured wet [g]
 * @returns the class; undefined where it is stronger than every class, or no strength at all
 */
export function lineClass(strengthG: G): LineClass | undefined {
  return strengthG > 0 ? lineClasses.find(({ kg }) => strengthG <= kg * 1000) : undefined;
}
