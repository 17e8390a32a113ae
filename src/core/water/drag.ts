import { power } from "../power.ts";
import type { Mm, S } from "../units.ts";
import { kinematicViscosityMm2S } from "./viscosity.ts";
import { type Water, waterDensityKgM3 } from "./water.ts";

/**
 * Drag of balls and of line in water. Grams, millimetres and seconds go together: a density is in g/mm³, a speed in
 * mm/s and a force in g·mm/s², which is a micronewton.
 */
export interface Fluid {
  readonly densityGMm3: number;
  readonly viscosityMm2S: S;
}

/** What drag needs to know of the water. */
export function fluidOf(water: Water): Fluid {
  return { densityGMm3: waterDensityKgM3(water) * 1e-6, viscosityMm2S: kinematicViscosityMm2S(water) };
}

/** How a body resists: as a ball, or with a fixed drag area (drag coefficient × frontal area). */
export type DragLaw =
  | { readonly kind: "ball"; readonly diameterMm: Mm }
  | { readonly kind: "area"; readonly areaMm2: number };

/**
 * Drag coefficient of a ball on its frontal area.
 *
 * @param re Reynolds number on the diameter, above 0 and up to 2e5; split shot in water run at 500–10,000
 * Source: Cheng 2009, Powder Technology 189:395. Of some thirty published forms it lies closest to the measurements
 * of Roos & Willmarth 1971 between Re 100 and 10,000, which scatter by as much as it is off; a flat 0.44 is up to
 * 13 % off there.
 */
export function ballDragCoefficient(re: number): number {
  return (24 / re) * power(1 + 0.27 * re, 0.43) + 0.47 * (1 - Math.exp(-0.04 * power(re, 0.38)));
}

/**
 * Drag coefficient of a long cylinder across the flow, on diameter × length.
 *
 * @param re Reynolds number on the diameter, 1e-4 to 2e5; line of 0.10–0.20 mm runs at 1–200
 * Source: Sucker & Brauer 1975, Wärme- und Stoffübertragung 8:149, as given in White, Viscous Fluid Flow, 1991.
 */
export function crossFlowDragCoefficient(re: number): number {
  return 1.18 + 6.8 * power(re, -0.89) + 1.96 / Math.sqrt(re) - (4e-4 * re) / (1 + 3.64e-7 * re * re);
}

/**
 * Reynolds number × drag coefficient, tabled evenly over the root of the Reynolds number, in which it is all but
 * straight: the fall of a rig asks for it a hundred thousand times. Within 0.01 % of the formula from Re 0.1 up.
 */
function tabled(coefficient: (re: number) => number, atRest: number, reMax: number) {
  const step = 0.02;
  const make = () =>
    Float64Array.from({ length: Math.sqrt(reMax) / step + 2 }, (_, i) => {
      const re = (i * step) ** 2;
      return i === 0 ? atRest : re * coefficient(re);
    });
  // Made when it is asked for: a page that has its sums done beside it loads this and asks for nothing.
  let table: Float64Array | undefined;
  return (re: number): number => {
    if (re >= reMax) return re * coefficient(re);
    table ??= make();
    const at = Math.sqrt(re) / step;
    const i = Math.floor(at);
    const low = table[i]!;
    return low + (at - i) * (table[i + 1]! - low);
  };
}
const ballReTimesDrag = tabled(ballDragCoefficient, 24, 1e4);
const crossFlowReTimesDrag = tabled(crossFlowDragCoefficient, 0, 900);

/**
 * Drag of line across itself per length and per speed: the force per millimetre is this times the speed.
 *
 * @returns g/(mm·s)
 */
export function crossFlowDragGMmS(diameterMm: Mm, speedMmS: S, fluid: Fluid): number {
  const re = (speedMmS * diameterMm) / fluid.viscosityMm2S;
  return 0.5 * fluid.densityGMm3 * fluid.viscosityMm2S * crossFlowReTimesDrag(re);
}

/** Line behind the leading end at which its skin friction is taken; it goes in as a logarithm. */
const skinFrictionAtMm = 1000;

/**
 * Drag of line along itself per length and per speed: `4πμ / ln(4νx / Ua²)`, the leading term for a laminar boundary
 * layer much thicker than the line. Line of 0.15 mm at 0.2 m/s gets a friction coefficient of 0.03 on its wetted
 * area, a little above the 0.01–0.02 that marine practice gives thicker cable.
 *
 * @returns g/(mm·s)
 * Source: Glauert & Lighthill 1955, Proceedings of the Royal Society A 230:188 (from memory).
 */
export function axialDragGMmS(diameterMm: Mm, speedMmS: S, fluid: Fluid): number {
  const nu = fluid.viscosityMm2S;
  const radius2 = (diameterMm * diameterMm) / 4;
  const log = Math.log((4 * nu * skinFrictionAtMm) / (Math.max(speedMmS, 1) * radius2));
  return (4 * Math.PI * nu * fluid.densityGMm3) / Math.max(log, 2);
}

/** Drag of a body per speed: the force is this times the speed [g/s]. */
export function bodyDragGS(law: DragLaw, speedMmS: S, fluid: Fluid): number {
  if (law.kind === "area") return 0.5 * fluid.densityGMm3 * law.areaMm2 * speedMmS;
  const re = (speedMmS * law.diameterMm) / fluid.viscosityMm2S;
  return (Math.PI / 8) * fluid.densityGMm3 * fluid.viscosityMm2S * law.diameterMm * ballReTimesDrag(re);
}
