import type { G, Mm } from "../units.ts";

/**
 * A line as its spool label has it. What it weighs in the water is left out of all sums: a metre of 0.15 mm nylon pulls
 * 0.0025 g, less than a tenth of the smallest shot in use.
 */
export interface Line {
  /** Breaking strain as a mass hung on it [g]. */
  readonly strengthG: G;
  readonly diameterMm: Mm;
}
